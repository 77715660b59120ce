import { danger, dataCaution, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { Refusal } from '../../quantities/refusal.js';
import type { Work } from '../../recipe/work.js';
import { citeTimber, timberField } from '../../timber/field.js';
import type { Timber } from '../../timber/timber.js';
import { nanometres } from '../../recipe/nanometre.js';
import { screwPicture } from './screw-picture.js';
import { printedHole, screwField } from './screw-size.js';

const G = letter('ratio', 'specific gravity, ovendry');
const D = letter('length', 'diameter of the shank', { in: 'in', bare: true });
const L = letter('length', 'thread in the piece that holds', { in: 'in', bare: true });
const lbf = (says: string) => letter('force', says, { in: 'lbf', bare: true });

const greatest = formula({
  symbol: 'p',
  gives: lbf('load that pulls one screw out'),
  text: '15700 G^2 D L',
  where: { G, D, L },
  source: cite('fpl-gtr-190', 'ch. 8, wood screws, withdrawal', { read: 'memory' }),
});
const allowed = formula({
  symbol: 'p_a',
  gives: lbf('load on one screw allowed in withdrawal'),
  text: '2850 G^2 D L',
  where: { G, D, L },
  source: cite('structural-handbook-screws', 'Eq. 6.37, p. 170', {
    also: cite('engineering-toolbox-screws', 'Eq. 1'),
  }),
});
const sideways = formula({
  symbol: 'p_s',
  gives: lbf('load on one screw allowed sideways'),
  text: 'C D^2',
  where: { C: letter('ratio', 'constant of the timber’s group'), D },
  source: cite('structural-handbook-screws', 'Eq. 6.38, p. 170'),
});
const root = formula({
  symbol: 'd_r',
  gives: letter('length', 'diameter at the root of the thread', { in: 'mm' }),
  text: '2 / 3 * D',
  where: { D: letter('length', 'diameter of the shank', { in: 'mm' }) },
  source: cite('fpl-gtr-190', 'p. 8-10: root about two thirds of the shank'),
});
const pilot = formula({
  symbol: 'd_p',
  gives: letter('length', 'pilot hole for the thread', { in: 'mm' }),
  text: 'c d_r',
  where: {
    c: letter('ratio', 'share of the root: 0.7 softwood, 0.9 hardwood'),
    d_r: letter('length', 'diameter at the root of the thread', { in: 'mm' }),
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
      says: 'species that holds the thread, or "unknown softwood"; or give specificGravity',
      needs: 'gravity',
      optional: true,
    }),
    specificGravity: field.ratio({
      symbol: 'G',
      says: 'specific gravity, ovendry, of the piece that holds the thread',
      min: 0.1,
      max: 1.3,
      optional: true,
    }),
    diameter: screwField({ says: 'diameter of the shank, or gauge' }),
    penetration: field.length({
      symbol: 'L',
      says: 'length of thread in the piece that holds',
      above: '0 mm',
      max: '300 mm',
    }),
    count: field.count({ says: 'screws that share the load', min: 1, max: 500, default: 1 }),
    grain: field.choice(['side', 'end'], {
      says: 'whether the thread is in side grain or end grain',
      default: 'side',
    }),
    group: field.choice(['I', 'II', 'III', 'IV'], {
      says: 'group of the timber for loads sideways: II Douglas fir and southern pine, III hemlock and redwood, IV spruce',
      optional: true,
    }),
    hardwood: field.flag({
      says: 'whether it is a hardwood, for the pilot hole; read from the timber if one is given',
      optional: true,
    }),
  },
  outputs: {
    withdrawal: out.force({ says: 'load that pulls all the screws out' }),
    allowable: out.force({ says: 'load allowed in withdrawal, all screws' }),
    lateral: out.force({ says: 'load allowed sideways, all screws', optional: true }),
    root: out.length({ says: 'diameter at the root of the thread' }),
    pilot: out.length({ says: 'pilot hole for the thread' }),
    pilotAsPrinted: out.text({ says: 'pilot hole of the printed table', optional: true }),
    clearance: out.length({ says: 'hole in the piece that is drawn up' }),
    specificGravity: out.ratio({ says: 'specific gravity taken' }),
  },
  formulas: [greatest, allowed, sideways, root, pilot],
  solve: (given, work) => {
    const { gravity, hard } = gravityOf(given.timber, given.specificGravity, given.hardwood, work);
    const { diameter: d, count } = given;
    const held = work.apply(greatest, { G: gravity, D: d, L: given.penetration });
    const safe = work.apply(allowed, { G: gravity, D: d, L: given.penetration });
    const end = given.grain === 'end';
    if (end)
      work.say(
        'In end grain no withdrawal load is allowed; what pulls the screw out is taken as three quarters of side grain, the Wood Handbook’s ratio for lag screws.',
        cite('structural-handbook-screws', 'p. 170: no withdrawal load in end grain'),
      );
    const lateral =
      given.group === undefined
        ? undefined
        : work.apply(sideways, { C: groups[given.group], D: d }) * count * (end ? 2 / 3 : 1);
    const d_r = work.apply(root, { D: d });
    const hole = work.apply(pilot, { c: hard ? 0.9 : 0.7, d_r });
    const printed = printedHole(d, hard ? 'hardwood' : 'softwood');
    if (printed) work.say(`Printed for gauge #${printed.gauge}: ${printed.words}.`, printed.citation);
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
      says: 'less than four diameters of thread: the formulas were not tested there; use a longer screw',
    },
    {
      when: (given) => nanometres(given.penetration) > 76e6 && nanometres(given.diameter) < 42e5,
      says: 'so long a thread in so thin a screw: the screw breaks before the wood lets go, and the figure is too high',
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
  chart: (given, answer) => screwPicture({ ...given, ...answer }),
  example: { timber: 'Douglas-fir', diameter: '#8', penetration: '25 mm', count: 4, group: 'II' },
});

function gravityOf(
  timber: Timber | undefined,
  own: number | undefined,
  hardwood: boolean | undefined,
  work: Work,
): { gravity: number; hard: boolean } {
  const hard = hardwood ?? timber?.group === 'hardwood';
  if (own !== undefined) return { gravity: own, hard };
  if (timber === undefined)
    throw new Refusal({
      field: 'timber',
      says: 'missing; takes a species such as "white oak", or specificGravity such as 0.5',
    });
  const dry = timber.specificGravity('12%');
  const g = dry ?? timber.specificGravity('green');
  if (!g)
    throw new Refusal({
      field: 'timber',
      says: `no specific gravity is held for ${timber.name}; give specificGravity`,
    });
  citeTimber(work, timber, g);
  if (timber.isGroup)
    work.caution(
      dataCaution(`${timber.name}: the low figure of ${g.count} species was taken, the 10th percentile`),
    );
  const gravity = timber.isGroup ? g.gravity.low : g.gravity.middle;
  work.say(
    `Specific gravity of ${timber.name}, ovendry mass on the volume ${dry ? 'at 12 %' : 'green'}: ${gravity.toFixed(2)}, a little under the ovendry one and so on the safe side.`,
  );
  return { gravity, hard };
}
