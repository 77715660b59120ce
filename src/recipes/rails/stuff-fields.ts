import { Refusal, shown } from '../../quantities/refusal.js';
import { field, makeField } from '../../recipe/field.js';
import { timberOrGrade, type TimberOrGrade } from '../../timber/stiff.js';
import { Timber } from '../../timber/timber.js';

const takes =
  'a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber';

function read(value: unknown): TimberOrGrade {
  const chosen = timberOrGrade(value);
  if (!chosen) throw new Refusal(`got ${shown(value)}, takes ${takes}`);
  return chosen;
}

/** A field that takes a species or a grade. */
export function timberOrGradeField<
  const O extends { readonly says: string; readonly optional?: true; readonly default?: string },
>(options: O) {
  return makeField<string | Timber, TimberOrGrade, O>(
    {
      kind: 'timber',
      takes,
      read,
      show: (v) => (v.is === 'grade' ? v.grade.name : v.timber.name),
      fits: (v) => typeof v === 'string' || v instanceof Timber,
    },
    options,
  );
}

/** What the rail is made of: the fields that every recipe of this topic takes. */
export const stuffFields = {
  timber: timberOrGradeField({
    says: 'species, or grade; salvaged and not known: "unknown softwood", the default',
    optional: true,
  }),
  grade: timberOrGradeField({
    says: 'structural grade, if there is one; goes before the species',
    optional: true,
  }),
  modulus: field.modulus({
    says: 'modulus of elasticity, instead of the published one',
    above: '0 MPa',
    max: '100 GPa',
    optional: true,
  }),
  shearModulus: field.modulus({
    says: 'shear modulus, instead of the published one',
    above: '0 MPa',
    max: '20 GPa',
    optional: true,
  }),
  allowableBending: field.stress({
    says: 'bending stress to stay under at the loads given, instead of the derived one',
    above: '0 MPa',
    max: '500 MPa',
    optional: true,
  }),
  allowableShear: field.stress({
    says: 'shear stress along the grain to stay under at the loads given, instead of the derived one',
    above: '0 MPa',
    max: '100 MPa',
    optional: true,
  }),
  density: field.density({
    says: 'density, for the own weight, instead of the published one',
    above: '0 kg/m3',
    max: '2000 kg/m3',
    optional: true,
  }),
  strengthRatio: field.share({
    says: 'strength that knots, nail holes and sloping grain leave, of clear wood; for a species without a grade',
    above: '0 %',
    max: '100 %',
    optional: true,
  }),
} as const;
