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
    label: 'species, or grade; salvaged and not known: "unknown softwood", the default',
    optional: true,
  }),
  grade: timberOrGradeField({
    label: 'structural grade, if there is one; goes before the species',
    optional: true,
  }),
  modulus: field.modulus({
    label: 'modulus of elasticity, instead of the published one',
    above: '0 MPa',
    max: '100 GPa',
    optional: true,
  }),
  shearModulus: field.modulus({
    label: 'shear modulus, instead of the published one',
    above: '0 MPa',
    max: '20 GPa',
    optional: true,
  }),
  allowableBending: field.stress({
    label: 'bending stress to stay under at the loads given, instead of the derived one',
    above: '0 MPa',
    max: '500 MPa',
    optional: true,
  }),
  allowableShear: field.stress({
    label: 'shear stress along the grain to stay under at the loads given, instead of the derived one',
    above: '0 MPa',
    max: '100 MPa',
    optional: true,
  }),
  density: field.density({
    label: 'density, for the own weight, instead of the published one',
    above: '0 kg/m3',
    max: '2000 kg/m3',
    optional: true,
  }),
  examined: field.flag({
    label: 'examined for knots, sloping grain, holes and rot, and passed; for a species without a grade',
    default: false,
  }),
  strengthReason: field.text({
    label: 'who graded the piece and how; needed for a strengthRatio over 26 %',
    optional: true,
  }),
  strengthRatio: field.share({
    label:
      'strength that knots, nail holes and sloping grain leave, of clear wood; for a species without a grade',
    above: '0 %',
    max: '100 %',
    optional: true,
  }),
} as const;
