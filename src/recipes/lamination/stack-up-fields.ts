import { field } from '../../engine/field.js';
import { tableField } from '../../engine/table-field.js';
import { toleranceSigmas, toleranceWords } from '../tolerance.js';
import { columns, shapes } from './stack-samples.js';

/** What a stack of parts takes. */
export const stackUpFields = {
  parts: tableField(columns, { label: 'parts', help: 'Parts of the stack.', most: 200 }),
  target: field.length({
    symbol: 'G',
    label: 'target',
    help: 'Size wanted of the whole stack.',
    min: '-100 m',
    max: '100 m',
    optional: true,
  }),
  limits: field.either(
    [
      field.length({ label: 'tolerance', help: 'Either way of the target.', above: '0 mm', max: '10 m' }),
      field.group(
        {
          low: field.length({ label: 'least', min: '-100 m', max: '100 m' }),
          high: field.length({ label: 'most', min: '-100 m', max: '100 m' }),
        },
        { label: 'least and most' },
      ),
    ],
    {
      label: 'limits',
      help: 'A length either way of the target (or, without one, of the nominal size), or { low, high }.',
      optional: true,
    },
  ),
  sigmas: field.ratio({
    symbol: 'k',
    label: 'standard deviations',
    help: toleranceWords,
    min: 1,
    max: 6,
    default: toleranceSigmas,
  }),
  shape: field.choice(shapes, {
    label: 'distribution',
    help: 'Normal (most near the middle) or even (any size between the limits is as likely).',
    default: 'normal',
  }),
  confidence: field.share({
    label: 'share held',
    help: 'Share of stacks that the interval should hold.',
    min: '50 %',
    max: '99.9 %',
    default: '95 %',
  }),
  seed: field.count({
    label: 'seed',
    help: 'The same seed gives the same draws.',
    min: 0,
    max: 4_000_000_000,
    default: 1,
  }),
} as const;
