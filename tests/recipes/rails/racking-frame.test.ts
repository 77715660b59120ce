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

  it('a glued half lap gives by G b⁴/(3 t), with G given or a sixteenth of E', () => {
    const k = ((9e9 / 16) * 0.07 ** 4) / (3 * 0.035);
    const r = rackingFrame(base);
    near(r.jointStiffness!.value, k);
    near(r.sway.value, withCorner(k));
    near(r.shareOfJoints!.value, 1 - rigid / withCorner(k));
    near(
      rackingFrame({ ...base, shearModulus: '700 MPa' }).jointStiffness!.value,
      (7e8 * 0.07 ** 4) / (3 * 0.035),
    );
    expect(texts(r)).not.toMatch(/screws/);
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
