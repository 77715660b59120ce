// Answers that travel in a page and cannot be read in its source. Each known answer lies in the middle of a cell as wide as its
// tolerance; the cell's number, stretched by PBKDF2, is the key of the sentence that belongs to it (AES-GCM). Only who types an answer
// within the tolerance finds the key. It keeps a pupil from reading the answers, not a program from trying all of them.
import type { KnownAnswer, Tolerance } from './answer-check.js';

/** One sealed sentence. `phase`: where in its cell the answer lies, in cells from its middle, -0.5 to 0.5. */
export interface SealedRow {
  readonly phase: number;
  /** Base64 of the encrypted sentence. */
  readonly box: string;
}

/** Known answers of one question, in random order with some that open to nobody. */
export interface SealedAnswers {
  readonly salt: string;
  readonly tolerance: Tolerance;
  readonly rows: readonly SealedRow[];
}

/** An answer to be sealed: a number, or a word in small letters. */
export interface OpenAnswer extends KnownAnswer {
  readonly value: number | string;
}

const iterations = 20_000;
const decoys = 2;
const phases = 64;
const utf8 = new TextEncoder();

/** Cells of the tolerance that a value is away from the first; the logarithm for a share, so that one width serves all sizes. */
function cellsOf(tolerance: Tolerance, value: number): number {
  if ('absolute' in tolerance) return value / (2 * tolerance.absolute);
  const { relative } = tolerance;
  return value === 0 ? 0 : Math.log(Math.abs(value)) / Math.log((1 + relative) / (1 - relative));
}

/** Name of the cell in which a value lies, of those shifted by `phase`. */
function cellName(tolerance: Tolerance, value: number | string, phase: number): string {
  if (typeof value === 'string') return `word ${value}`;
  if ('absolute' in tolerance) return `cell ${Math.round(value / (2 * tolerance.absolute) - phase) + 0}`;
  if (value === 0) return 'zero';
  return `${value < 0 ? 'minus' : 'plus'} ${Math.round(cellsOf(tolerance, value) - phase) + 0}`;
}

function phaseOf(tolerance: Tolerance, value: number | string): number {
  if (typeof value === 'string') return 0;
  const cells = cellsOf(tolerance, value);
  return Math.round((cells - Math.round(cells)) * phases) / phases;
}

/**
 * Seals the known answers of a question.
 * @param salt unlike for each question and pupil, so that equal answers look unlike
 */
export async function sealAnswers(
  salt: string,
  tolerance: Tolerance,
  answers: readonly OpenAnswer[],
): Promise<SealedAnswers> {
  const texts = answers.map(({ place, says }) => utf8.encode(`${place} ${says}`));
  const longest = Math.max(...texts.map((text) => text.length));
  const made = answers.map(async ({ value }, i): Promise<SealedRow> => {
    const phase = phaseOf(tolerance, value);
    const plain = new Uint8Array(longest).fill(0x20);
    plain.set(texts[i] as Uint8Array);
    const key = await keyOf(salt, cellName(tolerance, value, phase), 'encrypt');
    return { phase, box: base64(await crypto.subtle.encrypt(cipher, key, plain)) };
  });
  const rows = await Promise.all(made);
  for (let i = 0; i < decoys; i++)
    rows.push({
      phase: Math.round((random() - 0.5) * phases) / phases,
      box: base64(crypto.getRandomValues(new Uint8Array(longest + 16)).buffer),
    });
  return { salt, tolerance, rows: shuffled(rows) };
}

/** The known answers at a value: the sentences that it opens. */
export async function openAnswers(
  { salt, tolerance, rows }: SealedAnswers,
  value: number | string,
): Promise<KnownAnswer[]> {
  const keys = new Map<string, Promise<CryptoKey>>();
  const opened = await Promise.all(
    rows.map(async ({ phase, box }) => {
      const cell = cellName(tolerance, value, phase);
      const key = keys.get(cell) ?? keyOf(salt, cell, 'decrypt');
      keys.set(cell, key);
      return crypto.subtle.decrypt(cipher, await key, fromBase64(box)).then(knownAnswer, () => undefined);
    }),
  );
  return opened.filter((found) => found !== undefined);
}

function knownAnswer(plain: ArrayBuffer): KnownAnswer {
  const [, place, says] = /^(\d+) ([^]*?) *$/.exec(new TextDecoder().decode(plain)) as unknown as string[];
  return { place: Number(place), says: says ?? '' };
}

/** Every key seals one sentence, so the start value may stand still. */
const cipher = { name: 'AES-GCM', iv: new Uint8Array(12) };

async function keyOf(salt: string, cell: string, use: KeyUsage): Promise<CryptoKey> {
  const from = await crypto.subtle.importKey('raw', utf8.encode(cell), 'PBKDF2', false, ['deriveKey']);
  const stretch = { name: 'PBKDF2', hash: 'SHA-256', salt: utf8.encode(salt), iterations };
  return crypto.subtle.deriveKey(stretch, from, { name: 'AES-GCM', length: 256 }, false, [use]);
}

const random = (): number => (crypto.getRandomValues(new Uint32Array(1))[0] as number) / 2 ** 32;

function shuffled<T>(items: readonly T[]): T[] {
  return items
    .map((item) => [random(), item] as const)
    .sort(([a], [b]) => a - b)
    .map(([, item]) => item);
}

const base64 = (bytes: ArrayBuffer): string => btoa(String.fromCharCode(...new Uint8Array(bytes)));
const fromBase64 = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
