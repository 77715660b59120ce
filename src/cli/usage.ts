/** The words of a command do not fit it: said in one line, exit 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}

/** Splits `--name value` and `--flag` from plain words. @throws UsageError on an option that is not taken or lacks its value */
export function optionsOf(
  words: readonly string[],
  takes: { readonly flags?: readonly string[]; readonly values?: readonly string[] },
): { plain: string[]; flags: Set<string>; values: Map<string, string> } {
  const plain: string[] = [];
  const flags = new Set<string>();
  const values = new Map<string, string>();
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as string;
    if (!/^--?[A-Za-z]/.test(word)) {
      plain.push(word);
      continue;
    }
    const [name, inline] = word.split(/=(.*)/s) as [string, string?];
    if (takes.flags?.includes(name) && inline === undefined) flags.add(name);
    else if (takes.values?.includes(name)) {
      const value = inline ?? words[++i];
      if (value === undefined) throw new UsageError(`${name}: missing; takes a value`);
      values.set(name, value);
    } else
      throw new UsageError(
        `${name}: no such option; takes ${[...(takes.flags ?? []), ...(takes.values ?? [])].join(', ') || 'no options'}`,
      );
  }
  return { plain, flags, values };
}
