import { tippingRemedies } from './tipping-remedies.js';
import { danger, note } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { loadBearingCautions, g0 } from './loads-and-creep.js';
import { verdictOf } from './stability.js';
import { answerOf, checkRow, stabilityCautions, stabilityChecks } from './stability-checks.js';
import { tippingDrawing } from './tipping-drawing.js';
import { tippingFields } from './tipping-fields.js';

const mass = variable('mass', 'mass of the whole');
const g = variable('acceleration', 'standard gravity');
const arm = (label: string) => variable('length', label);
const turning = (label: string) => variable('moment', label);

const holding = formula({
  symbol: 'M_s',
  result: turning('moment of its own weight that holds it down, about the feet it would tip over'),
  expression: 'm g a',
  variables: { m: mass, g, a: arm('from those feet to its centre of gravity') },
  basis: 'geometry',
});
const upsetting = formula({
  symbol: 'M_o',
  result: turning('moment that tips it'),
  expression: 'F o + H h',
  variables: {
    F: variable('force', 'load on the edge'),
    o: arm('how far the edge stands out over the feet'),
    H: variable('force', 'push'),
    h: arm('height of the push'),
  },
  basis: 'geometry',
});
const push = formula({
  symbol: 'H_t',
  result: variable('force', 'push that tips it'),
  expression: '(M_s - F o) / h',
  variables: {
    M_s: turning('moment that holds it down'),
    F: variable('force', 'load on the edge'),
    o: arm('how far the edge stands out over the feet'),
    h: arm('height of the push'),
  },
  basis: 'geometry',
});
const edge = formula({
  symbol: 'F_t',
  result: variable('force', 'load on the edge that tips it'),
  expression: 'M_s / o',
  variables: {
    M_s: turning('moment that holds it down'),
    o: arm('how far the edge stands out over the feet'),
  },
  basis: 'geometry',
});

/**
 * Whether a counter, a bench or a cabinet stands when somebody leans on its edge or pushes it: weights against the feet,
 * seen from the side: by the forces given, and by the kinds of test that furniture standards have. For stiff furniture,
 * not fixed to a wall.
 */
export const tipping = recipe({
  name: 'tipping',
  title: 'Will it tip over',
  topic: 'rails',
  about:
    'Whether a piece of furniture stands when somebody leans on its edge or pushes it, from the masses of its parts and where its feet are. For a level floor and nothing fixed to a wall.',
  sources: [],
  inputs: tippingFields,
  outputs: {
    verdict: out.text({ label: 'verdict', help: 'Stands, tips, or not checked.' }),
    answer: out.text({ label: 'what pushes it over' }),
    checks: out.table(
      {
        situation: out.text({ label: 'situation' }),
        side: out.text({ label: 'side' }),
        factor: out.ratio({
          label: 'safety',
          help: 'Restoring over overturning moment; none where nothing tips it.',
          optional: true,
        }),
        tipsAt: out.force({ label: 'force that tips it', optional: true }),
        result: out.text({ label: 'result' }),
      },
      { label: 'What was checked', optional: true },
    ),
    margin: out.length({
      label: 'stability margin',
      help: 'How far inside the nearer feet the line of weight and loads falls; negative means that it tips.',
    }),
    factor: out.ratio({
      label: 'safety',
      help: 'Restoring over overturning moment on the worse side; none where nothing tips it.',
      optional: true,
    }),
    worseSide: out.text({ label: 'weaker side', help: 'The side it tips to first.' }),
    mass: out.mass({ label: 'mass of the whole' }),
    centre: out.length({ label: 'centre of gravity', help: 'Behind the front feet.' }),
    forceToTip: out.force({
      label: 'tipping push',
      help: 'Push at that height that tips it with the edge load on.',
    }),
    edgeLoadToTip: out.force({
      label: 'tipping edge load',
      help: 'Load on the edge alone that tips it.',
      optional: true,
    }),
    tilt: out.angle({
      label: 'tilt angle',
      help: 'How far it may be tilted before it falls, where heights are given.',
      optional: true,
    }),
  },
  formulas: [holding, upsetting, push, edge],
  solve: (given, trace) => {
    const m = given.parts.reduce((s, p) => s + p.mass, 0);
    const centre = given.parts.reduce((s, p) => s + p.mass * p.position, 0) / m;
    trace.note(
      `Mass of the whole ${m.toFixed(1)} kg, its centre of gravity ${(centre * 1000).toFixed(0)} mm behind the front feet.`,
    );
    if (centre <= 0 || centre >= given.base)
      throw new InputError({
        field: 'parts',
        message: `got a centre of gravity ${(centre * 1000).toFixed(0)} mm behind the front feet, takes one between them and the back feet at ${(given.base * 1000).toFixed(0)} mm: as given it does not stand by itself`,
      });
    const sides = [
      { name: 'forward', a: centre, o: given.overhang },
      { name: 'backward', a: given.base - centre, o: given.backOverhang },
    ].map((s) => {
      const held = m * g0 * s.a;
      const over = given.edgeLoad * s.o + given.push * given.pushHeight;
      return { ...s, held, margin: (held - over) / (m * g0 + given.edgeLoad) };
    });
    const worse = sides.reduce((x, y) => (y.margin < x.margin - 1e-12 ? y : x));
    const M_s = trace.evaluate(holding, { m, g: g0, a: worse.a });
    const F = given.edgeLoad;
    const M_o = trace.evaluate(upsetting, { F, o: worse.o, H: given.push, h: given.pushHeight });
    const easier = sides.reduce((x, y) => (y.held - F * y.o < x.held - F * x.o ? y : x));
    const forceToTip = Math.max(
      0,
      trace.evaluate(push, { M_s: easier.held, F, o: easier.o, h: given.pushHeight }),
    );
    // Under a nanometre of overhang no load tips it.
    const leaning = sides.filter((s) => s.o > 1e-9).sort((x, y) => x.held / x.o - y.held / y.o)[0];
    const heights = given.parts.every((p) => p.height !== undefined);
    const high = given.parts.reduce((s, p) => s + p.mass * (p.height ?? 0), 0) / m;
    const checks = stabilityChecks(given, { mass: m, centre, height: heights ? high : undefined }, trace);
    return {
      verdict: verdictOf(checks),
      answer: answerOf(given, checks),
      checks: checks.length === 0 ? undefined : checks.map((c) => checkRow(c)),
      margin: worse.margin,
      factor: M_o < 1e-9 * M_s ? undefined : M_s / M_o,
      worseSide: worse.name,
      mass: m,
      centre,
      forceToTip,
      edgeLoadToTip: leaning ? trace.evaluate(edge, { M_s: leaning.held, o: leaning.o }) : undefined,
      tilt: heights && high > 0 ? Math.atan(Math.min(centre, given.base - centre) / high) : undefined,
    };
  },
  cautions: (given, answer) => [
    ...loadBearingCautions,
    ...(answer.verdict === 'tips'
      ? [
          danger(
            `widen the feet, shorten the overhang, put weight low, or fix it to the wall or the floor. ${answer.answer}`,
          ),
        ]
      : []),
    ...(answer.verdict === 'not checked'
      ? [
          danger(
            'give the kind of furniture, such as "table", or a force: nothing was checked, and no load is not the same as safe',
          ),
        ]
      : []),
    ...stabilityCautions(given),
    ...(given.edgeLoad > 0 || given.push > 0
      ? [note(`a factor of ${given.factor} against tipping is common practice, not a standard’s test`)]
      : []),
  ],
  chart: (given, answer) => tippingDrawing(given, answer),
  sentence: '{answer}',
  mending: {
    fails: (_given, out) => out.verdict === 'tips',
    remedies: tippingRemedies,
    then: 'it stands {factor} times over',
  },
  example: {
    parts: [
      { name: 'top', mass: '26 kg', position: '200 mm', height: '890 mm' },
      { name: 'frame', mass: '18 kg', position: '240 mm', height: '450 mm' },
    ],
    base: '480 mm',
    overhang: '120 mm',
    backOverhang: '40 mm',
    piece: 'table',
    edgeLoad: '400 N',
    push: '60 N',
    pushHeight: '900 mm',
  },
});
