import { field } from '../../engine/field.js';
import { toleranceSigmas, toleranceWords } from '../tolerance.js';

const sized = (label: string) =>
  field.group(
    {
      size: field.length({ label: 'its size', above: '0 mm', max: '5 m' }),
      plusMinus: field.length({
        label: 'plus or minus',
        help: 'How far it comes out over or under.',
        min: '0 mm',
        max: '100 mm',
      }),
    },
    { label: label },
  );

/** What the fit of a joint takes. */
export const jointFitFields = {
  slot: sized('slot'),
  part: sized('part'),
  tightest: field.length({
    label: 'least clearance',
    help: 'Least clearance that still goes in; negative for a part that may be pressed.',
    min: '-5 mm',
    max: '50 mm',
    default: '0 mm',
  }),
  loosest: field.length({
    label: 'greatest clearance',
    help: 'Greatest clearance that the glue still bridges.',
    min: '-5 mm',
    max: '50 mm',
    default: '0.15 mm',
  }),
  setting: field.length({
    label: 'shared setting',
    help: 'How far a setting that all the joints share, such as the fence, may be off, over or under.',
    min: '0 mm',
    max: '50 mm',
    default: '0 mm',
  }),
  sigmas: field.ratio({
    label: 'standard deviations',
    help: toleranceWords,
    min: 0.5,
    max: 6,
    default: toleranceSigmas,
  }),
  joints: field.count({
    label: 'joints',
    help: 'Joints that must all go together.',
    min: 1,
    max: 10_000,
    default: 1,
  }),
} as const;
