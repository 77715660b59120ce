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
import { nanometres } from '../../engine/nanometres.js';
import { screwDrawing } from './screw-drawing.js';
import { printedHole, screwField } from './screw-size.js';

const G = variable('ratio', 'specific gravity, ovendry');
const D = variable('length', 'diameter of the shank', { unit: 'in', dimensionless: true });
const L = variable('length', 'thread in the piece that holds', { unit: 'in', dimensionless: true });
const lbf = (label: string) => variable('force', label, { unit: 'lbf', dimensionless: true });

const greatest = formula({
  symbol: 'p',
  result: lbf('load that pulls one screw out'),
  expression: '15700 G^2 D L',
  variables: { G, D, L },
  source: cite('fpl-gtr-190', 'ch. 8, wood screws, withdrawal', { read: 'memory' }),
});
const allowed = formula({
  symbol: 'p_a',
  result: lbf('load on one screw allowed in withdrawal'),
  expression: '2850 G^2 D L',
  variables: { G, D, L },
  source: cite('structural-handbook-screws', 'Eq. 6.37, p. 170', {
    also: cite('engineering-toolbox-screws', 'Eq. 1'),
  }),
});
const sideways = formula({
  symbol: 'p_s',
  result: lbf('load on one screw allowed sideways'),
  expression: 'C D^2',
  variables: { C: variable('ratio', 'constant of the timber’s group'), D },
  source: cite('structural-handbook-screws', 'Eq. 6.38, p. 170'),
});
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

const groups = { I: 4800, II: 3960, III: 3240, IV: 2520 } as const;

/**
 * What wood screws hold in side grain: pulled out at most, allowed in withdrawal and sideways, and the pilot hole to
 * drill. For common wood screws in seasoned timber; structural screws have their maker's figures.
 */
export const screwHold = recipe({
  name: 'screwHold',
  title: 'What screws hold',
  topic: 'joinery',
  about:
    'The pull that draws a wood screw out of side grain, what is allowed on it, what it bears sideways, and its pilot hole. For seasoned timber; not for structural screws with figures of their own.',
  sources: [cite('structural-handbook-screws', 'Eq. 6.37 and 6.38, p. 170')],
  inputs: {
    timber: timberField({
      label: 'species that holds the thread, or "unknown softwood"; or give specificGravity',
      needs: 'gravity',
      optional: true,
    }),
    specificGravity: field.ratio({
      symbol: 'G',
      label: 'specific gravity, ovendry, of the piece that holds the thread',
      min: 0.1,
      max: 1.3,
      optional: true,
    }),
    diameter: screwField({ label: 'diameter of the shank, or gauge' }),
    penetration: field.length({
      symbol: 'L',
      label: 'length of thread in the piece that holds',
      above: '0 mm',
      max: '300 mm',
    }),
    count: field.count({ label: 'screws that share the load', min: 1, max: 500, default: 1 }),
    grain: field.choice(['side', 'end'], {
      label: 'whether the thread is in side grain or end grain',
      default: 'side',
    }),
    group: field.choice(['I', 'II', 'III', 'IV'], {
      label:
        'group of the timber for loads sideways: II Douglas fir and southern pine, III hemlock and redwood, IV spruce',
      optional: true,
    }),
    hardwood: field.flag({
      label: 'whether it is a hardwood, for the pilot hole; read from the timber if one is given',
      optional: true,
    }),
  },
  outputs: {
    withdrawal: out.force({ label: 'load that pulls all the screws out' }),
    allowable: out.force({ label: 'load allowed in withdrawal, all screws' }),
    lateral: out.force({ label: 'load allowed sideways, all screws', optional: true }),
    root: out.length({ label: 'diameter at the root of the thread' }),
    pilot: out.length({ label: 'pilot hole for the thread' }),
    pilotAsPrinted: out.text({ label: 'pilot hole of the printed table', optional: true }),
    clearance: out.length({ label: 'hole in the piece that is drawn up' }),
    specificGravity: out.ratio({ label: 'specific gravity taken' }),
  },
  formulas: [greatest, allowed, sideways, root, pilot],
  solve: (given, trace) => {
    const { gravity, hard } = gravityOf(given.timber, given.specificGravity, given.hardwood, trace);
    const { diameter: d, count } = given;
    const held = trace.evaluate(greatest, { G: gravity, D: d, L: given.penetration });
    const safe = trace.evaluate(allowed, { G: gravity, D: d, L: given.penetration });
    const end = given.grain === 'end';
    if (end)
      trace.note(
        'In end grain no withdrawal load is allowed; what pulls the screw out is taken as three quarters of side grain, the Wood Handbook’s ratio for lag screws.',
        cite('structural-handbook-screws', 'p. 170: no withdrawal load in end grain'),
      );
    const lateral =
      given.group === undefined
        ? undefined
        : trace.evaluate(sideways, { C: groups[given.group], D: d }) * count * (end ? 2 / 3 : 1);
    const d_r = trace.evaluate(root, { D: d });
    const hole = trace.evaluate(pilot, { c: hard ? 0.9 : 0.7, d_r });
    const printed = printedHole(d, hard ? 'hardwood' : 'softwood');
    if (printed) trace.note(`Printed for gauge #${printed.gauge}: ${printed.words}.`, printed.citation);
    return {
      withdrawal: held * count * (end ? 0.75 : 1),
      allowable: end ? 0 : safe * count,
      lateral,
      root: d_r,
      pilot: hole,
      pilotAsPrinted: printed?.text,
      clearance: d + 0.0002,
      specificGravity: gravity,
    };
  },
  limits: [
    {
      when: (given) => nanometres(given.penetration) < nanometres(4 * given.diameter),
      message: 'less than four diameters of thread: the formulas were not tested there; use a longer screw',
    },
    {
      when: (given) => nanometres(given.penetration) > 76e6 && nanometres(given.diameter) < 42e5,
      message:
        'so long a thread in so thin a screw: the screw breaks before the wood lets go, and the figure is too high',
    },
  ],
  cautions: (given) => [
    danger(
      'where it carries people or hangs over them, local codes and licensed practice decide; share the load among several screws',
    ),
    note(
      'for seasoned timber in the dry; screws driven into green timber that dries, or wetted and dried, hold a quarter of it or less (common practice)',
    ),
    note(
      'a hole in salvaged timber that held a nail before holds nothing: move the screw, or plug the hole with glued wood',
    ),
    ...(given.grain === 'end' ? [danger('do not count on screws pulled out of end grain')] : []),
  ],
  chart: (given, answer) => screwDrawing({ ...given, ...answer }),
  example: { timber: 'Douglas-fir', diameter: '#8', penetration: '25 mm', count: 4, group: 'II' },
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
    `Specific gravity of ${timber.name}, ovendry mass on the volume ${dry ? 'at 12 %' : 'green'}: ${gravity.toFixed(2)}, a little under the ovendry one and so on the safe side.`,
  );
  return { gravity, hard };
}
