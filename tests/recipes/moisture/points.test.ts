// Movement over many points at once: the loop gives what one board at a time gives, and stands aside where it must.
import { describe, expect, it } from 'vitest';
import { compileSweep } from '../../../src/engine/recipe.js';
import { movementAcross } from '../../../src/recipes/moisture/movement-across.js';

const wanted = [
  'change',
  'finalWidth',
  'perSide',
  'low',
  'high',
  'coefficient',
  'fromMoisture',
  'toMoisture',
] as const;
const base = (more: object): Readonly<Record<string, unknown>> =>
  movementAcross.read({
    width: '640 mm',
    timber: 'white oak',
    from: '8 %',
    to: '12 %',
    ...more,
  });
const loop = (given: Readonly<Record<string, unknown>>, varying: readonly string[]) =>
  compileSweep(movementAcross, given, varying, (_, answer) =>
    Object.fromEntries(wanted.map((name) => [name, answer[name] ?? NaN])),
  );

// Within the coefficients' range, past either end, crossing it, at rest, and past fibre saturation, both ways.
const moistures = [0, 0.06, 0.059, 0.08, 0.12, 0.14, 0.141, 0.3, 0.45];
const points = moistures.flatMap((from) => moistures.map((to) => ({ from, to, width: 0.1 + 2 * from + to })));

function same(more: object, varying: readonly (keyof (typeof points)[number])[]): void {
  const given = base(more);
  const run = loop(given, varying);
  const outs = Object.fromEntries(wanted.map((name) => [name, new Float64Array(points.length)]));
  const columns = Object.fromEntries(varying.map((k) => [k, Float64Array.from(points.map((p) => p[k]))]));
  expect(run).toBeDefined();
  run?.(0, points.length, columns, outs);
  points.forEach((p, i) => {
    const one = movementAcross.evaluate({
      ...given,
      ...Object.fromEntries(varying.map((k) => [k, p[k]])),
    }) as unknown as Readonly<Record<string, number | undefined>>;
    for (const name of wanted) {
      const [alone, among] = [one[name], outs[name]?.[i] as number];
      if (alone === undefined) expect(among, name).toBeNaN();
      else expect(among, `${name} at ${JSON.stringify(p)}`).toBeCloseTo(alone, 12);
      if (name !== 'coefficient') expect(Object.is(among, -0), name).toBe(false);
    }
  });
}

describe('the loop of movement', () => {
  it.each([
    [{}],
    [{ fixedAt: 'edge' }],
    [{ cut: 'mixed' }],
    [{ cut: '30 deg' }],
    [{ timber: 'padauk' }],
    [{ timber: 'unknown hardwood' }],
    [{ timber: 'courbaril', cut: 'quarter-sawn' }],
    [{ timber: 'western redcedar' }],
    [{ coefficient: 0.002 }],
    [{ coefficient: 0.002, fixedAt: 'edge' }],
    [{ shrinkage: '9 %' }],
    [{ shrinkage: '9 %', fibreSaturation: '25 %', timber: undefined }],
  ])('%j', (more) => {
    for (const varying of [['from'], ['to'], ['width'], ['from', 'to'], ['from', 'to', 'width']] as const)
      same(more, varying);
  });
  it('takes air for the moisture that does not vary', () => {
    same({ from: '20 degC, 50 %' }, ['to', 'width']);
  });
  it('stands aside where one input is checked against another, or a standard decides', () => {
    const strips = [{ timber: 'white oak', width: '640 mm' }];
    for (const more of [
      { width: undefined },
      { strips, timber: undefined },
      { rule: 'EN 336' },
      { fixedAt: '100 mm' },
      { coefficient: 0.002, shrinkage: '9 %' },
      { timber: undefined },
    ])
      expect(loop(base(more), ['to']), JSON.stringify(more)).toBeUndefined();
  });
});
