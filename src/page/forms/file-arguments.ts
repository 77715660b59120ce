import { contentsAddress, server, type FileModel } from '../server-api.js';
import type { Argument, Binding, Call, Scope } from './model/argument.js';

const isFileName = (value: unknown): value is string =>
  typeof value === 'string' && /^[^\r\n]{1,200}\.(csv|tsv|txt)$/i.test(value);

const kept = new Map<string, { readonly time: number; readonly text: Promise<string | undefined> }>();
/** Time for which a file is not asked for again. */
const freshMs = 3000;

function fileText(name: string): Promise<string | undefined> {
  const known = kept.get(name);
  if (known !== undefined && Date.now() - known.time < freshMs) return known.text;
  const text = server
    .get<FileModel>(`${contentsAddress(name)}?type=file&format=text`)
    .then(({ content }) => (typeof content === 'string' ? content : undefined))
    .catch(() => undefined);
  kept.set(name, { time: Date.now(), text });
  return text;
}

/** The worker reads no files: a table given by the name of one is given by its text. */
export async function withFiles(call: Call): Promise<Call> {
  const given: Record<string, Argument> = { ...call.given };
  for (const [name, argument] of Object.entries(given)) {
    if (argument.type !== 'value' || !isFileName(argument.value)) continue;
    const text = await fileText(argument.value);
    if (text !== undefined) given[name] = { type: 'value', value: `${text}\n` };
  }
  return { ...call, given };
}

export async function scopeWithFiles(scope: Scope): Promise<Scope> {
  const entries = await Promise.all(
    Object.entries(scope).map(async ([name, binding]): Promise<readonly [string, Binding]> => [
      name,
      'call' in binding ? { call: await withFiles(binding.call) } : binding,
    ]),
  );
  return Object.fromEntries(entries);
}
