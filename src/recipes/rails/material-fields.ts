import { InputError, inspectValue } from '../../units/input-error.js';
import { field, makeField } from '../../engine/field.js';
import { timberOrGrade, type TimberOrGrade } from '../../materials/elastic-properties.js';
import { Timber } from '../../materials/timber.js';

const takes =
  'a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber';

function read(value: unknown): TimberOrGrade {
  const chosen = timberOrGrade(value);
  if (!chosen) throw new InputError(`got ${inspectValue(value)}, takes ${takes}`);
  return chosen;
}

/** A field that takes a species or a grade. */
export function timberOrGradeField<
  const O extends { readonly label: string; readonly optional?: true; readonly default?: string },
>(options: O) {
  return makeField<string | Timber, TimberOrGrade, O>(
    {
      kind: 'timber',
      expects: takes,
      read,
      format: (v) => (v.is === 'grade' ? v.grade.name : v.timber.name),
      accepts: (v) => typeof v === 'string' || v instanceof Timber,
    },
    options,
  );
}

/** What the rail is made of: the fields that every recipe of this topic takes. */
export const materialFields = {
  timber: timberOrGradeField({
    label: 'timber',
    help: 'Species or grade; for salvaged timber that is not known "unknown softwood".',
    optional: true,
  }),
  grade: timberOrGradeField({
    label: 'grade',
    help: 'Structural grade, if there is one; it goes before the species.',
    optional: true,
  }),
  modulus: field.modulus({
    label: 'modulus of elasticity',
    help: 'Give it in place of the published one.',
    above: '0 MPa',
    max: '100 GPa',
    optional: true,
  }),
  shearModulus: field.modulus({
    label: 'shear modulus',
    help: 'Give it in place of the published one.',
    above: '0 MPa',
    max: '20 GPa',
    optional: true,
  }),
  allowableBending: field.stress({
    label: 'allowed bending stress',
    help: 'Bending stress to stay under at the loads given; give it in place of the derived one.',
    above: '0 MPa',
    max: '500 MPa',
    optional: true,
  }),
  allowableShear: field.stress({
    label: 'allowed shear stress',
    help: 'Shear stress along the grain to stay under at the loads given; give it in place of the derived one.',
    above: '0 MPa',
    max: '100 MPa',
    optional: true,
  }),
  density: field.density({
    label: 'density',
    help: 'For the own weight; give it in place of the published one.',
    above: '0 kg/m3',
    max: '2000 kg/m3',
    optional: true,
  }),
  examined: field.flag({
    label: 'examined',
    help: 'Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.',
    default: false,
  }),
  strengthReason: field.text({
    label: 'graded by',
    help: 'Who graded the piece and how; needed for a strength ratio over 26 %.',
    optional: true,
  }),
  strengthRatio: field.share({
    label: 'strength ratio',
    help: 'Strength that knots, nail holes and sloping grain leave, as a share of clear wood; for a species without a grade.',
    above: '0 %',
    max: '100 %',
    optional: true,
  }),
} as const;
