import { describe, expect, it } from 'vitest';
import { rackingFrame } from '../../../src/recipes/rails/racking-frame.js';

const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);
const texts = (r: { cautions: readonly { text: string }[] }) => r.cautions.map((c) => c.text).join('\n');

describe('rackingFrame by hand: 850 by 560 mm of 35 by 70 mm at 9 GPa, 100 N', () => {
  const base = {
    height: '850 mm',
    width: '560 mm',
    section: '35 x 70 mm',
    modulus: '9 GPa',
    push: '100 N',
  } as const;
  const [h, L] = [0.85, 0.56];
  const EI = (9e9 * 0.035 * 0.07 ** 3) / 12;
  const rigid = (100 * h * h * L) / (12 * EI) + (100 * h ** 3) / (6 * EI);
  const withCorner = (k: number) => rigid + (100 * h * h) / (2 * k);
  const s = (450 ** 1.5 * 5) / 23 / 1e-3; // N/m, a 5 mm screw in timber of 450 kg/m³ (Eurocode 5, Table 7.1)

  it('a glued half lap gives by 5 N/mm³ times the polar moment of its face: 5 70 70 (70² + 70²)/12', () => {
    const k = (5e9 * 0.07 * 0.07 * 2 * 0.07 ** 2) / 12;
    const r = rackingFrame(base);
    near(r.jointStiffness!.value, k);
    near(r.sway.value, withCorner(k));
    near(r.shareOfJoints!.value, 1 - rigid / withCorner(k));
    expect(texts(r)).not.toMatch(/screws/);
  });
  it('a rail of its own section bends by itself', () => {
    const r = rackingFrame({ ...base, joint: 'stiff', rail: '35 x 95 mm' });
    const rail = (9e9 * 0.035 * 0.095 ** 3) / 12;
    near(r.sway.value, ((100 * h * h) / 2) * (h / (3 * EI) + L / (6 * rail)));
  });
  it('a screwed half lap by n s (b/4)²; timber of unknown density counts as 450 kg/m³ and says so', () => {
    const r = rackingFrame({ ...base, joint: 'screwed half lap', screws: 3 });
    near(r.jointStiffness!.value, 3 * s * 0.0175 ** 2);
    near(r.sway.value, withCorner(3 * s * 0.0175 ** 2));
    expect(texts(r)).toMatch(/screws alone work loose[\s\S]*450 kg\/m³ was taken for the screws/);
    expect(texts(rackingFrame({ ...base, joint: 'screwed half lap', density: '450 kg/m3' }))).not.toMatch(
      /was taken for the screws/,
    );
  });
  it('a brace of 20 by 45 mm by its stretch and its screws', () => {
    const r = rackingFrame({ ...base, joint: 'braced', density: '450 kg/m3' });
    const d = Math.hypot(h, L);
    near(r.sway.value, ((100 * d * d) / (L * L)) * (d / (9e9 * 0.02 * 0.045) + 2 / (2 * s)));
    expect([r.jointStiffness, r.shareOfJoints]).toEqual([undefined, undefined]);
    expect(texts(r)).not.toMatch(/was taken for the screws|work loose/);
    expect(texts(rackingFrame({ ...base, joint: 'braced' }))).toMatch(/was taken for the screws/);
  });
  it('stiff corners give nothing; a stiffness given goes before the estimate', () => {
    const r = rackingFrame({ ...base, joint: 'stiff' });
    near(r.sway.value, rigid);
    expect([r.jointStiffness, r.shareOfJoints!.value]).toEqual([undefined, 0]);
    near(
      rackingFrame({ ...base, joint: 'stiff', jointStiffness: '5 kN m/rad' }).sway.value,
      withCorner(5000),
    );
  });
  it('two frames share the push; stiffness and sway per 100 N are of the whole', () => {
    const r = rackingFrame({ ...base, joint: 'stiff', frames: 2, push: '250 N' });
    near(r.sway.value, (rigid / 2) * 2.5);
    near(r.swayPerForce.value, rigid / 2);
    near(r.stiffness.value, 100 / (rigid / 2));
  });
  it('the furniture test: half the weight and 222 N, 44 N for small tops, 445 N at most', () => {
    const test = (mass: string, largeTop = true) => rackingFrame({ ...base, joint: 'stiff', mass, largeTop });
    near(test('20 kg').testForce!.value, 0.5 * 9.8 * 20 + 222);
    near(test('20 kg', false).testForce!.value, 0.5 * 9.8 * 20 + 44);
    near(test('20 kg').testSway!.value, (rigid / 100) * 320);
    expect([rackingFrame(base).testForce, rackingFrame(base).testSway]).toEqual([undefined, undefined]);
  });
});

describe('what gives first, by hand: 850 by 560 mm, 100 N: corner moment 42.5 N·m, corner force 160 N', () => {
  const base = {
    height: '850 mm',
    width: '560 mm',
    section: '35 x 70 mm',
    modulus: '9 GPa',
    push: '100 N',
    allowableBending: '6 MPa',
    allowableShear: '0.6 MPa',
    density: '450 kg/m3',
  } as const;
  const useOf = (r: ReturnType<typeof rackingFrame>, part: RegExp) =>
    r.parts.find((p) => part.test(p.part))?.use?.value;
  it('a glued lap: twist over 2 tau I_p / 70, and rolling shear a third of shear', () => {
    // tau 0.5 0.9 2.5 / (1.3 1.5) = 0.57692 MPa; I_p 4 001 667 mm⁴; T 65 962 N mm; f_R 0.2 MPa on 4900 mm².
    const R = 100 * Math.sqrt(0.25 + (0.85 / 0.56) ** 2);
    const T = (2 * 0.5769230769 * ((70 * 70 * 9800) / 12)) / 70;
    const wanted = 42500 / T + R / (4900 * 0.2);
    const r = rackingFrame(base);
    near(useOf(r, /glued laps/), wanted);
    // Half the thickness left at the lap: 6 17.5 70²/6 = 85 750 N mm.
    near(useOf(r, /legs/), 42500 / 85750);
    near(r.pushAllowed!.value, 100 / wanted);
    expect(r.verdict).toMatch(
      /^Holds: \d+ N along the top at most; the glued laps, by rolling shear and twist give first\.$/,
    );
  });
  it('stiff corners use the whole members, and say that the corner itself is not known', () => {
    const r = rackingFrame({ ...base, joint: 'stiff' });
    near(useOf(r, /legs/), 42500 / 171500);
    expect(texts(r)).toMatch(/strength of the corner itself is not known/);
  });
  it('screws that enter less than six diameters count nothing', () => {
    const r = rackingFrame({ ...base, joint: 'screwed half lap' });
    expect(r.pushAllowed?.value).toBe(0);
    expect(r.verdict).toMatch(/^Too weak: 0 N/);
    expect(texts(r)).toMatch(/rules count nothing for them/);
    expect(texts(r)).toMatch(/do not build it so/);
    const thick = rackingFrame({
      ...base,
      section: '70 x 70 mm',
      screwDiameter: '4 mm',
      screws: 4,
      joint: 'screwed half lap',
    });
    expect(thick.pushAllowed!.value).toBeGreaterThan(0);
  });
  it('a brace buckles by pi² 0.638 E I/(1.95 d²), or its screws give', () => {
    const r = rackingFrame({ ...base, joint: 'braced', screws: 3 });
    const d2 = 0.85 ** 2 + 0.56 ** 2;
    const N = (100 * Math.sqrt(d2)) / 0.56;
    near(useOf(r, /buckling/), N / ((Math.PI ** 2 * 0.638 * 9e9 * ((0.045 * 0.02 ** 3) / 12)) / (1.95 * d2)));
    expect(useOf(r, /screws of the brace/)).toBeGreaterThan(0);
  });
  it('says what was not checked where no stress is known', () => {
    const r = rackingFrame({ ...base, allowableBending: undefined, allowableShear: undefined });
    expect(r.pushAllowed).toBeUndefined();
    expect(r.verdict).toMatch(/^Strength not checked\. Not checked: the legs/);
  });
  it('refuses a sway past a third of the height, and says which push stays under it', () => {
    expect(() => rackingFrame({ ...base, jointStiffness: '50 N m/rad' })).toThrow(
      /push: sways \d+ mm, over a third of the height of 850 mm.*takes stiffer corners.* a push under \d+ N/,
    );
  });
});
