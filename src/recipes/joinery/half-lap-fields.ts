import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { stiffWoodField } from '../../materials/timber-field.js';
import { servicePlaces, useCategories } from '../../materials/working-stress/use-category.js';

/** What the strength of a lap takes. */
export const lapStrengthFields = {
  timber: stiffWoodField({
    label: 'timber',
    help: 'Timber or structural grade of both pieces; salvaged timber that is not known is "unknown softwood".',
    default: 'unknown softwood',
  }),
  examined: field.flag({
    label: 'examined',
    help: 'Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.',
    default: false,
  }),
  category: field.choice(useCategories, {
    label: 'category of use',
    help: 'How the piece is used; leave it out to take the load as permanent.',
    optional: true,
  }),
  place: field.choice(servicePlaces, {
    label: 'place',
    help: 'Where the piece stands.',
    default: 'heated room',
  }),
  moment: field.moment({
    label: 'moment in plane',
    help: 'Moment that turns one piece on the other, from a push along the frame.',
    min: '0 N m',
    max: '100 kN m',
    optional: true,
  }),
  force: field.force({
    label: 'force across',
    help: 'Force that shifts one piece on the other.',
    min: '0 N',
    max: '1000 kN',
    optional: true,
  }),
} as const;

export const lapStrengthOutputs = {
  strength: out.table(
    {
      piece: out.text({ label: 'piece' }),
      whole: out.moment({
        label: 'whole piece',
        help: 'Moment across its face that the uncut piece carries.',
      }),
      atLap: out.moment({
        label: 'across the face',
        help: 'Moment across its face that the half left carries.',
      }),
      inPlane: out.moment({ label: 'in the plane', help: 'Moment in the plane of the frame at the lap.' }),
    },
    { label: 'Moments at the lap', help: 'Working moments, where the strength is known.', optional: true },
  ),
  shearForce: out.force({
    label: 'force, glued face',
    help: 'Force across the glued face by rolling shear, glue sound.',
    optional: true,
  }),
  twist: out.moment({
    label: 'twist, glued face',
    help: 'Moment in the plane that the glued face carries.',
    optional: true,
  }),
  use: out.share({
    label: 'share of strength',
    help: 'Largest share of strength that the moment and force given use.',
    optional: true,
  }),
  verdict: out.text({ label: 'strong enough' }),
} as const;
