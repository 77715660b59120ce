import { execFile } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'reckoner-piece-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
for (const name of [
  'tea-counter.piece.json',
  'tea-counter-boards.csv',
  'hall-air.csv',
  'porch-bench.piece.json',
])
  copyFileSync(join(root, 'data/demo', name), join(folder, name));
const counter = JSON.parse(readFileSync(join(folder, 'tea-counter.piece.json'), 'utf8')) as {
  pile: Record<string, unknown>;
};
counter.pile['timeLimit'] = '0.3 s';
writeFileSync(join(folder, 'tea-counter.piece.json'), JSON.stringify(counter));

/** Runs the built command as a person would. */
function reckoner(...words: string[]): Promise<{ code: number; out: string; err: string }> {
  return new Promise((done) => {
    execFile(
      process.execPath,
      [join(root, 'src/launch/reckoner.mjs'), ...words],
      { cwd: folder, timeout: 120_000 },
      (error, out, err) => done({ code: error ? ((error as { code?: number }).code ?? 1) : 0, out, err }),
    );
  });
}

/** The tea counter with its feet under the middle alone. */
function spoilt(): string {
  const input = JSON.parse(readFileSync(join(folder, 'tea-counter.piece.json'), 'utf8')) as {
    parts: Record<string, Record<string, unknown>>;
  };
  Object.assign(input.parts['foot'] as object, { from: '200 mm', to: '440 mm' });
  Object.assign(input.parts['leg'] as object, { across: ['235 mm', '405 mm'] });
  Object.assign(input.parts['long rail'] as object, { across: ['220 mm', '420 mm'] });
  Object.assign(input.parts['brace'] as object, { across: ['420 mm'] });
  writeFileSync(join(folder, 'tips.piece.json'), JSON.stringify(input));
  return 'tips.piece.json';
}

describe('reckoner piece', () => {
  it('checks a piece and exits 0 where no safety question fails', async () => {
    const { code, out, err } = await reckoner('piece', 'check', 'tea-counter.piece.json');
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toMatch(/No safety question fails/);
  });

  it('exits 1 where one fails, names it and says what would mend it', async () => {
    const { code, out, err } = await reckoner('piece', 'check', spoilt());
    expect(code).toBe(1);
    expect(err).toMatch(/not safe as described: Does it tip/);
    expect(out).toMatch(/What would make it pass:/);
    expect(out).toMatch(/use\.standsFree/);
  });

  it('prints every answer as JSON and as text', async () => {
    const { out } = await reckoner('piece', 'check', 'tea-counter.piece.json', '--quick', '--json');
    const read = JSON.parse(out) as { safe: boolean; questions: { name: string; verdict: string }[] };
    expect(read.safe).toBe(true);
    expect(read.questions.length).toBeGreaterThanOrEqual(25);
    expect(read.questions.find((q) => q.name === 'pileEnough')?.verdict).toBe('open');
    expect((await reckoner('piece', 'show', 'porch-bench.piece.json')).out).toMatch(/Assumed/);
  });

  it.each(['note', 'cards', 'bill', 'handout', 'cuts', 'templates'])(
    'writes %s',
    async (action) => {
      const { out, err } = await reckoner('piece', action, 'tea-counter.piece.json', '-o', `${action}.html`);
      expect(err).toBe('');
      expect(out).toContain(`${action}.html`);
      expect(readFileSync(join(folder, `${action}.html`), 'utf8')).toMatch(/<\/(?:html|div)>\s*$/);
    },
    120_000,
  );

  it.each([
    [['piece'], /takes check\|show/],
    [['piece', 'mend', 'x.piece.json'], /takes check\|show/],
    [['piece', 'check', 'missing.piece.json'], /no such file/],
    [['piece', 'check', 'hall-air.csv'], /ends in \.piece\.json/],
  ])('says what is wrong with %j in one line and exits 2', async (words, says) => {
    const { code, out, err } = await reckoner(...words);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(err).toMatch(says);
    expect(existsSync(join(folder, 'missing-check.html'))).toBe(false);
  });

  it('names several wrong values together by their paths', async () => {
    const input = JSON.parse(readFileSync(join(folder, 'porch-bench.piece.json'), 'utf8')) as {
      parts: Record<string, Record<string, unknown>>;
      top: Record<string, unknown>;
    };
    (input.parts['side rail'] as Record<string, unknown>)['section'] = '45';
    input.top['thickness'] = '45 kg';
    writeFileSync(join(folder, 'wrong.piece.json'), JSON.stringify(input));
    const { code, err } = await reckoner('piece', 'check', 'wrong.piece.json');
    expect(code).toBe(2);
    expect(err).toMatch(/parts\.side rail\.section/);
    expect(err).toMatch(/top\.thickness/);
  });
});
