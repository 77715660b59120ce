import { field } from '../../engine/field.js';
import type { Dressing } from './survey.js';

/** How a pile is dressed: what planing, sawing and jointing take off, and what is wanted in the end. */
export const dressingFields = {
  plane: field.length({
    label: 'planing allowance',
    help: 'Planed off each face once it is flat.',
    min: '0 mm',
    max: '20 mm',
    default: '1 mm',
  }),
  kerf: field.length({ label: 'saw kerf', min: '0 mm', max: '20 mm', default: '3 mm' }),
  jointing: field.length({
    label: 'jointing allowance',
    help: 'Taken off each strip in jointing, both edges together.',
    min: '0 mm',
    max: '50 mm',
    default: '3 mm',
  }),
  target: field.either(
    [
      field.length({ label: 'common thickness wanted', above: '0 mm', max: '500 mm' }),
      field.group(
        {
          thickness: field.length({
            label: 'common thickness wanted',
            above: '0 mm',
            max: '500 mm',
            optional: true,
          }),
          width: field.length({
            label: 'strip width',
            help: 'Finished width of a strip.',
            above: '0 mm',
            max: '3 m',
            optional: true,
          }),
          length: field.length({ label: 'length of a piece', above: '0 mm', max: '30 m', optional: true }),
        },
        { label: 'section and length wanted' },
      ),
    ],
    {
      label: 'target',
      help: 'Finished thickness, or thickness, strip width and piece length.',
      optional: true,
    },
  ),
  resaw: field.flag({ label: 'resaw', help: 'Whether thick boards are resawn into layers.', default: false }),
} as const;

interface Cuts {
  readonly width?: number | undefined;
  readonly length?: number | undefined;
}
/** The same as numbers, for dressing a row. */
export const dressingOf = (
  given: Omit<Dressing, keyof Cuts> & { readonly target?: number | Cuts | undefined },
): Dressing => {
  const { width, length } = typeof given.target === 'object' ? given.target : ({} as Cuts);
  return {
    plane: given.plane,
    jointing: given.jointing,
    kerf: given.kerf,
    resaw: given.resaw,
    width,
    length,
  };
};
