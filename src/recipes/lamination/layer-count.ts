import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { layerDrawing } from './layer-drawing.js';
import { freshSurfaces, metalFirst, mm, thicknesserLeast } from './salvage-caution.js';

const planed = variable('length', 'thickness of a layer once planed', { unit: 'mm' });
const count = variable('count', 'layers');
const top = variable('length', 'thickness of the finished top', { unit: 'mm' });
const flattening = variable('length', 'taken off the slab by all its flattenings', { unit: 'mm' });

const layer = formula({
  symbol: 'l',
  result: planed,
  expression: 's - 2 p',
  variables: {
    s: variable('length', 'rough thickness of a board', { unit: 'mm' }),
    p: variable('length', 'taken off each face of a board before gluing', { unit: 'mm' }),
  },
  basis: 'geometry',
});

const flattened = formula({
  symbol: 'F',
  result: flattening,
  expression: 'u f',
  variables: {
    u: variable('count', 'glue-ups one after another'),
    f: variable('length', 'taken off the slab after each glue-up', { unit: 'mm' }),
  },
  basis: 'geometry',
});

// A billionth is taken off before rounding up, or 60 / 20 could come out as 4 layers by the last binary digit.
const layers = formula({
  symbol: 'n',
  result: count,
  expression: 'ceil((T + F) / l - 10^(-9))',
  variables: { T: top, F: flattening, l: planed },
  basis: 'geometry',
});

const final = formula({
  symbol: 'H',
  result: variable('length', 'thickness of the slab once flattened', { unit: 'mm' }),
  expression: 'n l - F',
  variables: { n: count, l: planed, F: flattening },
  basis: 'geometry',
});

const over = formula({
  symbol: 'e',
  result: variable('length', 'thickness to spare', { unit: 'mm' }),
  expression: 'H - T',
  variables: { H: variable('length', 'thickness of the slab once flattened', { unit: 'mm' }), T: top },
  basis: 'geometry',
});

// Planing the spare off the boards instead of off the slab leaves every layer alike, and the slab the same above and below its middle.
const even = formula({
  symbol: 'b',
  result: variable('length', 'thickness to plane each layer to, so that nothing is to spare', { unit: 'mm' }),
  expression: '(T + F) / n',
  variables: { T: top, F: flattening, n: count },
  basis: 'geometry',
});

/**
 * How many boards to glue face to face for a thick top, how thick the slab comes out, and how thick to plane every
 * board so that the layers are alike and the slab is balanced about its middle. For boards of one rough thickness;
 * for a pile of mixed thickness see the pile's yield first. Lengths in, lengths and a count out.
 * A board that reaches the thickness by itself is not glued and not flattened.
 * Source: geometry.
 * @throws InputError when planing eats the board, or over 1000 layers are needed
 */
export const layerCount = recipe({
  name: 'layerCount',
  title: 'Layers of a thick top',
  topic: 'lamination',
  about:
    'How many boards to glue face to face for a thick top, and how thick to plane each so that the slab is balanced.',
  sources: [],
  inputs: {
    topThickness: field.length({
      symbol: 'T',
      label: 'top thickness',
      help: 'Thickness of the finished top.',
      above: '0 mm',
      max: '2 m',
    }),
    stripThickness: field.length({
      symbol: 's',
      label: 'board thickness',
      help: 'Rough thickness of the thinnest board.',
      above: '0 mm',
      max: '1 m',
    }),
    planePerFace: field.length({
      symbol: 'p',
      label: 'planing per face',
      help: 'Taken off each of the two faces of a board before gluing.',
      min: '0 mm',
      max: '100 mm',
      default: '1 mm',
    }),
    flattenPerGlueUp: field.length({
      symbol: 'f',
      label: 'flattening',
      help: 'Taken off the slab after a glue-up, both faces together.',
      min: '0 mm',
      max: '200 mm',
      default: '2 mm',
    }),
    glueUps: field.count({
      symbol: 'u',
      label: 'glue-ups',
      help: 'Glue-ups one after another, each followed by a flattening; 1 when all layers are glued at once.',
      min: 1,
      max: 999,
      default: 1,
    }),
  },
  outputs: {
    layers: out.count({ symbol: 'n', label: 'layers' }),
    finalThickness: out.length({
      symbol: 'H',
      label: 'flattened thickness',
      help: 'Thickness of the slab once flattened, before the spare is planed off.',
    }),
    spare: out.length({
      symbol: 'e',
      label: 'spare thickness',
      help: 'Thickness to spare over the finished top.',
    }),
    layerPlaned: out.length({
      symbol: 'l',
      label: 'layer, least planed',
      help: 'Thickness of a layer planed as little as possible.',
    }),
    layerBalanced: out.length({
      symbol: 'b',
      label: 'layer, all alike',
      help: 'Thickness to plane every layer to, so that all are alike and nothing is to spare.',
    }),
    middle: out.text({ label: 'middle of the slab', help: 'Whether a layer or a glue line lies there.' }),
  },
  formulas: [layer, flattened, layers, final, over, even],
  solve: (given, trace) => {
    if (2 * given.planePerFace >= given.stripThickness) {
      throw new InputError({
        field: 'planePerFace',
        message: `got ${mm(given.planePerFace)} from each face, takes less than half of the board's ${mm(given.stripThickness)}`,
      });
    }
    const l = trace.evaluate(layer, { s: given.stripThickness, p: given.planePerFace });
    // One board is enough: nothing is glued, so nothing is flattened.
    const single = l >= given.topThickness - 1e-12;
    if (single)
      trace.note(
        'One planed board reaches the thickness: nothing is glued, so nothing is taken for flattening.',
      );
    const F = single ? 0 : trace.evaluate(flattened, { u: given.glueUps, f: given.flattenPerGlueUp });
    const n = trace.evaluate(layers, { T: given.topThickness, F, l });
    if (n > 1000)
      throw new InputError({
        field: 'stripThickness',
        message: `got ${mm(given.stripThickness)}, which needs ${n} layers; takes a thickness that needs 1000 or fewer`,
      });
    if (!single && given.glueUps > n - 1) {
      throw new InputError({
        field: 'glueUps',
        message: `got ${given.glueUps}, takes at most ${n - 1} for ${n} layers: each glue-up adds a layer or more`,
      });
    }
    const H = trace.evaluate(final, { n, l, F });
    const e = trace.evaluate(over, { H, T: given.topThickness });
    const b = trace.evaluate(even, { T: given.topThickness, F, n });
    const middle =
      n === 1
        ? 'the board itself'
        : n % 2 === 1
          ? `layer ${(n + 1) / 2} of ${n}`
          : `the glue line between layers ${n / 2} and ${n / 2 + 1}`;
    return { layers: n, finalThickness: H, spare: e, layerPlaned: l, layerBalanced: b, middle };
  },
  cautions: (given, answer) => [
    metalFirst,
    thicknesserLeast,
    ...(answer.layers > 1
      ? [
          freshSurfaces,
          note(
            'keep the slab the same above and below its middle: layers of one thickness, of one timber or mirrored pairs, and the same taken off both faces; a slab that is not balanced bows when the air changes',
          ),
        ]
      : []),
    ...(answer.spare > 0.5 * answer.layerPlaned
      ? [
          note(
            `${mm(answer.spare)} would go to shavings: plane each layer to ${mm(answer.layerBalanced)}, or see whether ${answer.layers - 1} thicker boards are to be had`,
          ),
        ]
      : []),
  ],
  chart: (given, answer) => layerDrawing(given.topThickness, answer),
  sentence: 'Glue {layers} layers: {finalThickness} thick, with {spare} to spare.',
  example: {
    topThickness: '54 mm',
    stripThickness: '22 mm',
    planePerFace: '1.5 mm',
    flattenPerGlueUp: '2 mm',
  },
});
