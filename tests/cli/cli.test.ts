import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'reckoner-command-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the built command as a person would. */
function reckoner(...words: string[]): Promise<{ code: number; out: string; err: string }> {
  return new Promise((done) => {
    execFile(
      process.execPath,
      [join(root, 'src/launch/reckoner.mjs'), ...words],
      { cwd: folder, timeout: 60_000 },
      (error, out, err) => done({ code: error ? ((error as { code?: number }).code ?? 1) : 0, out, err }),
    );
  });
}

describe('reckoner', () => {
  it('shows one system of units where it is asked to', async () => {
    const words = [
      'work',
      'movementAcross',
      'width=900 mm',
      'timber=red oak',
      'cut=flat-sawn',
      'from=8 %',
      'to=12 %',
    ];
    const inches = await reckoner(...words, '--units', 'inches');
    // 900 mm is 35.43 in, 35 7/16.
    expect(inches.out).toContain('35 7/16 in');
    expect(inches.out).not.toMatch(/^  \w[\w ]*  .*\d mm/m);
    const metric = await reckoner(...words, '--units', 'metric');
    expect(metric.out).not.toMatch(/\d in\b/);
    const wrong = await reckoner(...words, '--units', 'feet');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toMatch(/--units: got "feet", takes metric, inches, both/);
  });
  it('lists and shows every recipe', async () => {
    const { code, out } = await reckoner('list');
    expect(code).toBe(0);
    for (const name of [
      'movementAcross',
      'equilibriumMoisture',
      'stripCount',
      'layerCount',
      'thinningRatio',
      'finishQuantity',
      'boardMeasure',
      'pileYield',
      'railSpan',
    ])
      expect(out).toContain(name);
    const shown = await reckoner('show', 'movementAcross');
    for (const part of [
      'Takes',
      'Gives',
      'Formulas',
      'Sources',
      'Example',
      'width',
      'timber',
      'reckoner work movementAcross',
      // By hand: 900 mm x 0.00369 x 4 is 13.284 mm.
      '13.3 mm',
      'Cautions',
      'A finish slows seasonal movement',
      'Related',
      'seasonalMovement:',
    ])
      expect(shown.out).toContain(part);
    const cup = await reckoner('show', 'cupDepth');
    expect(cup.out).toMatch(/^Limits\n {2}.*wider than its ring radius/m);
  });

  it('works a recipe and prints values with units in JSON at full precision', async () => {
    // Definition: 1 in x 11 in x 14 ft is 12 5/6 board feet (Noyes, Handwork in Wood).
    const { code, out } = await reckoner(
      'work',
      'boardMeasure',
      'thickness=1 in',
      'width=11 in',
      'length=14 ft',
      '--json',
    );
    expect(code).toBe(0);
    const answer = JSON.parse(out) as {
      outputs: { boardFeet: { value: number; unit: string } };
      cautions: unknown[];
    };
    expect(answer.outputs.boardFeet.value).toBeCloseTo(77 / 6, 9);
    expect(answer.outputs.boardFeet.unit).toBe('bf');
    expect(Array.isArray(answer.cautions)).toBe(true);
  });

  it('takes air as JSON or with dots', async () => {
    const one = await reckoner(
      'work',
      'movementAcross',
      'width=900 mm',
      'timber=white oak',
      'cut=flat-sawn',
      'from=8 %',
      'to={"temperature":"21 degC","humidity":"65 %"}',
      '--json',
    );
    const other = await reckoner(
      'work',
      'movementAcross',
      'width=900 mm',
      'timber=white oak',
      'cut=flat-sawn',
      'from=8 %',
      'to.temperature=21 degC',
      'to.humidity=65 %',
      '--json',
    );
    expect(one.code).toBe(0);
    expect(other.out).toBe(one.out);
  });

  it.each([
    [
      ['work', 'boardMeasure', 'width=11 kg', 'lenght=3 m'],
      /^reckoner: boardMeasure: .*length: missing.*width: got the unit "kg".*lenght: no such input; did you mean "length"\?/,
    ],
    [['work', 'bordMeasure'], /did you mean "boardMeasure"/],
    [['work', 'boardMeasure', 'width'], /takes field=value/],
    [['work', 'boardMeasure', 'width=[1,'], /not whole JSON/],
    [['work', 'boardMeasure', 'width=1 in', 'width=2 in'], /given twice/],
    [['work', 'boardMeasure', '__proto__.x=1'], /takes the name of a field/],
    [['nonsense'], /no command "nonsense"/],
    [['work', 'boardMeasure', '--yaml'], /no such option; takes --json/],
    [['run'], /takes one/],
    [['run', 'missing.ipynb', '-o', 'x.html'], /missing\.ipynb/],
    [['solve', 'boardMeasure', 'width'], /target/],
    [['sweep', 'boardMeasure', 'width=1 in'], /no input has a range/],
  ])('says what is wrong with %j in one line and exits 2', async (words, label) => {
    const { code, out, err } = await reckoner(...words);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(err).toMatch(label);
    expect(existsSync(join(folder, 'x.html'))).toBe(false);
  });

  it('sweeps, propagates uncertainty and solves', async () => {
    const swept = await reckoner(
      'sweep',
      'boardMeasure',
      'thickness=1 in',
      'width=4 .. 12 in',
      'length=12 ft',
      '--steps',
      '3',
      '--output',
      'boardFeet',
      '--json',
    );
    const columns = (JSON.parse(swept.out) as { columns: Record<string, { values: number[] }> }).columns;
    // A board 12 ft long and 1 in thick holds as many board feet as it is inches wide.
    expect(columns['boardFeet']?.values.map((v) => Math.round(v * 1e9) / 1e9)).toEqual([4, 8, 12]);
    const found = await reckoner(
      'solve',
      'boardMeasure',
      'width',
      'boardFeet=10 bf',
      'thickness=1 in',
      'length=12 ft',
      '--to',
      '1 m',
      '--json',
    );
    const roots = (JSON.parse(found.out) as { roots: { value: number; unit: string }[] }).roots;
    expect(roots).toHaveLength(1);
    expect(roots[0]?.value).toBeCloseTo(254, 6);
    const spread = await reckoner(
      'uncertain',
      'boardMeasure',
      'thickness=1 in',
      'width=10 in +- 1 in',
      'length=12 ft',
      '--samples',
      '20000',
      '--output',
      'boardFeet',
      '--json',
    );
    expect((JSON.parse(spread.out) as { mean: number }).mean).toBeCloseTo(10, 1);
  });

  it('runs a notebook to each form, and writes nothing when a cell fails', async () => {
    const cell = (source: string): object => ({
      cell_type: 'code',
      id: 'a',
      metadata: {},
      execution_count: null,
      outputs: [],
      source,
    });
    const notebook = (source: string): string =>
      JSON.stringify({ nbformat: 4, nbformat_minor: 5, metadata: {}, cells: [cell(source)] });
    writeFileSync(
      join(folder, 'good.ipynb'),
      notebook(
        "import { boardMeasure } from 'joiners-reckoner';\nboardMeasure({ thickness: '1 in', width: '12 in', length: '12 ft' })",
      ),
    );
    for (const ending of ['ipynb', 'html', 'md']) {
      const { code } = await reckoner('run', 'good.ipynb', '-o', `out.${ending}`);
      expect(code).toBe(0);
      expect(readFileSync(join(folder, `out.${ending}`), 'utf8')).toContain('12 bf');
    }
    writeFileSync(join(folder, 'bad.ipynb'), notebook('const a = 1;\nthrow new Error("no glue left");'));
    const bad = await reckoner('run', 'bad.ipynb', '-o', 'bad.html');
    expect(bad.code).toBe(1);
    expect(bad.err).toMatch(/cell 1, line 2.*no glue left/);
    expect(existsSync(join(folder, 'bad.html'))).toBe(false);
  }, 120_000);

  it('runs a notebook with the values of -p in the place of those in its cell tagged parameters', async () => {
    const cell = (source: string, ...tags: string[]): object => ({
      cell_type: 'code',
      id: `c${tags.length}`,
      metadata: { tags },
      execution_count: null,
      outputs: [],
      source,
    });
    const notebook = {
      nbformat: 4,
      nbformat_minor: 5,
      metadata: {},
      cells: [
        cell("let width = '900 mm', pieces = 1;", 'parameters'),
        cell('`${width} in ${pieces * 2} halves`'),
      ],
    };
    writeFileSync(join(folder, 'wide.ipynb'), JSON.stringify(notebook));
    const run = (...words: string[]): ReturnType<typeof reckoner> =>
      reckoner('run', 'wide.ipynb', '-o', 'wide-run.ipynb', ...words);
    expect((await run('-p', 'width=640 mm', '-p', 'pieces=3')).code).toBe(0);
    const text = readFileSync(join(folder, 'wide-run.ipynb'), 'utf8');
    expect(text).toContain('640 mm in 6 halves');
    expect(text).toContain('injected-parameters');
    // A run of the run replaces the values, and adds no second cell.
    expect((await reckoner('run', 'wide-run.ipynb', '-o', 'again.ipynb', '-p', 'pieces=4')).code).toBe(0);
    const again = readFileSync(join(folder, 'again.ipynb'), 'utf8');
    expect(again).toContain('900 mm in 8 halves');
    expect(again.match(/injected-parameters/g)).toHaveLength(1);
    for (const [words, message] of [
      [['-p', 'widht=640 mm'], /does not declare widht with let/],
      [['-p', 'width'], /takes NAME=VALUE/],
    ] as const) {
      const { code, err } = await run(...words);
      expect(code).toBe(2);
      expect(err).toMatch(message);
    }
  }, 120_000);
});
