import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { caulCamber } from '../../src/recipes/lamination/caul-camber.js';
import { clampPlan } from '../../src/recipes/lamination/clamp-plan.js';
import { glueQuantity } from '../../src/recipes/lamination/glue-quantity.js';
import { glueTiming } from '../../src/recipes/lamination/glue-timing.js';

function refused(run: () => unknown): { fields: string[]; message: string } {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    const r = error as InputError;
    expect(r.message).not.toMatch(/NaN|undefined|\n/);
    return { fields: r.issues.map((t) => t.field), message: r.message };
  }
  throw new Error('nothing was refused');
}

describe('glueQuantity refuses', () => {
  const good = { jointLength: '2 m', jointHeight: '40 mm', joints: 14 };
  it('no joints, half a joint, three sides, a spread of nothing or of a bucket', () => {
    expect(refused(() => glueQuantity({ ...good, joints: 0 })).fields).toEqual(['joints']);
    expect(refused(() => glueQuantity({ ...good, joints: 2.5 })).fields).toEqual(['joints']);
    expect(refused(() => glueQuantity({ ...good, sides: 3 })).fields).toEqual(['sides']);
    expect(refused(() => glueQuantity({ ...good, spread: '0 g/m2' })).fields).toEqual(['spread']);
    expect(refused(() => glueQuantity({ ...good, spread: '20 kg/m2' })).fields).toEqual(['spread']);
    expect(refused(() => glueQuantity({ ...good, spread: '200 g' })).message).toMatch(/g\/m/);
  });
  it('but warns of a spread outside print', () => {
    const range = (spread: string) =>
      glueQuantity({ ...good, spread }).cautions.some((c) => c.level === 'range');
    expect([range('100 g/m2'), range('200 g/m2'), range('400 g/m2')]).toEqual([true, false, true]);
  });
});

describe('glueTiming refuses', () => {
  it('a joint that skins before it is closed, saying how long there is', () => {
    const r = refused(() => glueTiming({ joints: 4, perJoint: '6 min', openTime: '5 min' }));
    expect(r.fields).toEqual(['perJoint']);
    // So short a time would let more joints into a batch than there are numbers.
    expect(
      refused(() => glueTiming({ joints: 1, perJoint: '5e-324 week', openTime: '28 s' })).fields,
    ).toEqual(['perJoint']);
    expect(r.message).toMatch(/5 min/);
    expect(
      refused(() => glueTiming({ joints: 4, perJoint: '4 min', openTime: '5 min', clampsUp: '2 min' }))
        .message,
    ).toMatch(/3 min/);
  });
  it('heat that leaves no time', () => {
    expect(
      refused(() => glueTiming({ joints: 4, perJoint: '3 min', openTime: '5 min', temperature: '40 degC' }))
        .fields,
    ).toEqual(['perJoint']);
  });
  it('clamps that take longer than the closed joint may wait', () => {
    expect(
      refused(() =>
        glueTiming({
          joints: 4,
          perJoint: '1 min',
          openTime: '5 min',
          closedTime: '2 min',
          clampsUp: '3 min',
        }),
      ).fields,
    ).toEqual(['clampsUp']);
  });
  it('but takes an exact fit, and warns of cold', () => {
    const a = glueTiming({ joints: 4, perJoint: '2.5 min', openTime: '10 min' });
    expect([a.batches, a.jointsPerBatch, a.spare.value]).toEqual([1, 4, 0]);
    expect(a.cautions.some((c) => /a joint that skinned before it was closed/.test(c.text))).toBe(true);
    expect(
      glueTiming({ joints: 1, perJoint: '1 min', openTime: '10 min', temperature: '5 degC' }).cautions.some(
        (c) => /chalky/.test(c.text),
      ),
    ).toBe(true);
  });
});

describe('clampPlan refuses', () => {
  const good = { length: '1 m', jointHeight: '40 mm', clampForce: '4 kN', outerWidth: '60 mm' };
  it('neither and both of pressure and timberKind', () => {
    expect(refused(() => clampPlan(good)).message).toMatch(/neither.*softwood/);
    expect(refused(() => clampPlan({ ...good, pressure: '1 MPa', timberKind: 'softwood' })).message).toMatch(
      /both/,
    );
  });
  it('a kind of timber and a kind of clamp it has no figure for', () => {
    expect(refused(() => clampPlan({ ...good, timberKind: 'oak' as never })).message).toMatch(/hardwood/);
    expect(
      refused(() => clampPlan({ ...good, pressure: '1 MPa', clampForce: 'spring clamp' })).fields,
    ).toEqual(['clampForce']);
  });
  it('a thousand clamps and more', () => {
    expect(refused(() => clampPlan({ ...good, pressure: '1 MPa', clampForce: '10 N' })).fields).toEqual([
      'clampForce',
    ]);
    expect(
      refused(() => clampPlan({ ...good, length: '50 m', pressure: '1 kPa', outerWidth: '1 mm' })).fields,
    ).toEqual(['outerWidth']);
  });
  it('but answers with a warning where the clamps do not reach', () => {
    const a = clampPlan({ ...good, pressure: '1 MPa', reach: '600 mm', needReach: '640 mm' });
    expect(a.reachOk).toBe(false);
    expect(a.cautions.some((c) => /600 mm.*640 mm/.test(c.text))).toBe(true);
    expect(clampPlan({ ...good, pressure: '1 MPa', reach: '640 mm', needReach: '640 mm' }).reachOk).toBe(
      true,
    );
  });
  it('but counts strictly by its 45 degrees: ten clamps where a note prints eight', () => {
    const by = (pad: string) =>
      clampPlan({
        length: '48 in',
        jointHeight: '0.75 in',
        pressure: '1 psi',
        clampForce: '1000 lbf',
        outerWidth: '2 in',
        pad,
      }).bySpacing;
    expect([by('0.5 in'), by('3.5 in')]).toEqual([10, 5]);
  });
});

describe('caulCamber', () => {
  const good = {
    length: '640 mm',
    width: '45 mm',
    depth: '60 mm',
    timber: 'unknown softwood',
    clampForceEach: '2 kN',
  };
  it('refuses a timber without stiffness and a name that is none', () => {
    expect(refused(() => caulCamber({ ...good, timber: 'plastic' })).fields).toEqual(['timber']);
    expect(refused(() => caulCamber({ ...good, depth: '1 mm' })).fields).toEqual(['depth']);
  });
  it('says when the caul would break, be too limber, or too short for the formula', () => {
    const danger = caulCamber({ ...good, clampForceEach: '20 kN' });
    expect(danger.ok).toBe(false);
    expect(danger.cautions.some((c) => c.level === 'danger' && /splinters/.test(c.text))).toBe(true);
    expect(
      caulCamber({ ...good, length: '1.4 m', depth: '30 mm' }).cautions.some((c) => /limber/.test(c.text)),
    ).toBe(true);
    expect(caulCamber({ ...good, length: '400 mm' }).cautions.some((c) => c.level === 'range')).toBe(true);
  });
  it('gives a range for a timber known by kind only, one figure for a grade', () => {
    const kind = caulCamber(good);
    expect(kind.camberLow!.value).toBeLessThan(kind.camber.value);
    expect(kind.camberHigh!.value).toBeGreaterThan(kind.camber.value);
    const grade = caulCamber({ ...good, timber: 'C24' });
    // EN 338: C24 has a mean modulus of 11 kN/mm2 and a bending strength of 24 N/mm2.
    expect(grade.camber.in('mm')).toBeCloseTo(
      (5 * 6.25 * 640 ** 4) / (384 * 11000 * ((45 * 60 ** 3) / 12)),
      6,
    );
    // EN 1995-1-1: k_mod 0.9 for hours, k_h of 60 mm, 1.3 and 1.5.
    expect(grade.allowed!.in('MPa')).toBeCloseTo((0.9 * 2.5 ** 0.2 * 24) / 1.95, 6);
  });
});
