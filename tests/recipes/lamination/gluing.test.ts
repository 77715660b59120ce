import { describe, expect, it } from 'vitest';
import { caulCamber } from '../../../src/recipes/lamination/caul-camber.js';
import { clampPlan } from '../../../src/recipes/lamination/clamp-plan.js';
import { glueQuantity } from '../../../src/recipes/lamination/glue-quantity.js';
import { glueTiming } from '../../../src/recipes/lamination/glue-timing.js';
import {
  measuredClamps,
  measuredForce,
  printedMoisture,
  printedOpenTime,
  printedPressure,
  printedSpread,
  timberKinds,
  weakerHand,
} from '../../../src/recipes/lamination/gluing-data.js';

const texts = (r: { cautions: readonly { text: string }[] }) => r.cautions.map((c) => c.text).join('\n');
const remarks = (r: { workings: readonly { kind: string; text: string }[] }) =>
  r.workings.flatMap((w) => (w.kind === 'remark' ? [w.text] : [])).join('\n');
const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);

describe('the printed tables', () => {
  const psi = 6894.757293168;
  it('have a row for every kind of timber and every clamp that may be named', () => {
    for (const kind of timberKinds) {
      const { low, high } = printedPressure(kind);
      expect(low).toBeGreaterThan(0);
      expect(high).toBeGreaterThanOrEqual(low);
    }
    for (const clamp of measuredClamps) expect(measuredForce(clamp).force).toBeGreaterThan(1000);
  });
  it('as printed: 100 to 150 psi for softwood, 370 lbf, the weaker hand 0.6, 5 to 30 min, 8 to 12 and 6 to 8 %, 35 to 50 lb for 1000 ft²', () => {
    near(printedPressure('softwood').low, 100 * psi);
    near(printedPressure('softwood').high, 150 * psi);
    near(measuredForce('parallel-jaw clamp').force, 370 * 4.4482216152605);
    expect(weakerHand().factor).toBe(0.6);
    expect([printedOpenTime().low, printedOpenTime().high]).toEqual([300, 1800]);
    const share = (item: 'PVA glue' | 'most of USA interior') => [
      printedMoisture(item).low,
      printedMoisture(item).high,
    ];
    expect([share('PVA glue'), share('most of USA interior')]).toEqual([
      [0.08, 0.12],
      [0.06, 0.08],
    ]);
    near(printedSpread().low, (35 * 0.45359237) / (1000 * 0.3048 ** 2));
    near(printedSpread().high, (50 * 0.45359237) / (1000 * 0.3048 ** 2));
    // Read from the tables once, and then kept.
    expect(measuredForce('parallel-jaw clamp')).toBe(measuredForce('parallel-jaw clamp'));
    expect(printedSpread()).toBe(printedSpread());
  });
});

describe('clampPlan', () => {
  const good = {
    length: '1 m',
    jointHeight: '40 mm',
    pressure: '100 kPa',
    clampForce: '1 kN',
    outerWidth: '100 mm',
  } as const;

  it('by hand: 4 kN over clamps of 1 kN takes four, a spread of 200 mm five; they stand from the middle outward', () => {
    const a = clampPlan(good);
    expect([a.byForce, a.bySpacing, a.clamps, a.governedBy]).toEqual([4, 5, 5, 'spacing']);
    near(a.totalForce.value, 4000);
    near(a.forceEach.value, 800);
    near(a.spacing.value, 0.2);
    near(a.coverEach.value, 0.2);
    expect(a.positions.map((p) => [p.clamp, Math.round(p.position.in('mm')), p.side])).toEqual([
      [3, 500, 'below'],
      [2, 300, 'above'],
      [4, 700, 'above'],
      [1, 100, 'below'],
      [5, 900, 'below'],
    ]);
    expect(a.reachOk).toBeUndefined();
  });
  it('says what decides: spacing, force, or both alike', () => {
    expect(clampPlan({ ...good, clampForce: '500 N' }).governedBy).toBe('force');
    expect(clampPlan({ ...good, clampForce: '800 N' }).governedBy).toBe('force and spacing alike');
  });
  it('spreads through the pad, no wider than the pad is long: min(60, 0 + 2 20) + 2 100', () => {
    const cover = (more: object) => clampPlan({ ...good, pad: '20 mm', ...more }).coverEach.value;
    near(cover({ padLength: '60 mm' }), 0.24);
    near(cover({ padLength: '60 mm', head: '30 mm' }), 0.26);
    near(cover({ padLength: '30 mm' }), 0.23);
    // A batten all along: 2 (100 + 20).
    near(cover({}), 0.24);
  });
  it('a thin wide slab opens on one face: pi² E L t³ / (12 W²) times (2/pi acos(6 e/t))²', () => {
    const r = clampPlan({
      ...good,
      jointHeight: '20 mm',
      slabWidth: '640 mm',
      acrossModulus: '300 MPa',
    });
    const buckles = (Math.PI ** 2 * 300e6 * 1 * 0.02 ** 3) / (12 * 0.64 ** 2);
    near(r.bucklingForce!.value, buckles);
    near(r.liftForce!.value, buckles * ((2 / Math.PI) * Math.acos(0.6)) ** 2);
    const heavy = { ...good, jointHeight: '20 mm', slabWidth: '640 mm', pressure: '1 MPa' };
    expect(texts(clampPlan(heavy as never))).toMatch(/it may jump up out of the clamps/);
    expect(texts(clampPlan({ ...heavy, cauls: true }))).toMatch(/the cauls hold it/);
    expect(texts(clampPlan(heavy as never))).toMatch(/open on one face from/);
    expect(texts(clampPlan(good))).not.toMatch(/open on one face/);
  });
  it('says what a mixed set reaches, and how to glue in stages where it is too short', () => {
    const owned = [
      { force: '1 kN', count: 3, reach: '900 mm' },
      { force: '800 N', count: 4, reach: '400 mm' },
    ];
    // 4 kN on 400 cm²: seven clamps give 6.2 kN, 155 kPa.
    const all = clampPlan({ ...good, owned, needReach: '400 mm' });
    near(all.ownedPressure!.value, 6200 / 0.04);
    expect([all.ownedClamps, all.ownedVerdict]).toEqual([7, 'They will do.']);
    const wide = clampPlan({ ...good, owned, needReach: '700 mm' });
    expect(wide.ownedClamps).toBe(3);
    expect(wide.ownedVerdict).toBe(
      'Not enough: 75 % of the force, and 3 of the 5 clamps that the spread of pressure takes. In stages: glue 2 slabs, 1 at once, each 350 mm wide, then join them with 5 clamps over 700 mm, 2 of them two joined head to head.',
    );
    // Two slabs of 350 mm without pads: all seven clamps reach 350 mm, one slab at a time. Over 700 mm three reach
    // alone and the four of 400 mm make two pairs: 3 kN and twice 800 N on 400 cm².
    expect(
      wide.stages!.map((s) => [s.width.in('mm'), s.reach.in('mm'), s.clamps, s.pairs, s.glueUps, s.enough]),
    ).toEqual([
      [350, 350, 7, 0, 2, 'yes'],
      [700, 700, 5, 2, 1, 'yes'],
    ]);
    near(wide.stages![0]!.pressure.value, 6200 / 0.04);
    near(wide.stages![1]!.pressure.value, 4600 / 0.04);
    // Three of them alone cannot press any slab, however narrow.
    expect(clampPlan({ ...good, owned: [owned[0]!], needReach: '700 mm' }).stages).toBeUndefined();
    expect(() => clampPlan({ ...good, owned: [{ count: 2 }] })).toThrow(
      /owned\[1\]\.force: got neither kind nor force/,
    );
  });
  it('reaches or not only where both lengths are given; a reach just as long does', () => {
    expect(clampPlan({ ...good, reach: '900 mm' }).reachOk).toBeUndefined();
    expect(clampPlan({ ...good, needReach: '900 mm' }).reachOk).toBeUndefined();
    expect(clampPlan({ ...good, reach: '12 in', needReach: '304.8 mm' }).reachOk).toBe(true);
    expect(texts(clampPlan({ ...good, reach: '12 in', needReach: '304.8 mm' }))).not.toMatch(
      /the clamps reach/,
    );
    expect(clampPlan({ ...good, reach: '304.7 mm', needReach: '12 in' }).reachOk).toBe(false);
  });
  it('takes a thousand clamps and not one more, and names what asks for them', () => {
    expect(clampPlan({ ...good, clampForce: '4 N' }).clamps).toBe(1000);
    expect(() => clampPlan({ ...good, clampForce: '3.999 N' })).toThrow(
      /clampForce: needs 1001 clamps, takes what needs 1000 or fewer/,
    );
    expect(clampPlan({ ...good, outerWidth: '0.5 mm' }).clamps).toBe(1000);
    expect(() => clampPlan({ ...good, outerWidth: '0.4999 mm' })).toThrow(/outerWidth: needs 1001/);
    expect(() => clampPlan({ ...good, clampForce: '2 N', outerWidth: '0.25 mm' })).toThrow(
      /clampForce: needs 2000/,
    );
  });
  it('counts on the weaker hand, 0.6 of the mean: three clamps by force are five by it', () => {
    expect(texts(clampPlan({ ...good, clampForce: '4 kN' }))).toMatch(
      /with that force alone you need 2 clamps/,
    );
    expect(texts(clampPlan({ ...good, clampForce: '1350 N' }))).toMatch(/you need 5 clamps/);
  });
  it('warns of one clamp alone, and of clamps nearer than 75 mm', () => {
    const one = clampPlan({ ...good, length: '50 mm' });
    expect(one.clamps).toBe(1);
    expect(texts(one)).toMatch(/with one clamp nothing stands against bowing/);
    expect(texts(one)).not.toMatch(/closer than most clamps/);
    const every = (outerWidth: string) =>
      /closer than most clamps/.test(texts(clampPlan({ ...good, length: '0.75 m', outerWidth })));
    // 750 mm over 75 mm is ten clamps each 75 mm; a hair less makes them eleven, each 68 mm.
    expect([every('37.5 mm'), every('37.4 mm')]).toEqual([false, true]);
    expect(texts(clampPlan(good))).not.toMatch(/with one clamp/);
  });
  it('says half the pressure for quarter-sawn hardwood, not for softwood nor for polyurethane', () => {
    const text = (timberKind: (typeof timberKinds)[number]) =>
      /quarter-sawn hardwood edge takes about half/.test(
        texts(clampPlan({ ...good, pressure: undefined, timberKind })),
      );
    expect([text('hardwood'), text('softwood'), text('hardwood polyurethane')]).toEqual([true, false, false]);
  });
  it('says the printed pressures: a range, or the one figure', () => {
    const of = (timberKind: string) =>
      remarks(clampPlan({ ...good, pressure: undefined, timberKind } as never));
    expect(of('softwood')).toMatch(/Printed for softwood: 0\.689 MPa to 1\.03 MPa; the upper end is taken/);
    expect(of('high-density')).toMatch(/Printed for high-density: 1\.7 MPa\./);
    expect(remarks(clampPlan({ ...good, clampForce: 'parallel-jaw clamp' }))).toMatch(
      /Measured mean force, parallel-jaw clamp: 1646 N/,
    );
  });
});

describe('glueTiming', () => {
  const good = {
    joints: 15,
    perJoint: '45 s',
    openTime: '10 min',
    clampsUp: '2 min',
    hold: '40 min',
  } as const;
  it('by hand: 8 min for ten joints of 45 s; two batches, of eight and seven', () => {
    const a = glueTiming(good);
    expect([a.batches, a.jointsPerBatch, a.spare.in('s'), a.openHere.in('s')]).toEqual([2, 10, 30, 600]);
    const s = (q: { in(unit: 's'): number }) => q.in('s');
    expect(
      a.plan.map((b) => [b.batch, b.joints, s(b.start), s(b.closed), s(b.clampsOff), s(b.spare)]),
    ).toEqual([
      [1, 8, 0, 360, 2880, 120],
      [2, 7, 2880, 3195, 5715, 165],
    ]);
    expect(a.total.in('s')).toBe(5715);
    expect(remarks(a)).toMatch(/^Printed for PVA glue at 20 °C: 5 to 30 min in the open;/);
  });
  it('with a closed time the clamps are set in that: thirteen joints in ten minutes', () => {
    const a = glueTiming({ ...good, closedTime: '5 min' });
    expect([a.jointsPerBatch, a.batches, a.spare.in('s')]).toEqual([13, 2, 15]);
    expect(texts(a)).not.toMatch(/no closed time was given/);
    expect(texts(glueTiming(good))).toMatch(/no closed time was given/);
  });
  it('ten degrees warmer halves the open time, and nothing is said of a closed time that was not given', () => {
    // (10 min / 2 - 2 min) / 45 s = 4 joints; four batches of 4, 4, 4 and 3.
    const a = glueTiming({ ...good, temperature: '30 degC' });
    expect([a.jointsPerBatch, a.batches, a.spare.in('s'), a.openHere.in('s')]).toEqual([4, 4, 0, 300]);
    expect(a.workings.filter((w) => /closed time/.test(w.text))).toEqual([]);
    const both = glueTiming({ ...good, temperature: '30 degC', closedTime: '5 min' });
    expect(both.workings.filter((w) => /closed time/.test(w.text))).toHaveLength(1);
  });
  it('a glue-up that fits has as many joints in its batch as there are', () => {
    expect(glueTiming({ ...good, joints: 3 }).jointsPerBatch).toBe(3);
  });
  it('clamps may take all of the closed time, not more, in the air of the day', () => {
    const at =
      (clampsUp: string, more: object = {}) =>
      () =>
        glueTiming({ ...good, closedTime: '5 min', clampsUp, ...more });
    expect(at('5 min')).not.toThrow();
    expect(at('5.01 min')).toThrow(/clampsUp: got 5 min, takes at most the closed time of 5 min$/);
    expect(at('5 min', { temperature: '30 degC' })).toThrow(
      /takes at most the closed time of 2\.5 min in this air$/,
    );
  });
  it('says how much time there is for one joint', () => {
    const at = (more: object) => () =>
      glueTiming({ joints: 1, perJoint: '6 min', openTime: '5 min', ...more });
    expect(at({})).toThrow(/perJoint: got 6 min, takes at most 5 min: the glue skins in 5 min, before/);
    expect(at({ clampsUp: '30 s' })).toThrow(/got 6 min beside 30 s for the clamps, takes at most 4\.5 min/);
    expect(at({ clampsUp: '7 min' })).toThrow(/takes at most 0 s: the glue skins/);
    expect(at({ temperature: '30 degC' })).toThrow(/skins in 2\.5 min in this air/);
    expect(at({ perJoint: '59.9 s', openTime: '50 s' })).toThrow(/got 59\.9 s/);
    expect(at({ perJoint: '60 s', openTime: '50 s' })).toThrow(/got 1 min/);
    expect(at({ perJoint: '5 min' })).not.toThrow();
  });
  it('warns under 10 and over 35 °C, at neither', () => {
    const level = (t: string) =>
      texts(glueTiming({ ...good, joints: 1, perJoint: '1 s', clampsUp: '0 s', temperature: t }));
    expect(level('9.9 degC')).toMatch(/chalky/);
    expect(level('10 degC')).not.toMatch(/chalky/);
    expect(level('35.1 degC')).toMatch(/is a guess/);
    expect(level('35 degC')).not.toMatch(/is a guess/);
    expect(texts(glueTiming(good))).not.toMatch(/chalky|is a guess/);
  });
  it('warns when less than a tenth of the open time is left', () => {
    const text = (perJoint: string) =>
      /less than a tenth/.test(texts(glueTiming({ joints: 10, perJoint, openTime: '10 min' })));
    expect([text('54 s'), text('54.1 s')]).toEqual([false, true]);
  });
});

describe('glueQuantity', () => {
  const good = { jointLength: '2 m', jointHeight: '50 mm', joints: 10, spread: '200 g/m2' } as const;
  it('by hand: 1 m², 200 g, with a tenth more 220 g, at 1.1 kg/L 200 mL, 22 g a joint', () => {
    const a = glueQuantity({ ...good, waste: '10 %' });
    near(a.area.value, 1);
    near(a.mass.in('g'), 220);
    near(a.volume.in('mL'), 200);
    near(a.massPerJoint.in('g'), 22);
    expect(remarks(a)).toMatch(/171 to 244 g\/m²/);
    expect(texts(a)).toMatch(/8 to 12 % moisture[\s\S]*glued at 6 to 8 %/);
  });
  it('says when nothing is added, and when the spread is out of print', () => {
    const text = (more: object) => texts(glueQuantity({ ...good, ...more }));
    expect(text({})).toMatch(/nothing is added for squeeze-out/);
    expect(text({ waste: '1 %' })).not.toMatch(/nothing is added/);
    // Printed as 170 to 250 g/m² beside 35 to 50 lb for 1000 ft²: both ends of both are inside.
    expect(text({ spread: '300 g/m2' })).toMatch(/300 g\/m² lies outside the 171 to 244 g\/m² printed/);
    const out = (spread: string) => /lies outside/.test(text({ spread }));
    expect(['170.6 g/m2', '170.8 g/m2', '250 g/m2', '251.4 g/m2', '251.5 g/m2'].map(out)).toEqual([
      true,
      false,
      false,
      false,
      true,
    ]);
  });
});

describe('what a sweep evaluates', () => {
  it('agrees with what is calculated from text, by named timber, clamp and glue', () => {
    const clamps = clampPlan({ ...clampPlan.example });
    const given = clampPlan.read(clampPlan.example);
    expect(clampPlan.evaluate(given)).toMatchObject({
      clamps: clamps.clamps,
      totalForce: clamps.totalForce.value,
    });
    expect(glueQuantity.evaluate({ jointLength: 2, jointHeight: 0.05, joints: 10 }).mass).toBeCloseTo(
      0.2,
      12,
    );
    expect(glueTiming.evaluate({ joints: 15, perJoint: 45, openTime: 600, clampsUp: 120 }).batches).toBe(2);
  });
});

describe('caulCamber', () => {
  const good = {
    length: '640 mm',
    width: '45 mm',
    depth: '60 mm',
    timber: 'C24',
    clampForceEach: '2 kN',
  } as const;
  // EN 338: C24 has 11000 and 24 MPa. I = 45 × 60³/12 = 810000 mm⁴; camber 5 × 2 F L³/(384 E I).
  const camber = (F: number) => (10 * F * 640 ** 3) / (384 * 11000 * 810000);
  it('by hand: crown, stress, press and what to plane off at each eighth', () => {
    const a = caulCamber(good);
    near(a.camber.in('mm'), camber(2000));
    near(a.stress.in('MPa'), (6.25 * 640 ** 2 * 6) / (8 * 45 * 3600));
    near(a.press.in('N/mm'), 6.25);
    // The sag of a beam at an eighth, a quarter and three eighths: 16/5 (x - 2 x³ + x⁴) = 0.38828125, 0.7125, 0.92578125.
    const planed = a.marks.map((m) => [m.position.in('mm'), m.planeOff.value / a.camber.value]);
    const wanted = [1, 1 - 0.38828125, 0.2875, 1 - 0.92578125, 0];
    planed.forEach(([at, off], i) => {
      expect(at).toBeCloseTo(80 * i, 9);
      expect(off).toBeCloseTo(wanted[i]!, 9);
    });
    expect(a.ok).toBe(true);
    expect(remarks(a)).toMatch(/C24: modulus 11 GPa \(characteristic\)/);
    expect(remarks(a)).toMatch(/Stress allowed for some hours under clamps: 13\.3 MPa/);
  });
  it('may be bent to the working stress of every recipe for a load of some hours', () => {
    const psi = 6894.757293168;
    const allowed = (timber: string) => caulCamber({ ...good, timber }).allowed!.value;
    // EN 1995-1-1: k_mod 0.9, k_h (150/60)^0.2, 1.3 and 1.5.
    near(allowed('C24'), (0.9 * 2.5 ** 0.2 * 24e6) / 1.95);
    // ASTM D245: bur oak, the lowest of the white oaks, green, R 0.19, 2.3, size, C_D 1.25.
    near(
      allowed('white oak'),
      ((7200 * psi * (1 - 1.645 * 0.16)) / 2.3) * 0.19 * (50.8 / 60) ** (1 / 9) * 1.25,
    );
    near(allowed('Hem-Fir No.2 2x-4x'), 850 * psi * 1.25 * 1.5);
  });
  it('carries the clamps up to that stress', () => {
    // At 6 w L²/(8 b d²) with w = 2 F/L: F = f × 8 × 45 × 3600/(12 × 640).
    const F = (((0.9 * 2.5 ** 0.2 * 24) / 1.95) * 8 * 45 * 3600) / (12 * 640);
    expect(caulCamber({ ...good, clampForceEach: `${F * 0.9999} N` }).ok).toBe(true);
    const over = caulCamber({ ...good, clampForceEach: `${F * 1.0001} N` });
    expect(over.ok).toBe(false);
    expect(texts(over)).toMatch(/bent further than its timber safely carries/);
  });
  it('is not called safe where no strength is known', () => {
    const board = {
      name: 'board',
      basis: 'as printed',
      modulus: { low: 3e9, middle: 3e9, high: 3e9 },
      citations: [],
      doubts: [],
    };
    const a = caulCamber({ ...good, timber: board as never });
    expect([a.allowed, a.ok, a.camberLow, a.camberHigh]).toEqual([undefined, false, undefined, undefined]);
    expect(texts(a)).toMatch(/no bending strength is in the data/);
    expect(remarks(a)).not.toMatch(/Stress allowed/);
  });
  it('has a range where the modulus has: C24 from 7400 MPa', () => {
    const a = caulCamber(good);
    near(a.camberHigh!.in('mm'), (camber(2000) * 11) / 7.4);
    near(a.camberLow!.in('mm'), camber(2000));
  });
  it('is warned of under ten depths, over 20 mm of crown and under 0.3 mm', () => {
    expect(texts(caulCamber({ ...good, length: '600 mm' }))).not.toMatch(/shorter than ten times/);
    expect(texts(caulCamber({ ...good, length: '599 mm' }))).toMatch(/shorter than ten times/);
    const at = (mm: number) =>
      texts(caulCamber({ ...good, clampForceEach: `${(2000 * mm) / camber(2000)} N` }));
    expect(at(20.01)).toMatch(/a crown of 20 mm is too limber/);
    expect(at(19.99)).not.toMatch(/too limber/);
    expect(at(0.2999)).toMatch(/a crown of 0\.3 mm is less than a plane sets/);
    expect(at(0.3001)).not.toMatch(/less than a plane sets/);
  });
  it('names each source of a group once, and each row of a species', () => {
    const group = caulCamber({ ...good, timber: 'unknown softwood' });
    const rows = group.sources.filter((s) => s.locator === 'rows of all its species').map((s) => s.id);
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows).size).toBe(rows.length);
    expect(group.sources.some((s) => s.locator === 'Table 5-3b')).toBe(false);
    const oak = caulCamber({ ...good, timber: 'white oak' });
    expect(oak.sources.some((s) => s.locator === 'Table 5-3b')).toBe(true);
    expect(texts(oak)).not.toMatch(/recalled[^\n]*Table 5-3b/);
  });
});
