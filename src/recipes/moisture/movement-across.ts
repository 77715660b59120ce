import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { tableField } from '../../engine/table-field.js';
import { nanometres } from '../../engine/nanometres.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { timberField } from '../../materials/timber-field.js';
import { coefficientSource, movementFormulas, spreadCautions, type Moved } from './movement-model.js';
import { moveAll, ownFigure, piecesOf } from './pieces.js';
import { flatRule, lumberRule, sizeRules } from './size-rules.js';
import { sorptionSteps } from './sorption.js';
import { widthChart } from './width-chart.js';
import { cutField, cutWords, moistureOf, stateField } from './wood-state.js';

const timberNeeds = { needs: ['movement', 'shrinkage'] } as const;

/**
 * How much wider or narrower a board or a glued top becomes between two states of moisture. For solid timber free to
 * move; plywood and the length of a board hardly move at all.
 */
export const movementAcross = recipe({
  name: 'movementAcross',
  title: 'Movement across the grain',
  topic: 'moisture',
  about:
    'How much a board or a top of strips widens or narrows when its moisture changes: by published coefficients within 6 to 14 % moisture, by shrinkage from green outside. Positive means wider.',
  sources: [coefficientSource],
  inputs: {
    width: field.length({
      label: 'starting width',
      help: 'Width across the grain at the starting moisture; leave it out where strips are given.',
      above: '0 mm',
      max: '100 m',
      optional: true,
    }),
    timber: timberField({
      ...timberNeeds,
      label: 'timber',
      help: 'A species, or a group for a range; leave it out where strips are given.',
      optional: true,
    }),
    cut: cutField({
      label: 'cut',
      help: 'How it was sawn, or the angle of the rings to the face.',
      default: 'flat-sawn',
    }),
    from: stateField('starting moisture content'),
    to: stateField('final moisture content'),
    strips: tableField(
      {
        timber: timberField({ ...timberNeeds, label: 'species of the strip' }),
        width: field.length({ label: 'width of the strip', above: '0 mm', max: '10 m' }),
        cut: cutField({ label: 'how it was sawn', default: 'flat-sawn' }),
        count: field.count({ label: 'strips alike', min: 1, max: 10_000, default: 1 }),
      },
      {
        label: 'strips',
        help: 'Strips of a glued top, each of its own timber and sawing; their movements are added.',
        optional: true,
      },
    ),
    coefficient: field.ratio({
      label: 'coefficient',
      help: 'Change of width for each per cent of moisture, as a fraction; give it in place of the published one.',
      above: 0,
      max: 0.02,
      optional: true,
    }),
    shrinkage: field.share({
      label: 'shrinkage',
      help: 'Shrinkage from green to oven-dry; give it in place of the published one.',
      above: '0 %',
      max: '40 %',
      optional: true,
    }),
    fibreSaturation: field.moisture({
      label: 'fibre saturation',
      help: 'Moisture at fibre saturation that goes with a shrinkage of your own.',
      min: '15 %',
      max: '45 %',
      default: '30 %',
    }),
    rule: field.choice(sizeRules, {
      label: 'method',
      help: "The timber's own figures, the rule for softwood lumber by its green size, or the flat rate of EN 336.",
      default: 'timber',
    }),
    face: field.choice(['width', 'thickness'], {
      label: 'size of lumber',
      help: 'Which size the rule for softwood lumber is for.',
      default: 'width',
    }),
    fixedAt: field.either(
      [
        field.choice(['centre', 'edge'], { label: 'middle or edge' }),
        field.length({ label: 'distance from one edge', min: '0 mm', max: '100 m' }),
      ],
      {
        label: 'held at',
        help: 'Along its middle, along one edge, or at a distance from one edge.',
        default: 'centre',
      },
    ),
  },
  outputs: {
    change: out.length({ label: 'change of width', help: 'Positive when it grows.' }),
    finalWidth: out.length({ label: 'final width', help: 'Width at the final moisture.' }),
    perSide: out.length({
      label: 'edge movement',
      help: 'Movement of the free edge, the farther one of two.',
    }),
    low: out.length({ label: 'change, low', help: 'Lower end of what is expected.' }),
    high: out.length({ label: 'change, high', help: 'Upper end of what is expected.' }),
    coefficient: out.ratio({
      label: 'coefficient',
      help: 'Change of width for each per cent of moisture, as a fraction of the width.',
      optional: true,
    }),
    fromMoisture: out.moisture({ label: 'starting moisture content' }),
    toMoisture: out.moisture({ label: 'final moisture content' }),
    ruleUsed: out.text({ label: 'which rule was used' }),
    stripChanges: out.table(
      {
        timber: out.text({ label: 'timber' }),
        cut: out.text({ label: 'sawing' }),
        width: out.length({ label: 'width' }),
        change: out.length({ label: 'change' }),
      },
      { label: 'Strip by strip', optional: true },
    ),
  },
  formulas: [...movementFormulas, lumberRule, flatRule, ...sorptionSteps],
  solve: (given, trace) => {
    const from = moistureOf(trace, given.from, 'from');
    const to = moistureOf(trace, given.to, 'to');
    const own = ownFigure(trace, given, from, to);
    if (own) {
      const { change, width, rule } = own;
      const coefficient = from === to ? undefined : change / width / ((to - from) * 100);
      // A figure of one's own has no spread.
      return answerOf(given, width, { change, low: change, high: change }, from, to, coefficient, rule);
    }
    const pieces = piecesOf(given);
    const moved = moveAll(trace, pieces, from, to);
    const width = pieces.reduce((a, p) => a + p.width, 0);
    if (!given.strips)
      return answerOf(given, width, moved, from, to, moved.perPercent, ruleWords[moved.rule]);
    trace.note(
      `The ${pieces.length} strips add up to ${(width * 1000).toFixed(1)} mm and move by ${(moved.change * 1000).toFixed(2)} mm together.`,
    );
    return {
      ...answerOf(given, width, moved, from, to, moved.perPercent, ruleWords[moved.rule]),
      stripChanges: pieces.map((p, i) => ({
        timber: p.timber.name,
        cut: cutWords(p.cut),
        width: p.width,
        change: (moved.each[i] as Moved).change,
      })),
    };
  },
  cautions: (given) => [
    ...(given.strips
      ? spreadCautions(given.strips)
      : given.timber &&
          given.coefficient === undefined &&
          given.shrinkage === undefined &&
          given.rule === 'timber'
        ? spreadCautions([{ timber: given.timber, cut: given.cut }])
        : []),
    note('a finish slows seasonal movement but does not prevent it'),
  ],
  chart: (given, answer) =>
    given.coefficient !== undefined || given.shrinkage !== undefined || given.rule !== 'timber'
      ? undefined
      : widthChart({
          pieces: piecesOf(given),
          from: answer.fromMoisture,
          to: answer.toMoisture,
          finalWidth: answer.finalWidth,
          strips: given.strips !== undefined,
        }),
  sentence: (_given, out) =>
    out.change === 0
      ? 'It keeps its width of {finalWidth}.'
      : `It will ${out.change < 0 ? 'shrink' : 'grow'} by about {change}, from {low} to {high}; afterwards it is {finalWidth} wide.`,
  example: { width: '900 mm', timber: 'red oak', cut: 'flat-sawn', from: '8 %', to: '12 %' },
});

/** Distance of the held line from one edge; undefined for the middle. @throws InputError where it lies beyond the width */
function heldAt(fixedAt: 'centre' | 'edge' | number, width: number): number | undefined {
  if (fixedAt === 'centre') return undefined;
  const at = fixedAt === 'edge' ? 0 : fixedAt;
  if (nanometres(at) > nanometres(width))
    throw new InputError({
      field: 'fixedAt',
      message: `got ${(at * 1000).toFixed(1)} mm, takes a distance within the width of ${(width * 1000).toFixed(1)} mm`,
    });
  return at;
}

const ruleWords: Readonly<Record<Moved['rule'], string>> = {
  coefficient: 'movement coefficient, 6 to 14 % moisture',
  'green shrinkage': 'shrinkage from green',
  both: 'movement coefficient from 6 to 14 % moisture, shrinkage from green outside',
  'coefficient beyond its range': 'movement coefficient beyond its range',
};

/** The answer without the strips, from how the whole width moves. One literal: a sweep makes a million of them. */
function answerOf(
  given: { readonly fixedAt: 'centre' | 'edge' | number },
  width: number,
  { change, low, high }: Pick<Moved, 'change' | 'low' | 'high'>,
  from: number,
  to: number,
  coefficient: number | undefined,
  ruleUsed: string,
) {
  const held = heldAt(given.fixedAt, width);
  return {
    change,
    finalWidth: width + change,
    perSide: held === undefined ? change / 2 : (change * Math.max(held, width - held)) / width,
    low,
    high,
    coefficient,
    fromMoisture: from,
    toMoisture: to,
    ruleUsed,
  };
}
