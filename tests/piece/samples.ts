import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readPieceFile } from '../../src/piece/piece-file.js';
import { piece, type Piece } from '../../src/piece/piece.js';
import type { PieceInput } from '../../src/piece/description.js';

export const demo = join(dirname(fileURLToPath(import.meta.url)), '../../data/demo');
export const teaCounterFile = join(demo, 'tea-counter.piece.json');
export const porchBenchFile = join(demo, 'porch-bench.piece.json');

type Tree = Record<string, Record<string, Record<string, unknown>>>;

/** The tea counter's description, to be spoilt by a test. */
export const teaCounterInput = (): Tree => readPieceFile(teaCounterFile) as unknown as Tree;
export const porchBenchInput = (): Tree => readPieceFile(porchBenchFile) as unknown as Tree;
export const pieceOf = (input: unknown): Piece => piece(input as PieceInput);
export const raw = (file: string): string => readFileSync(file, 'utf8');

let searched: Promise<Piece> | undefined;
/** The tea counter with its searches run, once for all tests of a file. */
export const searchedTeaCounter = (): Promise<Piece> => (searched ??= pieceOf(teaCounterInput()).search());
