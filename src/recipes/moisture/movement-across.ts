import { lineChart } from '../../charts/lineChart.js';
import { Refusal } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { tableField } from '../../recipe/table.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { silentWork, type Work } from '../../recipe/work.js';
import { timberField } from '../../timber/field.js';
import { coefficientRule, coefficientSource, greenRule, moveAcross, movementFormulas, ruleFor, saturationOf, spreadCautions, type Moved, type Piece } from './across-grain.js';
import { byRule, flatRule, lumberRule, sizeRules, type SizeRule } from './size-rules.js';
import { cutField, cutWords, moistureOf, stateField, type Cut } from './wood-state.js';
import { sorptionSteps } from './sorption.js';
import type { Timber } from '../../timber/timber.js';

const timberNeeds = { needs: ['movement', 'shrinkage'] } as const;

interface Given {
  readonly width: number | undefined;
  readonly timber: Timber | undefined;
  readonly cut: Cut;
  readonly strips: readonly { readonly timber: Timber; readonly width: number; readonly cut: Cut; readonly count: number }[] | undefined;
}

/** The pieces that make the width: the strips, or the one board. @throws Refusal where neither or both are given */
export function piecesOf(given: Given): Piece[] {
  if (given.strips) {
    if (given.timber) throw new Refusal({ field: 'timber', says: 'given together with strips, each of which has its own; takes one of the two' });
    const pieces = given.strips.flatMap((s) => Array.from({ length: s.count }, () => ({ width: s.width, timber: s.timber, cut: s.cut })));
    const sum = pieces.reduce((a, p) => a + p.width, 0);
    if (pieces.length > 10_000) throw new Refusal({ field: 'strips', says: `got ${pieces.length} strips, takes at most 10 000` });
    if (given.width !== undefined && Math.abs(given.width - sum) > 0.0005 + 1e-9 * sum) {
      throw new Refusal({ field: 'width', says: `got ${(given.width * 1000).toFixed(1)} mm, but the strips add up to ${(sum * 1000).toFixed(1)} mm; leave width out, or make them agree` });
    }
    return pieces;
  }
  const missing = [given.width === undefined ? { field: 'width', says: 'missing; takes a length such as "900 mm", or give strips' } : [], given.timber === undefined ? { field: 'timber', says: 'missing; takes a timber by name such as "white oak", or give strips' } : []].flat();
  if (missing.length > 0) throw new Refusal(missing);
  return [{ width: given.width as number, timber: given.timber as Timber, cut: given.cut }];
}

/** Sum over the pieces. Each piece's spread adds in full: strips of one kind move together. */
export function moveAll(work: Work, pieces: readonly Piece[], from: number, to: number): Moved & { readonly each: readonly Moved[] } {
  // Strips alike are reckoned once.
  const seen = new Map<string, Moved>();
  const each = pieces.map((p) => {
    const key = `${p.timber.id}|${p.width}|${p.cut.angle}|${p.cut.unknown}`;
    const moved = seen.get(key) ?? moveAcross(work, p, from, to);
    seen.set(key, moved);
    return moved;
  });
  const sum = (k: 'change' | 'low' | 'high'): number => each.reduce((a, m) => a + m[k], 0);
  const width = pieces.reduce((a, p) => a + p.width, 0);
  const rules = new Set(each.map((m) => m.rule));
  return {
    change: sum('change'), low: sum('low'), high: sum('high'),
    rule: (rules.size === 1 ? [...rules][0] : 'green shrinkage') as Moved['rule'],
    perPercent: each.reduce((a, m, i) => a + m.perPercent * (pieces[i] as Piece).width, 0) / width,
    each,
  };
}

interface Own extends Given {
  readonly coefficient: number | undefined;
  readonly shrinkage: number | undefined;
  readonly fibreSaturation: number;
  readonly rule: SizeRule;
  readonly face: 'width' | 'thickness';
}

/** The change by a figure of one's own or a rule of a standard; undefined where the timber's published figures are asked for. */
function ownFigure(work: Work, g: Own, from: number, to: number): { readonly width: number; readonly change: number; readonly rule: string } | undefined {
  const named = [g.coefficient !== undefined ? 'coefficient' : [], g.shrinkage !== undefined ? 'shrinkage' : [], g.rule !== 'timber' ? 'rule' : [], g.strips ? 'strips' : []].flat();
  if (named.length > 1) throw new Refusal({ field: named[1] as string, says: `given together with ${named[0]}; takes one of the two` });
  if (named.length === 0 || g.strips) return undefined;
  if (g.width === undefined) throw new Refusal({ field: 'width', says: 'missing; takes a length such as "900 mm"' });
  if (g.rule !== 'timber') return { width: g.width, change: byRule(work, g.rule, g.width, from, to, g.face, g.timber), rule: g.rule === 'EN 336' ? 'flat rate of EN 336' : 'softwood lumber by its green size' };
  const f = g.fibreSaturation;
  const [M_I, M_F] = [Math.min(from, f), Math.min(to, f)];
  if (g.coefficient !== undefined) return { width: g.width, change: work.apply(coefficientRule, { D: g.width, C: g.coefficient, M_F, M_I }), rule: 'coefficient as given' };
  return { width: g.width, change: work.apply(greenRule, { D: g.width, M_F, M_I, f, S: g.shrinkage as number }), rule: 'shrinkage from green as given' };
}

/**
 * How much wider or narrower a board or a glued top becomes between two states of moisture. For solid timber free to
 * move; plywood and the length of a board hardly move at all.
 */
export const movementAcross = recipe({
  name: 'movementAcross',
  title: 'Movement across the grain',
  topic: 'moisture',
  about: 'How much a board or a top of strips widens or narrows when its moisture changes: by published coefficients within 6 to 14 % moisture, by shrinkage from green outside. Positive means wider.',
  sources: [coefficientSource],
  inputs: {
    width: field.length({ says: 'width across the grain at the first moisture; left out where strips are given', above: '0 mm', max: '100 m', optional: true }),
    timber: timberField({ ...timberNeeds, says: 'species, or a group for a range; left out where strips are given', optional: true }),
    cut: cutField({ says: 'how it was sawn, or the angle of the rings to the face', default: 'flat-sawn' }),
    from: stateField('moisture at first, or the air the timber rests in'),
    to: stateField('moisture at last, or the air it will come to rest in'),
    strips: tableField(
      {
        timber: timberField({ ...timberNeeds, says: 'species of the strip' }),
        width: field.length({ says: 'width of the strip', above: '0 mm', max: '10 m' }),
        cut: cutField({ says: 'how it was sawn', default: 'flat-sawn' }),
        count: field.count({ says: 'strips alike', min: 1, max: 10_000, default: 1 }),
      },
      { says: 'strips of a glued top, each of its own timber and sawing; each moves by its own and the sum is the top', optional: true },
    ),
    coefficient: field.ratio({ says: 'change of width for each per cent of moisture as a fraction, in place of the published one', above: 0, max: 0.02, optional: true }),
    shrinkage: field.share({ says: 'shrinkage from green to ovendry, in place of the published one', above: '0 %', max: '40 %', optional: true }),
    fibreSaturation: field.moisture({ says: 'moisture at fibre saturation that goes with a shrinkage of your own', min: '15 %', max: '45 %', default: '30 %' }),
    rule: field.choice(sizeRules, { says: "the timber's own figures, the rule for softwood lumber by its green size, or the flat rate of EN 336", default: 'timber' }),
    face: field.choice(['width', 'thickness'], { says: 'which size of softwood lumber', default: 'width' }),
    fixedAt: field.either([field.choice(['centre', 'edge'], { says: 'middle or edge' }), field.length({ says: 'distance from one edge', min: '0 mm', max: '100 m' })], { says: 'where the top is held: along its middle, along one edge, or at a distance from one edge', default: 'centre' }),
  },
  outputs: {
    change: out.length({ says: 'change of width, positive when it grows' }),
    finalWidth: out.length({ says: 'width at the last moisture' }),
    perSide: out.length({ says: 'movement of the free edge, the farther one of two' }),
    low: out.length({ says: 'change of width, lower end of what is expected' }),
    high: out.length({ says: 'change of width, upper end of what is expected' }),
    coefficient: out.ratio({ says: 'change of width for each per cent of moisture, as a fraction of the width', optional: true }),
    fromMoisture: out.moisture({ says: 'moisture at first' }),
    toMoisture: out.moisture({ says: 'moisture at last' }),
    ruleUsed: out.text({ says: 'which rule was used' }),
    stripChanges: out.table(
      { timber: out.text({ says: 'timber' }), cut: out.text({ says: 'sawing' }), width: out.length({ says: 'width' }), change: out.length({ says: 'change' }) },
      { says: 'Strip by strip', optional: true },
    ),
  },
  formulas: [...movementFormulas, lumberRule, flatRule, ...sorptionSteps],
  solve: (given, work) => {
    const from = moistureOf(work, given.from, 'from');
    const to = moistureOf(work, given.to, 'to');
    const perSide = (change: number, width: number): number => {
      if (given.fixedAt === 'centre') return change / 2;
      const at = given.fixedAt === 'edge' ? 0 : given.fixedAt;
      if (at > width * (1 + 1e-9)) throw new Refusal({ field: 'fixedAt', says: `got ${(at * 1000).toFixed(1)} mm, takes a distance within the width of ${(width * 1000).toFixed(1)} mm` });
      return (change * Math.max(at, width - at)) / width;
    };
    const own = ownFigure(work, given, from, to);
    if (own) {
      const change = own.change + 0;
      return {
        change, finalWidth: own.width + change, perSide: perSide(change, own.width), low: change, high: change,
        ...(from === to ? {} : { coefficient: change / own.width / ((to - from) * 100) }), fromMoisture: from, toMoisture: to, ruleUsed: own.rule,
      };
    }
    const pieces = piecesOf(given);
    const moved = moveAll(work, pieces, from, to);
    const width = pieces.reduce((a, p) => a + p.width, 0);
    if (given.strips) work.say(`The ${pieces.length} strips add up to ${(width * 1000).toFixed(1)} mm and move by ${(moved.change * 1000).toFixed(2)} mm together.`);
    return {
      change: moved.change, finalWidth: width + moved.change, perSide: perSide(moved.change, width),
      low: moved.low, high: moved.high, coefficient: moved.perPercent, fromMoisture: from, toMoisture: to,
      ruleUsed: { coefficient: 'movement coefficient, 6 to 14 % moisture', 'green shrinkage': 'shrinkage from green', 'coefficient beyond its range': 'movement coefficient beyond its range' }[moved.rule],
      ...(given.strips ? { stripChanges: pieces.map((p, i) => ({ timber: p.timber.name, cut: cutWords(p.cut), width: p.width, change: (moved.each[i] as Moved).change })) } : {}),
    };
  },
  cautions: (given) => [
    ...(given.strips ? spreadCautions(given.strips) : given.timber && given.coefficient === undefined && given.shrinkage === undefined && given.rule === 'timber' ? spreadCautions([{ timber: given.timber, cut: given.cut }]) : []),
    note('a finish slows the movement and does not stop it: over a season the wood still gets there'),
  ],
  chart: (given, answer) => {
    if (given.coefficient !== undefined || given.shrinkage !== undefined || given.rule !== 'timber') return undefined;
    const pieces = piecesOf(given);
    const [a, b] = [answer.fromMoisture, answer.toMoisture];
    const width = pieces.reduce((s, p) => s + p.width, 0);
    const top = Math.max(...pieces.map((p) => saturationOf(p.timber)));
    const [left, right] = [Math.max(0, Math.min(a, b, top) - 0.02), Math.min(top + 0.02, Math.max(a, b) + 0.02)];
    const xs = Array.from({ length: 41 }, (_, i) => left + ((right - left) * i) / 40);
    // One rule for the whole curve, or it would jump where the range of the coefficients ends.
    const forced = pieces.map((p) => ruleFor(p.timber, p.cut, Math.min(a, saturationOf(p.timber)), Math.min(b, saturationOf(p.timber))));
    const at = (m: number): Moved[] => pieces.map((p, i) => moveAcross(silentWork, p, a, m, forced[i]));
    const total = (list: readonly Moved[], k: 'change' | 'low' | 'high'): number => (width + list.reduce((s, x) => s + x[k], 0)) * 1000;
    const curve = xs.map(at);
    // A wetter state than the chart holds stands at its edge and says so.
    const mark = (m: number, w: number, label: string) => ({ x: Math.min(m, right) * 100, y: w * 1000, label: m > right + 1e-9 ? `${label} at ${(m * 100).toFixed(0)} %` : label });
    return lineChart({
      title: 'Width against moisture',
      subtitle: given.strips ? `${pieces.length} strips of mixed timber; band: what is expected` : `${pieces[0]?.timber.name}, ${pieces[0]?.cut.unknown ? 'sawing not known' : cutWords((pieces[0] as Piece).cut)}; band: what is expected`,
      x: { title: 'Moisture content', unit: '%', values: xs.map((x) => x * 100) },
      y: { title: 'Width', unit: 'mm' },
      series: [{ name: 'width', values: curve.map((c) => total(c, 'change')) }],
      bands: [{ name: 'expected', low: curve.map((c) => total(c, 'low')), high: curve.map((c) => total(c, 'high')) }],
      marks: [mark(a, width, `${(width * 1000).toFixed(1)} mm now`), ...(a === b ? [] : [mark(b, answer.finalWidth, `${(answer.finalWidth * 1000).toFixed(1)} mm`)])],
      points: false,
    });
  },
  example: { width: '900 mm', timber: 'red oak', cut: 'flat-sawn', from: '8 %', to: '12 %' },
});
