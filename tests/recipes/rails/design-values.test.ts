import { describe, expect, it } from 'vitest';
import { TraceRecorder } from '../../../src/engine/trace.js';
import { acrossOf } from '../../../src/recipes/rails/cross-grain-properties.js';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { materialOf } from '../../../src/recipes/rails/design-values.js';
import { findGrade } from '../../../src/materials/grades.js';
import { findSpecies } from '../../../src/materials/species.js';
import {
  materialProperties,
  isStructuralMaterial,
  structuralMaterial,
  timberOrGrade,
} from '../../../src/materials/elastic-properties.js';

const psi = 6894.757293168;
const design = (more: object, at?: 'low' | 'middle' | 'high') => {
  const given = railSpan.read({ section: '45 x 95 mm', load: '450 N/m', ...more });
  const trace = new TraceRecorder();
  return {
    given,
    work: trace,
    material: materialOf(given, trace, at),
    text: trace.cautions.map((c) => c.text).join('\n'),
  };
};
const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);

describe('a grade', () => {
  it('C24 of EN 338 (24 and 4 MPa, 11000 and 690 MPa, 420 kg/m³): 0.7 f / (1.3 × 1.5)', () => {
    const { material, work: trace, text } = design({ grade: 'C24' });
    near(material.E, 11e9);
    near(material.G, 690e6);
    near(material.bending, (0.7 * 24e6) / 1.95);
    near(material.shear, (0.7 * 4e6) / 1.95);
    expect(material.density).toBe(420);
    // Its figures were read in print, so that nothing is doubted.
    expect(text).toBe('');
    expect(trace.citations.map((c) => c.id)).toEqual(['en-338-2016']);
  });
  it('D30 and MGP10 are partly recalled, and say so', () => {
    expect(design({ grade: 'D30' }).text).toMatch(/^grade D30: .*recalled/);
    expect(design({ grade: 'MGP10' }).text).toMatch(/^grade MGP10: .*recalled/);
  });
  it('MGP10 of AS 1720 (17 and 2.6 MPa): 0.7 × 0.57 f / 1.5', () => {
    const { material } = design({ timber: 'MGP10' });
    near(material.bending, (0.7 * 0.57 * 17e6) / 1.5);
    near(material.shear, (0.7 * 0.57 * 2.6e6) / 1.5);
    expect(material.density).toBeUndefined();
  });
  it('a North American grade bears its stresses as printed, its shear modulus a sixteenth', () => {
    const { material } = design({ grade: 'Hem-Fir No.2 2x-4x' });
    near(material.bending, 850 * psi);
    near(material.shear, 150 * psi);
    near(material.E, 1.3e6 * psi);
    near(material.G, (1.3e6 * psi) / 16);
  });
  it('without a printed shear strength leaves the shear unchecked', () => {
    const { material } = design({ grade: 'MGP10 (working stress)' });
    near(material.bending, 5.5e6);
    expect(material.shear).toBeUndefined();
  });
  it('whose shear strength is not printed, characteristic as it is, leaves the shear unchecked', () => {
    const grade = { ...findGrade('C24'), shear: undefined };
    const { material } = design({ grade: { is: 'grade', grade } });
    expect(material.shear).toBeUndefined();
    near(material.bending, (0.7 * 24e6) / 1.95);
  });
  it('without a modulus is refused, unless a modulus is given', () => {
    const grade = { ...findGrade('C24'), modulus: undefined };
    expect(() => design({ grade: { is: 'grade', grade } })).toThrow(
      /grade: no modulus of elasticity is held for C24; give modulus/,
    );
    near(design({ grade: { is: 'grade', grade }, modulus: '9 GPa' }).material.E, 9e9);
    expect(materialProperties({ is: 'grade', grade }).modulus).toBeUndefined();
  });
  it('goes before the species', () => {
    expect(design({ grade: 'C16', timber: 'white oak' }).material.name).toBe('C16');
  });
});

describe('a species, by clear wood (Wood Handbook Tables 5-1 and 5-3b)', () => {
  it('white oak: 1.78 million, 15200, 2000 psi; G 0.086 of E in its one printed plane', () => {
    const { material, text } = design({ timber: 'white oak' });
    near(material.E, 1.1 * 1.78e6 * psi);
    near(material.G, 0.086 * 1.1 * 1.78e6 * psi);
    near(material.bending, (15200 * psi * (1 - 1.645 * 0.16) * 0.45) / 2.3);
    near(material.shear, (2000 * psi * (1 - 1.645 * 0.14) * 0.5) / 2.3);
    expect(text).toMatch(/white oak without a grade: .*45 % of clear wood/i);
  });
  it('Douglas-fir, a softwood: divided by 2.1; G the mean of 0.064 and 0.078', () => {
    const { material } = design({ timber: 'Douglas-fir' });
    near(material.G, 0.071 * 1.1 * 1.95e6 * psi);
    near(material.bending, (12400 * psi * (1 - 1.645 * 0.16) * 0.45) / 2.1);
    near(material.shear, (1130 * psi * (1 - 1.645 * 0.14) * 0.5) / 2.1);
  });
  it.each([
    ['60 %', 0.6, 1],
    ['55 %', 0.55, 1],
    ['54.9 %', 0.549, 0.9],
    ['45 %', 0.45, 0.9],
    ['44.9 %', 0.449, 0.8],
    ['20 %', 0.2, 0.8],
  ])(
    'with a strength ratio of %s: strength %f, stiffness %f of clear wood (ASTM D245)',
    (strengthRatio, R, q) => {
      const { material, text } = design({ timber: 'white oak', strengthRatio });
      near(material.E, 1.1 * q * 1.78e6 * psi);
      near(material.bending, (15200 * psi * (1 - 1.645 * 0.16) * R) / 2.3);
      // What the person said is not told again.
      expect(text).not.toMatch(/without a grade/);
    },
  );
  it('whose strength is given directly needs no word on strength ratios', () => {
    const { material, text } = design({
      timber: 'white oak',
      allowableBending: '9 MPa',
      allowableShear: '1 MPa',
    });
    expect([material.bending, material.shear]).toEqual([9e6, 1e6]);
    expect(text).not.toMatch(/without a grade/);
    expect(material.basis).toMatch(/given directly: allowableBending, allowableShear$/);
    expect(design({ timber: 'white oak' }).material.basis).toMatch(/brought down to working stresses$/);
  });
  it('without published stiffness is refused; with a modulus given it is reckoned, strength unchecked', () => {
    expect(() => design({ timber: 'European lime' })).toThrow(
      /timber: no modulus of elasticity is held for European lime; give modulus, such as "11 GPa"/,
    );
    const { material, text } = design({ timber: 'European lime', modulus: '10 GPa' });
    expect([material.E, material.G, material.bending, material.shear]).toEqual([
      10e9,
      undefined,
      undefined,
      undefined,
    ]);
    expect(material.basis).toMatch(/no published figures/);
    expect(text).not.toMatch(/without a grade/);
  });
  it('names its rows as sources, a group its rule alone; a modulus given is not reckoned again', () => {
    const ids = (more: object) =>
      design(more)
        .work.sources()
        .map((s) => s.locator)
        .join('\n');
    expect(ids({ timber: 'white oak' })).toMatch(/Table 5-3b/);
    expect(ids({})).not.toMatch(/Table 5-3b/);
    const lines = (more: object) =>
      design(more)
        .work.lines()
        .map((l) => l.text)
        .join('\n');
    expect(lines({ timber: 'white oak' })).toMatch(/without the shear of the bending test/);
    expect(lines({ timber: 'white oak', modulus: '12 GPa' })).not.toMatch(
      /without the shear of the bending test/,
    );
  });
  it('with a shear modulus given takes it, and the published modulus', () => {
    const { material } = design({ timber: 'white oak', shearModulus: '700 MPa' });
    near(material.E, 1.1 * 1.78e6 * psi);
    expect(material.G).toBe(700e6);
    const own = design({ timber: 'white oak', shearModulus: '700 MPa', modulus: '12 GPa' }).material;
    expect([own.E, own.G]).toEqual([12e9, 700e6]);
  });
});

describe('a timber of which only the kind is known', () => {
  const soft = findSpecies('unknown softwood');
  const spread = soft.mechanical()!;
  it('takes the low figures of the group, the lowest framing grade, and the high density', () => {
    const { material, text } = design({});
    near(material.E, 1.1 * 0.8 * spread.modulus!.low);
    near(material.G, material.E / 16);
    near(material.bending, (spread.bending!.low * (1 - 1.645 * 0.16) * 0.26) / 2.1);
    near(material.density, soft.density()!.density.high);
    expect(text).toMatch(
      /10th percentile of 51 species, and 26 % of clear wood .*\(the lowest framing grade\)/,
    );
  });
  it('says the ratio given instead', () => {
    const { material, text } = design({ timber: 'unknown softwood', strengthRatio: '60 %' });
    near(material.E, 1.1 * spread.modulus!.low);
    expect(text).toMatch(/60 % of clear wood for knots and holes\. Test a piece/);
  });
  it('gives the middle and the high where they are asked for', () => {
    near(design({}, 'middle').material.E, 1.1 * 0.8 * spread.modulus!.middle);
    near(design({}, 'high').material.E, 1.1 * 0.8 * spread.modulus!.high);
  });
  it('says nothing of percentiles where the strength is given, or none is published', () => {
    expect(design({ allowableBending: '5 MPa' }).text).not.toMatch(/percentile/);
    const walnuts = design({ timber: 'walnuts', modulus: '9 GPa' });
    expect(walnuts.text).not.toMatch(/percentile/);
    expect(walnuts.material.bending).toBeUndefined();
    expect(() => design({ timber: 'walnuts' })).toThrow(
      /timber: no modulus of elasticity is held for walnuts/,
    );
  });
});

describe('a modulus given by itself', () => {
  it('has the shear in it and says so; with a shear modulus there is nothing to say', () => {
    const alone = design({ modulus: '9 GPa' });
    expect([alone.material.E, alone.material.G]).toEqual([9e9, undefined]);
    expect(alone.text).toMatch(/no shear deflection is added/);
    const both = design({ modulus: '9 GPa', shearModulus: '600 MPa' });
    expect(both.material.G).toBe(600e6);
    expect(both.text).toBe('');
  });
  it('given beside a species keeps that species’ strength', () => {
    const { material } = design({ timber: 'white oak', modulus: '9 GPa' });
    expect(material.G).toBeUndefined();
    near(material.bending, (15200 * psi * (1 - 1.645 * 0.16) * 0.45) / 2.3);
  });
});

describe('the same timber bent across its grain', () => {
  const across = (more: object) => {
    const { given, material } = design(more);
    const trace = new TraceRecorder();
    return {
      ...acrossOf(given, material, trace),
      along: material,
      text: trace.cautions.map((c) => c.text).join('\n'),
    };
  };
  it('white oak: E_T/E_L 0.072, rolling shear a sixth of it, 800 psi over three', () => {
    const a = across({ timber: 'white oak' });
    near(a.E, 0.072 * 1.1 * 1.78e6 * psi);
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
