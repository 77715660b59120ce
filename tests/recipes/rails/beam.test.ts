import { describe, expect, it } from 'vitest';
import { beam } from '../../../src/recipes/rails/beam.js';
import { forceOf, momentAbout0, partOn } from '../../../src/recipes/rails/beam-loads.js';
import { settled, solveBeam, type BeamCase } from '../../../src/recipes/rails/beam-solver.js';
import { greatestMoment, greatestSag, worstOf } from '../../../src/recipes/rails/beam-worst.js';

const base = { length: '1 m', section: '20 x 20 mm', modulus: '10 GPa' } as const;
const EI = (10e9 * 0.02 * 0.02 ** 3) / 12; // 133.3 N m²
const W = 0.02 ** 3 / 6;
const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);
const texts = (r: { cautions: readonly { text: string }[] }) => r.cautions.map((c) => c.text).join('\n');
const remarks = (r: { workings: readonly { kind: string; text: string }[] }) =>
  r.workings.flatMap((w) => (w.kind === 'remark' ? [w.text] : [])).join('\n');

describe('a bracket of 1 m with 10 N at its tip', () => {
  const given = { ...base, supports: ['fixed 0 m'], loads: ['10 N at 1 m'] };
  it('by hand: moment P L, sag P L³/(3 E I), slope P L²/(2 E I), stresses M/W and 1.5 V/A', () => {
    const r = beam(given);
    near(r.maxMoment.value, 10);
    near(r.maxDeflection.value, 10 / (3 * EI));
    near(r.maxSlope.value, 10 / (2 * EI));
    near(r.bendingStress.value, 10 / W);
    near(r.shearStress.value, (1.5 * 10) / 0.0004);
    near(r.secondMoment.value, 0.02 ** 4 / 12);
    near(r.sectionModulus.value, W);
    expect([r.momentAt.value, r.shearAt.value, r.deflectionAt.value]).toEqual([0, 0, 1]);
  });
  it('its tip carries the load from the left, its foot a moment that turns back', () => {
    const r = beam(given);
    expect(r.diagrams.map((d) => [d.position.value, d.shear.value])).toEqual([
      [0, expect.closeTo(10, 9)],
      [1, expect.closeTo(10, 9)],
    ]);
    expect(r.diagrams[1]!.moment.value).toBe(0);
    near(r.reactions[0]!.moment!.value, -10);
    expect(remarks(r)).toMatch(
      /Solved as 1 support and .* bending alone; loads of 10 N in all, .* push up 10 N\./,
    );
  });
  it('a range is warned of past a twentieth: 3 E I/(20 L²) is 20 N', () => {
    const warned = (load: string) => /more than a twentieth/.test(texts(beam({ ...given, loads: [load] })));
    expect([warned('19.99 N at 1 m'), warned('20.01 N at 1 m')]).toEqual([false, true]);
  });
  it('creeps by the share that stays: 1 + (1.6 - 1) × 0.5', () => {
    const crept = beam({ ...given, long: 'heated room', longShare: '50 %' });
    near(crept.longDeflection.value, (1.3 * 10) / (3 * EI));
    near(crept.maxDeflection.value, 10 / (3 * EI));
    expect(crept.sources.some((s) => /Table 3\.2/.test(s.locator))).toBe(true);
    expect(beam({ ...given, long: 'no creep' }).sources.some((s) => /Table 3\.2/.test(s.locator))).toBe(
      false,
    );
    // Without a choice everything stays and creeps as in a heated room; own weight always does.
    near(beam(given).longDeflection.value, (1.6 * 10) / (3 * EI));
    near(beam({ ...given, category: 'hall' }).longDeflection.value, ((1 + 0.6 * 0.6) * 10) / (3 * EI));
    near(beam({ ...given, category: 'short' }).longDeflection.value, 10 / (3 * EI));
    near(beam({ ...given, place: 'outdoors' }).longDeflection.value, (3 * 10) / (3 * EI));
    // A factor given as a number has nobody to name.
    expect(beam({ ...given, long: 1.6 }).sources.every((s) => s.id)).toBe(true);
  });
});

describe('the verdict', () => {
  // 10 N at the tip: 7.5 MPa in bending, 0.0375 MPa in shear.
  const at = (more: object) => beam({ ...base, supports: ['fixed 0 m'], loads: ['10 N at 1 m'], ...more });
  it.each([
    [{ allowableBending: '7.6 MPa', allowableShear: '0.04 MPa' }, 'yes'],
    [{ allowableBending: '7.4 MPa', allowableShear: '0.04 MPa' }, 'no: too much bending'],
    [{ allowableBending: '7.6 MPa', allowableShear: '0.037 MPa' }, 'no: too much shear'],
    [{ allowableBending: '7.4 MPa', allowableShear: '0.037 MPa' }, 'no: too much bending and shear'],
    [{ allowableBending: '7.4 MPa' }, 'no: too much bending'],
    [{ allowableBending: '7.6 MPa' }, 'yes, shear not checked'],
    [{ allowableShear: '0.04 MPa' }, 'yes, bending not checked'],
    [{}, 'not checked: no stresses to stay under were given'],
  ])('%j: %s', (more, verdict) => expect(at(more).verdict).toBe(verdict));
  it('and the shares used', () => {
    const r = at({ allowableBending: '15 MPa', allowableShear: '0.15 MPa' });
    near(r.bendingUse!.value, 0.5);
    near(r.shearUse!.value, 0.25);
    expect([at({}).bendingUse, at({}).shearUse]).toEqual([undefined, undefined]);
  });
});

describe('what is said beside the answer', () => {
  const simple = { length: '1 m', supports: ['0 m', '1 m'], loads: ['10 N at 0.5 m'], modulus: '10 GPa' };
  const layers = [
    { width: '20 mm', depth: '10 mm' },
    { width: '20 mm', depth: '10 mm' },
  ];
  it('glued layers, loose ones and pieces side by side', () => {
    const text = (section: object) => texts(beam({ ...simple, section } as never));
    expect(text({ layers })).toMatch(/glued layers and boxes are taken as one/);
    expect(text({ layers, loose: true })).not.toMatch(/glued layers/);
    expect(text({ beside: layers })).toMatch(/pieces side by side/);
    expect(text({ width: '20 mm', depth: '10 mm' })).not.toMatch(/glued layers|side by side/);
  });
  it('a support that holds down: 10 N on a tip 0.5 m past two supports 1 m apart lifts the far one by 5 N', () => {
    const r = beam({ ...simple, section: '20 x 20 mm', length: '1.5 m', loads: ['10 N at 1.5 m'] });
    expect(texts(r)).toMatch(/hold the beam down at 0 mm \S.* with 5 N/);
    expect(texts(beam({ ...simple, section: '20 x 20 mm' }))).not.toMatch(/hold the beam down/);
  });
  it('shear deflection where the shear modulus is known', () => {
    const r = beam({ ...simple, section: '20 x 20 mm', shearModulus: '600 MPa' });
    expect(remarks(r)).toMatch(/Solved as 2 supports and .* with shear deflection/);
  });
  it('its own weight as a load', () => {
    const r = beam({
      ...simple,
      section: '20 x 20 mm',
      density: '500 kg/m3',
      ownWeight: true,
      loads: ['0 N/m'],
    });
    near(r.maxShear.value, (500 * 0.0004 * 9.80665) / 2);
  });
});

describe('what is shown of a heavy beam', () => {
  const heavy = () =>
    beam({
      length: '2.7 m',
      supports: ['2.7 m', '0 m', '1.3 m'],
      loads: ['97 kN at 1.9 m', '3 kN/m from 0.3 m to 1.1 m'],
      section: '90 x 190 mm',
      modulus: '9 GPa',
    });
  it('supports and places from left to right, ends without moment, pinned supports without any', () => {
    const r = heavy();
    const sorted = (list: number[]) => expect(list).toEqual([...list].sort((a, b) => a - b));
    expect(r.reactions.map((x) => x.position.in('m'))).toEqual([0, 1.3, 2.7]);
    expect(r.reactions.map((x) => x.moment)).toEqual([undefined, undefined, undefined]);
    sorted(r.diagrams.map((d) => d.position.value));
    const ends = [r.diagrams[0]!, r.diagrams[r.diagrams.length - 1]!];
    expect(ends.map((d) => [d.moment.value, d.deflection.value])).toEqual([
      [0, 0],
      [0, 0],
    ]);
    // The last place is looked at from the left: its shear is what the last support carries.
    near(ends[1]!.shear.value, -r.reactions[2]!.force.value);
    near(
      r.reactions.reduce((sum, x) => sum + x.force.value, 0),
      97000 + 2400,
    );
    expect(remarks(r)).toMatch(/loads of 99\.4 kN in all, and the supports push up 99\.4 kN/);
  });
  it('each place shows what is just right of it', () => {
    // 10 N in the middle of 1 m: 5 N left of it, -5 right of it. Two bays of 1 m, 100 N in the middle of the first:
    // the middle support carries 68.75 N (handbook: 11/16), so 9.375 N of shear go on to the right of it.
    const shear = (more: object, x: number) =>
      beam({ ...base, loads: ['10 N at 0.5 m'], supports: ['0 m', '1 m'], ...more }).diagrams.find(
        (d) => d.position.value === x,
      )!.shear.value;
    expect([shear({}, 0), shear({}, 0.5), shear({}, 1)]).toEqual([
      expect.closeTo(5, 9),
      expect.closeTo(-5, 9),
      expect.closeTo(-5, 9),
    ]);
    const bays = { length: '2 m', supports: ['0 m', '1 m', '2 m'], loads: ['100 N at 0.5 m'] };
    expect(shear(bays, 1)).toBeCloseTo(9.375, 6);
    expect(shear(bays, 2)).toBeCloseTo(9.375, 6);
  });
  it('a beam that carries nothing holds nothing down', () => {
    const r = beam({ ...base, supports: ['0 m', '1 m'], loads: ['0 N/m'] });
    expect(texts(r)).not.toMatch(/hold the beam down/);
  });
});

describe('a support that misses an end', () => {
  it('by less than a millionth of the length stands on it, whatever the length', () => {
    expect([5e-6, 2e-5, 10 - 5e-6, 10 - 2e-5, 10.001].map((x) => settled(x, 10))).toEqual([
      0,
      2e-5,
      10,
      10 - 2e-5,
      10.001,
    ]);
    expect([5e-8, 5e-7, 0.1 - 5e-8, 0.1 - 5e-7].map((x) => settled(x, 0.1))).toEqual([
      0,
      5e-7,
      0.1,
      0.1 - 5e-7,
    ]);
  });
  it('and a load that runs past the end by the last digit ends there', () => {
    const hinge = (position: number) => ({ position, lift: Infinity, turn: 0 });
    const s = solveBeam({
      length: 1,
      EI: 1,
      GA: Infinity,
      supports: [hinge(0), hinge(1)],
      loads: [{ kind: 'spread', from: 0, to: 1 + 1e-13, q1: 1, q2: 1 }],
    });
    expect(s.breaks).toEqual([0, 1]);
  });
});

describe('where things may stand', () => {
  const refuse = (more: object) => () =>
    beam({ ...base, supports: ['0 m', '1 m'], loads: ['1 N/m'], ...more });
  it('supports at least a ten-thousandth of the length apart', () => {
    expect(refuse({ supports: ['0 m', '0.09 mm', '1 m'] })).toThrow(
      /supports\[2\]\.position: got 0\.09 mm.*support 1 is/,
    );
    expect(refuse({ supports: ['0 m', '0.11 mm', '1 m'] })).not.toThrow();
    expect(refuse({ supports: ['1 m', '0.5 m', '0.5 m'] })).toThrow(
      /supports\[3\]\.position: .*support 2 is/,
    );
  });
  it('each kind of load on the beam, each named by its place', () => {
    expect(refuse({ loads: ['1 N/m', '5 N/m from 0 m to 1.1 m'] })).toThrow(/loads\[2\]\.to: got 1100 mm/);
    expect(refuse({ loads: ['1 N m at 1.1 m'] })).toThrow(/loads\[1\]\.position/);
    expect(refuse({ loads: ['5 N/m from 0 m to 1 m', '1 N m at 1 m', '1 N at 1 m'] })).not.toThrow();
  });
  it('one support is enough where it is fixed or springs against turning', () => {
    expect(refuse({ supports: ['0.5 m'] })).toThrow(/got one support that lets the beam turn over it/);
    expect(refuse({ supports: ['fixed 0.5 m'] })).not.toThrow();
    expect(refuse({ supports: [{ position: '0.5 m', turning: '500 N m/rad' }] })).not.toThrow();
  });
});

describe('loads by hand', () => {
  const ramp = { kind: 'spread', from: 1, to: 4, q1: 100, q2: 400 } as const;
  it('a load that grows from 100 to 400 N/m over 3 m: 750 N in all; its moment 100 × 3 × 2.5 + 450 × 3', () => {
    expect(forceOf(ramp)).toBe(750);
    near(momentAbout0(ramp), 100 * 3 * 2.5 + 450 * 3);
    expect(forceOf({ kind: 'moment', at: 1, moment: 5 })).toBe(0);
    expect(momentAbout0({ kind: 'moment', at: 1, moment: 5 })).toBe(5);
    expect([forceOf, momentAbout0].map((f) => f({ kind: 'point', at: 2, force: 5 }))).toEqual([5, 10]);
  });
  it('its part on a stretch, counted from the stretch', () => {
    expect(partOn(ramp, 2, 3, false)).toEqual({ kind: 'spread', from: 0, to: 1, q1: 200, q2: 300 });
    expect(partOn(ramp, 0, 2, false)).toEqual({ kind: 'spread', from: 1, to: 2, q1: 100, q2: 200 });
    expect(partOn(ramp, 4, 5, true)).toBeUndefined();
    expect(partOn(ramp, 0, 1, false)).toBeUndefined();
  });
  it('a load on an edge belongs to the right, but for the last stretch', () => {
    const load = { kind: 'point', at: 2, force: 5 } as const;
    expect(partOn(load, 1, 2, false)).toBeUndefined();
    expect(partOn(load, 1, 2, true)).toEqual({ ...load, at: 1 });
    expect(partOn(load, 2, 3, false)).toEqual({ ...load, at: 0 });
    expect(partOn(load, 2.1, 3, true)).toBeUndefined();
    expect(partOn({ ...load, at: 3 }, 1, 2, true)).toBeUndefined();
  });
});

describe('the greatest of a beam', () => {
  const hinged = (position: number) => ({ position, lift: Infinity, turn: 0 });
  const of = (more: Partial<BeamCase>) =>
    solveBeam({ length: 3, EI: 1000, GA: Infinity, supports: [hinged(0), hinged(3)], loads: [], ...more });
  it('overhang under 100 N/m, 2 m and 1 m: shear 125 N and moment 50 N m, both at the second support (handbook)', () => {
    // R1 = w (l² - a²)/(2 l) = 75 N, R2 = 225 N, shear 75 - 200 = -125 left of it; w a²/2 = 50 against R1²/(2 w) = 28.125.
    const s = of({
      supports: [hinged(0), hinged(2)],
      loads: [{ kind: 'spread', from: 0, to: 3, q1: 100, q2: 100 }],
    });
    const w = worstOf(s);
    expect([w.V.at, w.V.value]).toEqual([2, expect.closeTo(-125, 9)]);
    expect([w.M.at, w.M.value]).toEqual([2, expect.closeTo(-50, 9)]);
    near(greatestMoment(s), 50);
  });
  it('of equals the first: a symmetric beam is marked at its left', () => {
    const w = worstOf(of({ loads: [{ kind: 'spread', from: 0, to: 3, q1: 100, q2: 100 }] }));
    expect([w.V.at, w.V.value, w.slope.at]).toEqual([0, expect.closeTo(150, 9), 0]);
    expect([w.M.at, w.sag.at]).toEqual([expect.closeTo(1.5, 9), expect.closeTo(1.5, 9)]);
  });
  it('of a load that rises and falls the shear is greatest where the load is zero', () => {
    // A bracket of 3 m, load from -100 to +200 N/m: V(x) = 150 + 100 x - 50 x², greatest 200 at x = 1 where q = 0.
    const w = worstOf(
      of({
        supports: [{ position: 0, lift: Infinity, turn: Infinity }],
        loads: [{ kind: 'spread', from: 0, to: 3, q1: -100, q2: 200 }],
      }),
    );
    expect([w.V.at, w.V.value]).toEqual([expect.closeTo(1, 6), expect.closeTo(200, 9)]);
  });
  it('of a load from -100 to +100 N/m on a bracket of 3 m: V(x) = 100 x - 100 x²/3, greatest 75 N in the middle', () => {
    const w = worstOf(
      of({
        supports: [{ position: 0, lift: Infinity, turn: Infinity }],
        loads: [{ kind: 'spread', from: 0, to: 3, q1: -100, q2: 100 }],
      }),
    );
    expect([w.V.at, w.V.value]).toEqual([expect.closeTo(1.5, 6), expect.closeTo(75, 9)]);
  });
  it('of a beam without a load nothing is greatest: zero at the left end', () => {
    expect(Object.values(worstOf(of({ loads: [] })))).toEqual(Array(4).fill({ at: 0, value: 0 }));
  });
  it('a moment at the tip of a bracket bends all of it alike, on either side of a section', () => {
    // 5 N m clockwise at 3 m: M = -5 all along, no shear, the tip turned by M L/(E I).
    const s = of({
      supports: [{ position: 0, lift: Infinity, turn: Infinity }],
      loads: [{ kind: 'moment', at: 3, moment: 5 }],
    });
    for (const side of ['left', 'right'] as const) {
      expect(s.at(1.2, side).M).toBeCloseTo(-5, 9);
      expect(s.at(1.2, side).V).toBeCloseTo(0, 9);
      expect(s.at(1.2, side).slope).toBeCloseTo((5 * 1.2) / 1000, 12);
    }
    expect(s.at(3, 'left').slope).toBeCloseTo((5 * 3) / 1000, 12);
  });
  it('a soft beam sags most where it does among two thousand places looked at', () => {
    // So soft in shear that its share is the larger; the load rises to one side, so that the place is not known beforehand.
    const s = of({ GA: 100, loads: [{ kind: 'spread', from: 0, to: 3, q1: 0, q2: 100 }] });
    const looked = Array.from({ length: 2001 }, (_, i) => (3 * i) / 2000).map(
      (x) => [s.at(x).sag, x] as const,
    );
    const [most, at] = looked.reduce((a, b) => (b[0] > a[0] ? b : a));
    const { sag } = worstOf(s);
    expect(Math.abs(sag.at - at)).toBeLessThan(3 / 2000);
    expect(sag.value).toBeGreaterThanOrEqual(most);
    expect(sag.value / most - 1).toBeLessThan(1e-6);
  });
  it('counts only the loads that lie on a stretch: a bracket of 4 m under four loads', () => {
    // From -100 to 200 N/m over 1 to 4 m, 60 N/m to 1.5 m, 90 N/m from 3 m, 50 N at 3.5 m: 380 N at the wall. Shear 320
    // at 1 m, 328 at 1.4 m where the loads cancel, 327.5 at 1.5 m, and 340 at 2 m where the sloping load is zero.
    const bracket = { position: 0, lift: Infinity, turn: Infinity };
    const loads = [
      { kind: 'spread', from: 1, to: 4, q1: -100, q2: 200 },
      { kind: 'spread', from: 0, to: 1.5, q1: 60, q2: 60 },
      { kind: 'spread', from: 3, to: 4, q1: 90, q2: 90 },
      { kind: 'point', at: 3.5, force: 50 },
    ] as const;
    const lifted = { kind: 'point', at: 4, force: -300 } as const;
    const w = worstOf(of({ length: 4, supports: [bracket], loads }));
    expect([w.V.at, w.V.value]).toEqual([0, expect.closeTo(380, 9)]);
    // Lifted at its tip by 300 N the wall carries 80; the greatest is then left of the tip, where 300 push down.
    expect(worstOf(of({ length: 4, supports: [bracket], loads: [...loads, lifted] })).V.value).toBeCloseTo(
      -300,
      9,
    );
    // Lifted by 100 N at 1.7 m the wall carries 280, and the greatest is the 340 at 2 m.
    const early = worstOf(
      of({ length: 4, supports: [bracket], loads: [...loads, { kind: 'point', at: 1.7, force: -100 }] }),
    );
    expect([early.V.at, early.V.value]).toEqual([expect.closeTo(2, 6), expect.closeTo(340, 9)]);
  });
  it('finds a moment that turns just inside either end', () => {
    // 100 N/m over 3 m with 445 N m at one end: the far support carries 150 + 445/3 = 298.33 N, the near one 1.67; the
    // shear is zero 2.9833 m from the far one, with 298.33²/200 = 445.014 N m.
    const load = { kind: 'spread', from: 0, to: 3, q1: 100, q2: 100 } as const;
    const right = worstOf(of({ loads: [load, { kind: 'moment', at: 3, moment: -445 }] }));
    expect([right.M.at, right.M.value]).toEqual([
      expect.closeTo(3 - 1 / 60, 6),
      expect.closeTo(445 + 1 / 72, 9),
    ]);
    const left = worstOf(of({ loads: [load, { kind: 'moment', at: 0, moment: 445 }] }));
    expect([left.M.at, left.M.value]).toEqual([expect.closeTo(1 / 60, 6), expect.closeTo(445 + 1 / 72, 9)]);
  });
  it('sag within one stretch: the bay of the overhanging beam rises or sinks by itself', () => {
    // 10 N on the tip alone lifts the bay: nothing sinks between the supports; the tip sinks P a² (l + a)/(3 E I).
    const tip = of({ supports: [hinged(0), hinged(2)], loads: [{ kind: 'point', at: 3, force: 10 }] });
    expect(greatestSag(tip, 0, 2)).toBeLessThan(1e-15);
    near(greatestSag(tip, 2, 3), (10 * 3) / (3 * 1000));
    // 10 N in the middle of the bay: P l³/(48 E I) there, and the free end rises.
    const middle = of({ supports: [hinged(0), hinged(2)], loads: [{ kind: 'point', at: 1, force: 10 }] });
    near(greatestSag(middle, 0, 2), (10 * 8) / (48 * 1000));
    expect(greatestSag(middle, 2, 3)).toBeLessThan(1e-15);
  });
  it('sag with shear: w L⁴ 5/384 E I + w L²/(8 G A) at the middle', () => {
    const s = of({ GA: 5000, loads: [{ kind: 'spread', from: 0, to: 3, q1: 100, q2: 100 }] });
    near(worstOf(s).sag.value, (5 * 100 * 81) / (384 * 1000) + (100 * 9) / (8 * 5000));
    near(greatestSag(s, 0, 3), (5 * 100 * 81) / (384 * 1000) + (100 * 9) / (8 * 5000));
  });
});
