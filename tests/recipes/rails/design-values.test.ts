import { describe, expect, it } from 'vitest';
import { TraceRecorder } from '../../../src/engine/trace.js';
import { acrossOf } from '../../../src/recipes/rails/cross-grain-properties.js';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { spanCase } from '../../../src/recipes/rails/span-limits.js';
import { greenFigures } from '../../../src/materials/working-stress/green-figures.js';
import { findGrade } from '../../../src/materials/grades.js';
import { findSpecies } from '../../../src/materials/species.js';
import {
  materialProperties,
  isStructuralMaterial,
  structuralMaterial,
  timberOrGrade,
} from '../../../src/materials/elastic-properties.js';

const psi = 6894.757293168;
/** The rail of 45 x 95 mm under 450 N/m for long in a heated room, all of it imposed, unless another is asked for. */
const materialFor = (more: object, rank?: 'low' | 'middle' | 'high') => {
  const given = railSpan.read({ section: '45 x 95 mm', load: '450 N/m', ...more });
  const trace = new TraceRecorder();
  const { material } = spanCase(given, given.section, trace, rank);
  return { given, trace, material, text: trace.cautions.map((c) => c.text).join('\n') };
};
const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);
// Depth factors at 95 mm: EN 1995-1-1 (150/95)^0.2, ASTM D245 (50.8/95)^(1/9).
const k_h = (150 / 95) ** 0.2;
const C_d = (50.8 / 95) ** (1 / 9);

describe('a grade', () => {
  it('C24 of EN 338 (24 and 4 MPa, 11000 and 690 MPa, 420 kg/m³): k_mod k_h f / (1.3 × 1.5), shear by 0.67', () => {
    const { material, trace, text } = materialFor({ grade: 'C24' });
    near(material.E, 11e9);
    near(material.G, 690e6);
    near(material.bending, (0.7 * k_h * 24e6) / 1.95);
    near(material.shear, (0.7 * 0.67 * 4e6) / 1.95);
    expect(material.density).toBe(420);
    // Its figures were read in print, so that nothing is doubted.
    expect(text).toBe('');
    expect(trace.citations.map((c) => c.id)).toEqual(['en-338-2016']);
    near(materialFor({ grade: 'C24', category: 'hall' }).material.bending, (0.8 * k_h * 24e6) / 1.95);
    near(materialFor({ grade: 'C24', place: 'outdoors' }).material.bending, (0.55 * k_h * 24e6) / 1.95);
  });
  it('with a permanent load takes the mean load factor of the two: (1.35 G + 1.5 Q) / (G + Q)', () => {
    const { material } = materialFor({ grade: 'C24', category: 'hall', permanent: '150 N/m' });
    near(material.bending, (0.8 * k_h * 24e6) / 1.3 / ((1.35 * 150 + 1.5 * 450) / 600));
  });
  it('D30 and MGP10 are partly recalled, and say so', () => {
    expect(materialFor({ grade: 'D30' }).text).toMatch(/^grade D30: .*not yet verified/);
    expect(materialFor({ grade: 'MGP10' }).text).toMatch(/^grade MGP10: .*not yet verified/);
  });
  it('MGP10 of AS 1720 (17 and 2.6 MPa): 0.85 × 0.57 f / 1.5, F5 (14 MPa) 0.7 × 0.57 f / 1.5', () => {
    const { material } = materialFor({ timber: 'MGP10' });
    near(material.bending, (0.85 * 0.57 * 17e6) / 1.5);
    near(material.shear, (0.85 * 0.57 * 2.6e6) / 1.5);
    expect(material.density).toBeUndefined();
    near(materialFor({ timber: 'F5' }).material.bending, (0.7 * 0.57 * 14e6) / 1.5);
  });
  it('creeps by its own standard: an Australian grade twice, others 1.6 times in a heated room', () => {
    const creep = (more: object) => {
      const given = railSpan.read({ section: '45 x 95 mm', load: '450 N/m', ...more });
      return spanCase(given, given.section, new TraceRecorder()).creep;
    };
    near(creep({ grade: 'MGP10' }), 2);
    near(creep({ grade: 'C24' }), 1.6);
    near(creep({ timber: 'white oak', category: 'hall' }), 1 + 0.6 * 0.6);
    near(creep({ grade: 'C24', place: 'under cover', category: 'home' }), 1 + 0.3 * 0.8);
    // Own weight and a permanent load creep whole.
    near(creep({ grade: 'C24', category: 'short', permanent: '450 N/m' }), (1.6 + 1) / 2);
  });
  it('a North American grade takes its stresses as printed times C_D 0.9 and C_F 1.5, its shear modulus a sixteenth', () => {
    const { material } = materialFor({ grade: 'Hem-Fir No.2 2x-4x' });
    near(material.bending, 850 * psi * 0.9 * 1.5);
    near(material.shear, 150 * psi * 0.9);
    near(material.E, 1.3e6 * psi);
    near(material.G, (1.3e6 * psi) / 16);
  });
  it('of other sizes than the piece says so', () => {
    expect(materialFor({ grade: 'Hem-Fir No.2 Posts & Timbers' }).text).toMatch(
      /a grade of other sizes than 45 x 95 mm/,
    );
    expect(materialFor({ grade: 'Hem-Fir No.2 2x-4x' }).text).not.toMatch(/other sizes/);
  });
  it('without a printed shear strength leaves the shear unchecked', () => {
    const { material } = materialFor({ grade: 'MGP10 (working stress)' });
    near(material.bending, 5.5e6 * 0.9);
    expect(material.shear).toBeUndefined();
  });
  it('whose shear strength is not printed, characteristic as it is, leaves the shear unchecked', () => {
    const grade = { ...findGrade('C24'), shear: undefined };
    const { material } = materialFor({ grade: { is: 'grade', grade } });
    expect(material.shear).toBeUndefined();
    near(material.bending, (0.7 * k_h * 24e6) / 1.95);
  });
  it('without a modulus is refused, unless a modulus is given', () => {
    const grade = { ...findGrade('C24'), modulus: undefined };
    expect(() => materialFor({ grade: { is: 'grade', grade } })).toThrow(
      /grade: no modulus of elasticity is held for C24; give modulus/,
    );
    near(materialFor({ grade: { is: 'grade', grade }, modulus: '9 GPa' }).material.E, 9e9);
    expect(materialProperties({ is: 'grade', grade }).modulus).toBeUndefined();
  });
  it('goes before the species', () => {
    expect(materialFor({ grade: 'C16', timber: 'white oak' }).material.name).toBe('C16');
  });
});

describe('a species without a grade, by green clear wood (Wood Handbook Table 5-3b)', () => {
  // Long duration: C_D 0.9. Lower 5 % limit: 1 - 1.645 x 0.16 in bending, 0.14 in shear.
  const bending = (greenPsi: number, R: number, n: number) =>
    ((greenPsi * psi * (1 - 1.645 * 0.16)) / n) * R * C_d * 0.9;
  const shear = (greenPsi: number, n: number) => ((greenPsi * psi * (1 - 1.645 * 0.14)) / n) * 0.25 * 0.9;
  it('western hemlock: green 6600, 860 psi and 1.31 million; R 0.19; E held down to that of F5, 6900 MPa', () => {
    const { material, text } = materialFor({ timber: 'western hemlock' });
    near(material.bending, bending(6600, 0.19, 2.1));
    // 0.489 MPa, over F5 for a long load: 0.7 x 0.57 x 1.6 / 1.5 = 0.4256.
    near(material.shear, (0.7 * 0.57 * 1.6e6) / 1.5);
    near(material.E, 6900e6);
    near(material.G, 6900e6 / 16);
    expect(text).toMatch(/western hemlock without a structural grade: 19 % of clear wood/);
  });
  it('examined and passed takes R 0.26, held down to the lowest grade for a long load', () => {
    const at = (more: object) => materialFor({ timber: 'western hemlock', ...more }).material.bending;
    near(at({ category: 'hall', examined: true }), bending(6600, 0.26, 2.1) / 0.9);
    near(at({ examined: true }), Math.min(bending(6600, 0.26, 2.1), (0.7 * 0.57 * 14e6) / 1.5));
  });
  it('a hardwood is divided by 2.3, and its green E by 0.8 stays under the cap', () => {
    const { material } = materialFor({ timber: 'Quercus alba' });
    near(material.bending, bending(8300, 0.19, 2.3));
    near(material.E, 0.8 * 1.25e6 * psi);
  });
  it('a trade name takes the lowest of its species: white oak is bur oak, 7200 psi and 0.88 million', () => {
    const { material, text } = materialFor({ timber: 'white oak' });
    near(material.bending, bending(7200, 0.19, 2.3));
    near(material.E, 0.8 * 0.88e6 * psi);
    expect(text).toMatch(/"white oak" is a trade name that also covers bur oak/);
    expect(materialFor({ timber: 'Quercus alba' }).text).not.toMatch(/trade name/);
    near(materialFor({ timber: 'Douglas-fir' }).material.bending, bending(6800, 0.19, 2.1));
  });
  it.each([
    ['26 %', 0.26],
    ['10 %', 0.1],
  ])('a strength ratio of %s is taken as given', (strengthRatio, R) => {
    const { material, text } = materialFor({ timber: 'Quercus alba', strengthRatio, category: 'hall' });
    near(material.bending, bending(8300, R, 2.3) / 0.9);
    // What the user gave is not repeated.
    expect(text).not.toMatch(/without a structural grade/);
  });
  it.each([
    ['60 %', 0.6, 1],
    ['55 %', 0.55, 1],
    ['54.9 %', 0.549, 0.9],
    ['45 %', 0.45, 0.9],
    ['44.9 %', 0.449, 0.8],
  ])(
    'a strength ratio of %s needs a reason: strength %f, stiffness %f of green clear wood',
    (strengthRatio, R, Q) => {
      expect(() => materialFor({ timber: 'Quercus alba', strengthRatio })).toThrow(
        /strengthRatio: got .* without a reason, takes at most 26 %.*strengthReason/,
      );
      const { material, text } = materialFor({
        timber: 'Quercus alba',
        strengthRatio,
        strengthReason: 'graded by a trained grader',
      });
      near(material.E, Q * 1.25e6 * psi);
      near(material.bending, bending(8300, R, 2.3));
      expect(text).toMatch(/on the word of the person who gave it: graded by a trained grader/);
      expect(material.basis).toMatch(/as "graded by a trained grader"/);
    },
  );
  it('whose strength is given directly keeps it, and says so', () => {
    const { material } = materialFor({
      timber: 'white oak',
      allowableBending: '9 MPa',
      allowableShear: '1 MPa',
    });
    expect([material.bending, material.shear]).toEqual([9e6, 1e6]);
    expect(material.basis).toMatch(/given directly: allowableBending, allowableShear$/);
  });
  it('without published stiffness is refused; with a modulus given its strength is unchecked', () => {
    expect(() => materialFor({ timber: 'European lime' })).toThrow(
      /timber: no modulus of elasticity is held for European lime; give modulus, such as "11 GPa"/,
    );
    const { material, text } = materialFor({ timber: 'European lime', modulus: '10 GPa' });
    expect([material.E, material.G, material.bending, material.shear]).toEqual([
      10e9,
      undefined,
      undefined,
      undefined,
    ]);
    expect(material.basis).toMatch(/no published figures/);
    expect(text).not.toMatch(/without a structural grade/);
  });
  it('with dry figures alone is taken down from them, and says so', () => {
    // Balsa, Table 5-5b at 12 %: 3140 psi and 0.49 million; no green row and no shear.
    const { material, text } = materialFor({ timber: 'balsa', category: 'hall' });
    const dry = findSpecies('balsa').mechanical('12%')!;
    near(material.bending, bending(1, 0.19, 2.3) * ((0.47 * dry.bending!.middle) / psi / 0.9));
    near(material.E, 0.8 * 0.65 * dry.modulus!.middle);
    near(material.shear, (shear(1, 2.3) * 0.093 * 0.47 * dry.bending!.middle) / psi / 0.9);
    expect(text).toMatch(/no green figure is held for bending and modulus of balsa/);
    expect(text).toMatch(/no shear strength is held for balsa/);
  });
  it('names its rows as sources, a group its rule alone', () => {
    const ids = (more: object) =>
      materialFor(more)
        .trace.sources()
        .map((s) => s.locator)
        .join('\n');
    expect(ids({ timber: 'white oak' })).toMatch(/Table 5-3b/);
    expect(ids({})).not.toMatch(/Table 5-3b/);
  });
  it('with a shear modulus given takes it, and the published modulus', () => {
    const { material } = materialFor({ timber: 'Quercus alba', shearModulus: '700 MPa' });
    near(material.E, 0.8 * 1.25e6 * psi);
    expect(material.G).toBe(700e6);
    const own = materialFor({ timber: 'white oak', shearModulus: '700 MPa', modulus: '12 GPa' }).material;
    expect([own.E, own.G]).toEqual([12e9, 700e6]);
  });
  it('shear is that of the green table, a quarter of it counted', () => {
    // Under the cap of F5 for a hall load, 0.7 x 0.8 x 1.6 / 1.5 = 0.597: eastern white pine, 680 psi.
    const { material } = materialFor({ timber: 'eastern white pine', category: 'hall' });
    near(material.shear, shear(680, 2.1) / 0.9);
  });
});

describe('a timber of which only the kind is known', () => {
  const soft = findSpecies('unknown softwood');
  const green = greenFigures(soft);
  it('takes the 10th percentile of green clear wood, the ratio of an unexamined piece, and the high density', () => {
    const { material, text } = materialFor({ category: 'hall' });
    near(material.bending, ((green.bending as number) * (1 - 1.645 * 0.16) * 0.19 * C_d) / 2.1);
    near(material.E, 0.8 * (green.modulus as number));
    near(material.G, material.E / 16);
    near(material.density, soft.density()!.density.high);
    expect(text).toMatch(
      /19 % of clear wood was taken.*of the 10th percentile of \d+ species\..*hang a known weight/,
    );
  });
  it('gives the middle and the high where they are asked for', () => {
    for (const rank of ['middle', 'high'] as const)
      near(
        materialFor({ category: 'hall' }, rank).material.bending,
        Math.min(
          ((greenFigures(soft, [], rank).bending as number) * (1 - 1.645 * 0.16) * 0.19 * C_d) / 2.1,
          (0.7 * 0.8 * 14e6) / 1.5,
        ),
      );
  });
  it('has no strength where too few of its species have one', () => {
    const walnuts = materialFor({ timber: 'walnuts', modulus: '9 GPa' });
    expect(walnuts.material.bending).toBeUndefined();
    expect(() => materialFor({ timber: 'walnuts' })).toThrow(
      /timber: no modulus of elasticity is held for walnuts/,
    );
  });
});

describe('a modulus given by itself', () => {
  it('has the shear in it and says so; with a shear modulus there is nothing to say', () => {
    const alone = materialFor({ modulus: '9 GPa' });
    expect([alone.material.E, alone.material.G]).toEqual([9e9, undefined]);
    expect(alone.text).toMatch(/no shear deflection is added/);
    const both = materialFor({ modulus: '9 GPa', shearModulus: '600 MPa' });
    expect(both.material.G).toBe(600e6);
    expect(both.text).toBe('');
  });
  it('given beside a species keeps that species’ strength', () => {
    const { material } = materialFor({ timber: 'Quercus alba', modulus: '9 GPa' });
    expect(material.G).toBeUndefined();
    near(material.bending, ((8300 * psi * (1 - 1.645 * 0.16)) / 2.3) * 0.19 * C_d * 0.9);
  });
});

describe('the same timber bent across its grain', () => {
  const across = (more: object) => {
    const { given, material } = materialFor(more);
    const trace = new TraceRecorder();
    return {
      ...acrossOf(given, material, trace),
      along: material,
      text: trace.cautions.map((c) => c.text).join('\n'),
    };
  };
  it('white oak: E_T/E_L 0.072, rolling shear a sixth of it, 800 psi over three', () => {
    const a = across({ timber: 'white oak' });
    near(a.E, 0.072 * 0.8 * 0.88e6 * psi);
    near(a.G, a.E / 6);
    near(a.bending, (800 * psi) / 3);
    expect(a.shear).toBeUndefined();
    expect(a.text).toBe('');
  });
  it('a grade, a group and a bare modulus take the low ends of print, 0.04 and 1.5 MPa, and say so', () => {
    for (const more of [{ grade: 'C16' }, { timber: 'unknown hardwood' }, { modulus: '8 GPa' }]) {
      const a = across(more);
      near(a.E, 0.04 * a.along.E);
      near(a.bending, 0.5e6);
      expect(a.text).toMatch(/no elastic ratios are held.*\n.*no strength across the grain is held/);
    }
    expect(across({ modulus: '8 GPa' }).G).toBeUndefined();
  });
  it('needs no word on strength where the stress is given', () => {
    const a = across({ grade: 'C16', allowableBending: '0.3 MPa' });
    expect(a.bending).toBe(0.3e6);
    expect(a.text).not.toMatch(/no strength across/);
  });
});

describe('what may stand for a timber or a grade', () => {
  it('is a name, a timber, a grade, and what was read before', () => {
    const oak = findSpecies('white oak');
    const c24 = findGrade('C24');
    expect(timberOrGrade(' c24 ')).toEqual({ is: 'grade', grade: c24 });
    expect(timberOrGrade('white oak')).toEqual({ is: 'species', timber: oak });
    expect(timberOrGrade(oak)).toEqual({ is: 'species', timber: oak });
    expect(timberOrGrade(c24)).toEqual({ is: 'grade', grade: c24 });
    for (const read of [timberOrGrade(oak), timberOrGrade(c24)]) expect(timberOrGrade(read)).toEqual(read);
  });
  it('is nothing else', () => {
    for (const other of [
      '',
      '  ',
      7,
      null,
      [],
      {},
      { is: 'grade' },
      { is: 'grade', grade: {} },
      { is: 'species' },
    ])
      expect(timberOrGrade(other)).toBeUndefined();
    expect(timberOrGrade({ is: 'species', timber: 'white oak' })).toBeUndefined();
    expect(() => railSpan({ ...railSpan.example, grade: { is: 'grade' } } as never)).toThrow(
      /grade: got .*takes a species/,
    );
  });
  it('a word of letters and digits is meant for a grade, a longer one for a species', () => {
    expect(() => timberOrGrade('C 99')).toThrow(/no grade "C 99"/);
    expect(() => timberOrGrade('ABCD123')).toThrow(/no grade/);
    for (const text of ['ABCDE1', 'C9999', 'C24 oak', '24'])
      expect(() => timberOrGrade(text)).not.toThrow(/no grade/);
  });
  it('stiff wood is refused where no modulus is published, with what to take instead', () => {
    const stiff = (name: string) => () => structuralMaterial(timberOrGrade(name)!);
    expect(stiff('walnuts')).toThrow(
      /^walnuts has no modulus of elasticity in the data; give a grade such as "C24", or "unknown hardwood"/,
    );
    expect(stiff('larches')).toThrow(/or "unknown softwood" for a range over its kind/);
    const bare = { ...findGrade('C24'), modulus: undefined };
    expect(() => structuralMaterial({ is: 'grade', grade: bare })).toThrow(
      /the grade C24 has no modulus of elasticity/,
    );
  });
  it('a grade of whose figures nothing is doubted brings no doubt along', () => {
    const c24 = findGrade('C24');
    const doubts = (doubt: string) =>
      materialProperties({ is: 'grade', grade: { ...c24, row: { ...c24.row, doubt } } }).doubts;
    expect([doubts(''), doubts('a smudge')]).toEqual([[], ['C24: a smudge']]);
  });
  it('stiff wood handed on is checked', () => {
    const board = {
      name: 'board',
      basis: 'as printed',
      modulus: { low: 2e9, middle: 2.5e9, high: 3e9 },
      citations: [],
      doubts: [],
    };
    expect(isStructuralMaterial(board)).toBe(true);
    const wrong: object[] = [{ name: 1 }, { citations: undefined }, { modulus: 2e9 }, { doubts: 'none' }];
    for (const n of [0, -1, NaN, '1']) wrong.push({ modulus: { ...board.modulus, low: n } });
    for (const w of wrong) expect(isStructuralMaterial({ ...board, ...w })).toBe(false);
    expect(isStructuralMaterial('C24')).toBe(false);
  });
});
