import { field } from '../../engine/field.js';
import { methods } from './application-loss.js';
import { piece, surface } from './coated-surface.js';

/** What a quantity of finish takes. */
export const finishQuantityFields = {
  surfaces: field.either(
    [
      piece,
      field.list(
        field.either([surface, piece], {
          label: 'area or piece',
          help: 'An area, or a piece by its dimensions.',
        }),
        {
          label: 'areas or pieces',
          most: 2000,
        },
      ),
    ],
    { label: 'surfaces', help: 'A list of areas, or the dimensions of a piece or of several.' },
  ),
  coats: field.count({ symbol: 'N', label: 'number of coats', min: 1, max: 50 }),
  coverage: field.coverage({
    symbol: 'c',
    label: 'coverage',
    help: 'Area that one litre covers in one coat, as printed on the tin; also called spreading rate.',
    min: '0.5 m2/L',
    max: '60 m2/L',
  }),
  firstCoverage: field.coverage({
    label: 'coverage, first coat',
    help: 'Coverage on bare wood; leave it out where it is that of the other coats.',
    min: '0.5 m2/L',
    max: '60 m2/L',
    optional: true,
  }),
  loss: field.share({
    symbol: 'q',
    label: 'loss in application',
    help: 'Share of what leaves the tin that never reaches the piece; leave it out to take that of the method.',
    min: '0 %',
    max: '95 %',
    optional: true,
  }),
  method: field.choice(methods, {
    label: 'method',
    help: 'How the finish is put on, which sets the usual loss.',
    optional: true,
  }),
  thinnerParts: field.ratio({
    symbol: 'k',
    label: 'parts of thinner',
    help: 'Parts of thinner to one part of finish.',
    min: 0,
    max: 20,
    default: 0,
  }),
  firstThinnerParts: field.ratio({
    label: 'thinner, first coat',
    help: 'Parts of thinner in the first coat; leave it out where it is that of the other coats.',
    min: 0,
    max: 20,
    optional: true,
  }),
  tinSize: field.liquid({
    symbol: 'T',
    label: 'what a tin holds',
    min: '10 mL',
    max: '1000 L',
    default: '1 L',
  }),
  coatTime: field.time({
    label: 'time per coat',
    help: 'Time to put on one coat.',
    min: '0 s',
    max: '7 day',
    default: '30 min',
  }),
  dryTime: field.time({
    label: 'drying time',
    help: 'Time to wait between coats as the tin says; with it a time line is drawn.',
    above: '0 s',
    max: '60 day',
    optional: true,
  }),
  finish: field.text({
    label: 'kind of finish',
    help: 'Such as "oil varnish"; it chooses the cautions.',
    optional: true,
  }),
} as const;
