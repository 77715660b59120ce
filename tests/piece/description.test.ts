import { Ajv2020 } from 'ajv/dist/2020.js';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pieceJsonSchema } from '../../src/piece/description.js';
import { openPiece, savePiece } from '../../src/piece/piece-file.js';
import { InputError } from '../../src/units/input-error.js';
import { pieceOf, porchBenchFile, raw, teaCounterFile, teaCounterInput } from './samples.js';

const issuesOf = (run: () => unknown): readonly { readonly field: string; readonly message: string }[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('a description', () => {
  it('reads sizes into metres and fills in defaults, which are told as assumed', () => {
    const counter = pieceOf(teaCounterInput());
    expect(counter.description.top.length).toBeCloseTo(1.95, 12);
    expect(counter.description.parts['leg']?.section).toEqual({ shape: 'solid', width: 0.045, depth: 0.07 });
    const assumed = new Map(counter.assumed.map((a) => [a.path, a.value]));
    expect(assumed.get('top.grain')).toBe('along');
    expect(assumed.get('shop.kerf')).toMatch(/^3 mm/);
    // What was written is not assumed.
    expect(assumed.has('top.length')).toBe(false);
    expect(assumed.has('shop.thicknesser')).toBe(false);
  });

  it('refuses several wrong values together, each by its path', () => {
    const input = teaCounterInput();
    const leg = input['parts']?.['leg'] as Record<string, unknown>;
    leg['section'] = '45x70';
    (input['top'] as Record<string, unknown>)['thickness'] = '40';
    (input['joints']?.['long rail lap'] as Record<string, unknown>)['kind'] = 'dovetail';
    (input['use'] as Record<string, unknown>)['gods'] = '1 kPa';
    const issues = issuesOf(() => pieceOf(input));
    expect(issues.map((i) => i.field).sort()).toEqual(
      ['joints.long rail lap.kind', 'parts.leg.section', 'top.thickness', 'use.gods'].sort(),
    );
    expect(issues.find((i) => i.field === 'use.gods')?.message).toMatch(/did you mean "goods"/);
  });

  it('refuses a change by its path and leaves the piece as it was', () => {
    const counter = pieceOf(teaCounterInput());
    expect(issuesOf(() => counter.with({ 'top.thicknes': '45 mm' }))[0]?.message).toMatch(/thickness/);
    expect(issuesOf(() => counter.with({ 'parts.leg.along[2]': '9' }))[0]?.field).toBe('parts.leg.along[2]');
    expect(counter.description.top.thickness).toBeCloseTo(0.04, 12);
  });

  it.each([undefined, null, 3, 'x', [], {}])('refuses %j as a whole', (input) => {
    expect(issuesOf(() => pieceOf(input)).length).toBeGreaterThan(0);
  });
});

describe('a *.piece.json file', () => {
  // The schema is what editors check a file against, so the demo files and the reader must agree with it.
  const validate = new Ajv2020({ strict: false }).compile(pieceJsonSchema());

  it.each([teaCounterFile, porchBenchFile])('%s fits the published schema', (file) => {
    expect(validate(JSON.parse(raw(file))), JSON.stringify(validate.errors)).toBe(true);
  });

  it('that the schema refuses is refused by the reader too', () => {
    const input = JSON.parse(raw(teaCounterFile)) as { top: Record<string, unknown> };
    input.top['sides'] = 4;
    expect(validate(input)).toBe(false);
    expect(issuesOf(() => pieceOf(input)).some((i) => i.field === 'top.sides')).toBe(true);
  });

  it('is written and read back as the same piece', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-piece-'));
    const counter = openPiece(teaCounterFile).with({ 'top.thickness': '44 mm' });
    const file = join(folder, 'copy.piece.json');
    await savePiece(counter, file);
    const again = openPiece(file);
    expect(again.description.top.thickness).toBeCloseTo(0.044, 12);
    expect(again.questions.map((a) => [a.name, a.verdict, a.answer])).toEqual(
      counter.questions.map((a) => [a.name, a.verdict, a.answer]),
    );
  });

  it('may keep the shop in a file of its own', () => {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-piece-'));
    const input = JSON.parse(raw(porchBenchFile)) as Record<string, unknown>;
    writeFileSync(
      join(folder, 'shop.json'),
      JSON.stringify({ shop: { kerf: '4 mm' }, gluing: input['gluing'] }),
    );
    delete input['gluing'];
    writeFileSync(join(folder, 'bench.piece.json'), JSON.stringify({ ...input, shop: 'shop.json' }));
    const bench = openPiece(join(folder, 'bench.piece.json'));
    expect(bench.description.shop.kerf).toBeCloseTo(0.004, 12);
    expect(bench.description.gluing.clamps).toBe(10);
  });

  it.each([
    ['missing.piece.json', undefined, /no such file/],
    ['broken.piece.json', '{ "name": ', /not whole JSON/],
    ['list.piece.json', '[1]', /braces/],
    ['name.json', '{}', /ends in \.piece\.json/],
  ])('%s is refused in one line', (name, text, words) => {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-piece-'));
    if (text !== undefined) writeFileSync(join(folder, name), text);
    expect(() => openPiece(join(folder, name))).toThrow(words);
  });
});
