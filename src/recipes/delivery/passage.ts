import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { tableField } from '../../engine/table-field.js';
import type { Trace } from '../../engine/trace.js';
import { filterLoads, largestTeam, liftingSource, peopleFor, teamLoad, teamShare } from './lifting.js';
import { passageDrawing } from './passage-drawing.js';
import { waysThrough, type Gate } from './ways-through.js';

/** A thin piece round a corner, for the workings; the width of the piece makes it shorter. */
const thinPiece = formula({
  symbol: 'L_0',
  result: variable('length', 'longest piece without any width round the corner', { unit: 'mm' }),
  expression: '(a^(2/3) + b^(2/3))^(3/2)',
  // Powers of a length in thirds have no unit of their own.
  empirical: true,
  variables: {
    a: variable('length', 'width of the first corridor', { unit: 'mm' }),
    b: variable('length', 'width of the second corridor', { unit: 'mm' }),
  },
  source: cite('briggs-calculus', 'turning a corner with a pole'),
});
const partMass = formula({
  symbol: 'm_p',
  result: variable('mass', 'mass of one part'),
  expression: 'm / n',
  variables: { m: variable('mass', 'mass of the whole'), n: variable('count', 'parts') },
  basis: 'definition',
});

/**
 * Whether a long piece goes through corridors with corners, doors, onto landings and into a van: lying, on edge or
 * tilted; where not, in how many parts, with the mass of each and the people to carry it by published lifting guidance.
 * Boxes with square ends; lengths and a mass in. Source: geometry, and the agency's lifting filter.
 */
export const passage = recipe({
  name: 'passage',
  title: 'Will it go in',
  topic: 'delivery',
  about:
    'Whether a counter, top or bench goes round corners, through doors and into a van: lying, on edge or tilted; where to divide it if not, and how many people carry it.',
  sources: [liftingSource],
  inputs: {
    length: field.length({ symbol: 'L', label: 'length of the piece', above: '0 mm', max: '20 m' }),
    width: field.length({ symbol: 'w', label: 'width of the piece', above: '0 mm', max: '10 m' }),
    height: field.length({
      symbol: 'h',
      label: 'height',
      help: 'Height of the piece, or thickness of a top.',
      above: '0 mm',
      max: '5 m',
    }),
    gates: tableField(
      {
        kind: field.choice(['corner', 'door', 'landing', 'van'], {
          label: 'kind',
          help: 'Corner of corridors, door, landing or van.',
        }),
        first: field.length({
          label: 'first size',
          help: 'Width of the first corridor or of the door; length of a landing or van.',
          above: '0 mm',
          max: '50 m',
        }),
        second: field.length({
          label: 'second size',
          help: 'Width of the second corridor; width of a landing or van.',
          above: '0 mm',
          max: '50 m',
          optional: true,
        }),
        height: field.length({ label: 'height free', above: '0 mm', max: '20 m', default: '2 m' }),
      },
      { label: 'passages', help: 'What the piece passes, in order.', most: 50 },
    ),
    spare: field.length({
      label: 'hand room',
      help: 'Room for hands and padding on each side.',
      min: '0 mm',
      max: '500 mm',
      default: '20 mm',
    }),
    mass: field.mass({
      symbol: 'm',
      label: 'mass of the piece',
      above: '0 kg',
      max: '2000 kg',
      optional: true,
    }),
    carriers: field.choice(['men', 'women'], {
      label: 'carriers',
      help: 'Whose lifting limits are taken; those of women are lower.',
      default: 'women',
    }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    fits: out.flag({ label: 'goes in whole', help: 'Whether the piece passes in one part.' }),
    longest: out.length({
      label: 'longest piece',
      help: 'Longest piece of this width and height that passes.',
      optional: true,
    }),
    parts: out.count({ label: 'parts', help: 'Parts to make the piece in.' }),
    partLength: out.length({ label: 'length of one part' }),
    partMass: out.mass({ label: 'mass of one part', optional: true }),
    people: out.count({ label: 'carriers needed', help: 'People to carry one part.', optional: true }),
    gates: out.table(
      {
        place: out.text({ label: 'place' }),
        longest: out.length({ label: 'longest piece', optional: true }),
        way: out.text({ label: 'how' }),
        result: out.text({ label: 'goes' }),
      },
      { label: 'Place by place' },
    ),
  },
  formulas: [thinPiece, partMass, teamLoad],
  solve: (given, trace) => {
    const size = {
      length: given.length,
      width: given.width + 2 * given.spare,
      height: given.height + 2 * given.spare,
    };
    const found = given.gates.map((gate) => gateAnswer(gate, size, trace));
    const limits = found.flatMap((g) => (g.longest === Infinity ? [] : [g.longest]));
    const longest = limits.length === 0 ? undefined : Math.min(...limits);
    const fits = longest === undefined || longest >= given.length;
    const parts = fits ? 1 : longest > 0 ? Math.ceil(given.length / longest - 1e-9) : 0;
    const each =
      parts === 0 || given.mass === undefined
        ? undefined
        : trace.evaluate(partMass, { m: given.mass, n: parts });
    const one = filterLoads[given.carriers].waist;
    const people = each === undefined ? undefined : peopleFor(each, one);
    if (people !== undefined) trace.evaluate(teamLoad, { k: teamShare(people), n: people, m_1: one });
    return {
      sentence: sentenceOf(fits, parts, given.length / Math.max(parts, 1), longest, each, people),
      fits,
      longest,
      parts,
      partLength: parts === 0 ? given.length : given.length / parts,
      partMass: each,
      people,
      gates: found.map((g) => ({
        place: g.name,
        longest: g.longest === Infinity ? undefined : g.longest,
        way: g.way,
        result: g.longest >= given.length ? 'yes' : 'no',
      })),
    };
  },
  cautions: (given, answer) => [
    danger(
      'keep the load close to the body at waist height, and put it down before anyone tires: on stairs, twisting or reaching people carry far less, and on stairs those below carry most',
    ),
    ...(answer.partMass !== undefined && answer.people === undefined
      ? [
          danger(
            `use skates, a hoist or removers, or divide it: ${answer.partMass.toFixed(0)} kg is over the ${(teamShare(largestTeam) * largestTeam * filterLoads[given.carriers].waist).toFixed(0)} kg that ${largestTeam} people carry within the guidance, and more of them get in each other’s way`,
          ),
        ]
      : []),
    ...(answer.parts > 1
      ? [
          note(
            'joints made on site: knock-down bolts or draw bolts with dowels to align them, never a first glue-up on site; divide where a leg frame stands',
          ),
        ]
      : []),
    note(
      'measure handles, skirtings, rails and light fittings: the least clear size counts; walk the way with a template of battens',
    ),
    ...(given.gates.some((g) => g.kind === 'landing')
      ? [
          note(
            'on a landing it is taken to come to rest whole before it turns on: a piece that leans over the flight may do better',
          ),
        ]
      : []),
  ],
  chart: (given) => passageDrawing(given),
  mending: {
    fails: (_given, out) => !out.fits,
    remedies: [
      {
        input: 'length',
        direction: 'down',
        step: 0.005,
        kind: 'length',
        say: 'in one piece make it {value} long at most',
      },
      { input: 'width', direction: 'down', step: 0.005, kind: 'length', say: 'make it {value} wide at most' },
      {
        input: 'height',
        direction: 'down',
        step: 0.005,
        kind: 'length',
        say: 'make it {value} high at most',
      },
    ],
  },
  example: {
    length: '1950 mm',
    width: '640 mm',
    height: '60 mm',
    mass: '38 kg',
    carriers: 'men',
    gates: [
      { kind: 'van', first: '2400 mm', second: '1300 mm', height: '1300 mm' },
      { kind: 'door', first: '780 mm', height: '1980 mm' },
      { kind: 'corner', first: '900 mm', second: '1000 mm', height: '2300 mm' },
    ],
  },
});

function gateAnswer(gate: Gate, size: { length: number; width: number; height: number }, trace: Trace) {
  if (gate.kind === 'corner') trace.evaluate(thinPiece, { a: gate.first, b: gate.second ?? gate.first });
  const best = waysThrough(gate, size.width, size.height).reduce((a, b) => (b.longest > a.longest ? b : a));
  trace.note(
    best.longest === 0
      ? `${best.name}: it goes through no way.`
      : `${best.name}: ${best.way}${best.longest === Infinity ? ', any length' : `, up to ${(best.longest * 1000).toFixed(0)} mm`}.`,
  );
  return { name: best.name, longest: best.longest, way: best.longest === 0 ? 'no way' : best.way };
}

function sentenceOf(
  fits: boolean,
  parts: number,
  partLength: number,
  longest: number | undefined,
  mass: number | undefined,
  people: number | undefined,
): string {
  const m = (x: number): string => `${(x * 1000).toFixed(0)} mm`;
  const crew =
    mass === undefined
      ? ''
      : ` ${mass.toFixed(0)} kg${parts > 1 ? ' each' : ''}: ${people === undefined ? 'too much to carry' : `${people} ${people === 1 ? 'person carries' : 'people carry'} it`}.`;
  if (fits)
    return `It goes in whole${longest === undefined ? '' : `, with ${m(longest - partLength)} to spare`}.${crew}`;
  return parts === 0
    ? 'It does not go in at any length: it is too wide or too high.'
    : `It does not go in whole: make it in ${parts} parts of ${m(partLength)}.${crew}`;
}
