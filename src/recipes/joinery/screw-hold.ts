import { danger, dataCaution, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { InputError } from '../../units/input-error.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber, timberField } from '../../materials/timber-field.js';
import type { Timber } from '../../materials/timber.js';
import {
  headAllowed,
  steelAllowed,
  steelBreaks,
  threadAllowed,
  threadBreaks,
} from '../../materials/fasteners/screw-axial.js';
import { olderSideways } from '../../materials/fasteners/screw-lateral.js';
import { nanometres } from '../../engine/nanometres.js';
import { screwDrawing } from './screw-drawing.js';
import { printedHole, printedRoot, screwField } from './screw-size.js';
import { acrossTheScrew, alongTheScrew, distancesOf, screwFields } from './screw-strength.js';

const root = formula({
  symbol: 'd_r',
  result: variable('length', 'diameter at the root of the thread', { unit: 'mm' }),
  expression: '2 / 3 * D',
  variables: { D: variable('length', 'diameter of the shank', { unit: 'mm' }) },
  source: cite('fpl-gtr-190', 'p. 8-10: root about two thirds of the shank'),
});
const pilot = formula({
  symbol: 'd_p',
  result: variable('length', 'pilot hole for the thread', { unit: 'mm' }),
  expression: 'c d_r',
  variables: {
    c: variable('ratio', 'share of the root: 0.7 softwood, 0.9 hardwood'),
    d_r: variable('length', 'diameter at the root of the thread', { unit: 'mm' }),
  },
  source: cite('sailing-screw-pilots', 'AWC recommendation as quoted'),
});

/**
 * What wood screws hold: pulled along their axis the least of thread, steel and head; sideways the least yield mode, as
 * far as their penetration counts; and the pilot hole to drill. For common wood screws in seasoned timber; structural
 * screws have their maker's figures. Lengths, a species or a specific gravity in; newtons for all the screws out.
 */
export const screwHold = recipe({
  name: 'screwHold',
  title: 'What screws hold',
  topic: 'joinery',
  about:
    'The pull that one or more wood screws hold by thread, steel and head, what is allowed on them, what they hold sideways, and their pilot hole. For seasoned timber; not for structural screws with figures of their own.',
  sources: [cite('structural-handbook-screws', 'Eq. 6.37 and 6.38, p. 170')],
  inputs: {
    timber: timberField({
      label: 'timber',
      help: 'Species that holds the thread, or "unknown softwood"; or give the specific gravity.',
      needs: 'gravity',
      optional: true,
    }),
    specificGravity: field.ratio({
      symbol: 'G',
      label: 'specific gravity',
      help: 'Oven-dry specific gravity of the piece that holds the thread.',
      min: 0.1,
      max: 1.3,
      optional: true,
    }),
    diameter: screwField({ label: 'size', help: 'Diameter of the shank, or gauge.' }),
    penetration: field.length({
      symbol: 'L',
      label: 'thread length',
      help: 'Length of thread in the piece that holds.',
      above: '0 mm',
      max: '300 mm',
    }),
    count: field.count({
      label: 'screws',
      help: 'Screws that share the load.',
      min: 1,
      max: 500,
      default: 1,
    }),
    grain: field.choice(['side', 'end'], {
      label: 'grain',
      help: 'Whether the thread is in side grain or end grain.',
      default: 'side',
    }),
    group: field.choice(['I', 'II', 'III', 'IV'], {
      label: 'timber group',
      help: 'For the older rule sideways: II Douglas fir and southern pine, III hemlock and redwood, IV spruce.',
      optional: true,
    }),
    hardwood: field.flag({
      label: 'hardwood',
      help: 'For the pilot hole; read from the timber if one is given.',
      optional: true,
    }),
    ...screwFields,
  },
  outputs: {
    withdrawal: out.force({ label: 'breaking load', help: 'Mean load that ends the hold.', optional: true }),
    allowable: out.force({ label: 'allowed pull', help: 'Load allowed along all the screws.' }),
    governedBy: out.text({ label: 'limited by', help: 'What decides the load allowed along the screws.' }),
    lateral: out.force({
      label: 'allowed sideways',
      help: 'Load allowed sideways on all screws.',
      optional: true,
    }),
    sideways: out.text({ label: 'what decides sideways' }),
    thread: out.force({ label: 'thread, one screw', help: 'Load allowed on the thread of one screw.' }),
    steel: out.force({ label: 'steel, one screw', help: 'Load allowed on the steel of one screw.' }),
    head: out.force({
      label: 'head, one screw',
      help: 'Load allowed on the head of one screw.',
      optional: true,
    }),
    root: out.length({ label: 'root diameter', help: 'Diameter at the root of the thread.' }),
    pilot: out.length({ label: 'pilot hole', help: 'Drill size for the thread.' }),
    pilotAsPrinted: out.text({
      label: 'pilot hole, printed',
      help: 'Pilot hole of the printed table.',
      optional: true,
    }),
    clearance: out.length({ label: 'clearance hole', help: 'Hole in the piece that is drawn up.' }),
    specificGravity: out.ratio({ label: 'specific gravity taken' }),
    distances: out.table(
      {
        place: out.text({ label: 'place' }),
        sideways: out.length({
          label: 'least, sideways load',
          help: 'Least distance of screws loaded sideways.',
          optional: true,
        }),
        pulled: out.length({
          label: 'least, pull',
          help: 'Least distance of screws that are pulled.',
          optional: true,
        }),
      },
      { label: 'Least screw distances', help: 'Between screws, to ends and to edges.' },
    ),
  },
  formulas: [threadBreaks, threadAllowed, steelBreaks, steelAllowed, headAllowed, olderSideways, root, pilot],
  solve: (given, trace) => {
    const { gravity, hard } = gravityOf(given.timber, given.specificGravity, given.hardwood, trace);
    const { diameter: d, count } = given;
    const printed = printedHole(d, hard ? 'hardwood' : 'softwood');
    const d_r = Math.min(trace.evaluate(root, { D: d }), printedRoot(d) ?? Infinity);
    const axial = alongTheScrew(given, gravity, d_r, trace);
    const lateral = acrossTheScrew(given, gravity, d_r, trace);
    // Dense timber is drilled nearer to the root, whatever its kind.
    const hole = trace.evaluate(pilot, { c: (given.hardwood ?? (hard || gravity > 0.6)) ? 0.9 : 0.7, d_r });
    if (printed) trace.note(`Printed for gauge #${printed.gauge}: ${printed.words}.`, printed.citation);
    return {
      withdrawal: axial.breaks === undefined ? undefined : axial.breaks * count,
      allowable: axial.allowed * count,
      governedBy: axial.governedBy,
      lateral: lateral.value === undefined ? undefined : lateral.value * count,
      sideways: lateral.governedBy,
      thread: axial.thread,
      steel: axial.steel,
      head: axial.head,
      root: d_r,
      pilot: hole,
      pilotAsPrinted: printed?.text,
      clearance: d + 0.0002,
      specificGravity: gravity,
      distances: distancesOf(d, given.drilled),
    };
  },
  limits: [
    {
      when: (given) => nanometres(given.penetration) < nanometres(4 * given.diameter),
      message: 'less than four diameters of thread: the formulas were not tested there; use a longer screw',
    },
  ],
  cautions: (given, answer) => [
    danger(
      'follow local codes and licensed practice where it carries people or hangs over them; share the load among several screws',
    ),
    ...(given.grain === 'end' ? [danger('do not count on screws pulled out of end grain')] : []),
    ...(answer.lateral === 0
      ? [
          danger(
            'do not load these screws sideways: their thread is less than six diameters deep and counts for nothing',
          ),
        ]
      : []),
    ...(given.boardThickness === undefined
      ? [
          note(
            'the head may pull through the piece it draws up: give boardThickness to have that checked, and the load sideways by its yield modes',
          ),
        ]
      : []),
    note(
      'for seasoned timber in the dry; screws driven into green timber that dries, or wetted and dried, hold a quarter of it or less (common practice)',
    ),
    note(
      'a hole in salvaged timber that held a nail before holds nothing: move the screw, or plug the hole with glued wood',
    ),
    ...(given.drilled ? [] : [note('old dry hardwood splits easily: always drill it (common practice)')]),
  ],
  chart: (given, answer) => screwDrawing({ ...given, ...answer }),
  sentence: 'The screws hold a pull of {allowable}; {governedBy} decides.',
  example: {
    timber: 'Douglas-fir',
    diameter: '#8',
    penetration: '42 mm',
    count: 4,
    group: 'II',
    boardThickness: '19 mm',
  },
});

function gravityOf(
  timber: Timber | undefined,
  own: number | undefined,
  hardwood: boolean | undefined,
  trace: Trace,
): { gravity: number; hard: boolean } {
  const hard = hardwood ?? timber?.group === 'hardwood';
  if (own !== undefined) return { gravity: own, hard };
  if (timber === undefined)
    throw new InputError({
      field: 'timber',
      message: 'missing; takes a species such as "white oak", or specificGravity such as 0.5',
    });
  const dry = timber.specificGravity('12%');
  const g = dry ?? timber.specificGravity('green');
  if (!g)
    throw new InputError({
      field: 'timber',
      message: `no specific gravity is held for ${timber.name}; give specificGravity`,
    });
  citeTimber(trace, timber, g);
  if (timber.isGroup)
    trace.warn(
      dataCaution(`${timber.name}: the low figure of ${g.count} species was taken, the 10th percentile`),
    );
  const gravity = timber.isGroup ? g.gravity.low : g.gravity.middle;
  trace.note(
    `Specific gravity of ${timber.name}, oven-dry mass on the volume ${dry ? 'at 12 %' : 'green'}: ${gravity.toFixed(2)}, a little under the oven-dry one and so on the safe side.`,
  );
  return { gravity, hard };
}
