import { Refusal } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { layerPicture } from './layer-picture.js';
import { freshSurfaces, metalFirst, mm, thicknesserLeast } from './salvage.js';

const planed = letter('length', 'thickness of a layer once planed', { in: 'mm' });
const count = letter('count', 'layers');
const top = letter('length', 'thickness of the finished top', { in: 'mm' });
const flattening = letter('length', 'taken off the slab by all its flattenings', { in: 'mm' });

const layer = formula({
  symbol: 'l',
  gives: planed,
  text: 's - 2 p',
  where: {
    s: letter('length', 'rough thickness of a board', { in: 'mm' }),
    p: letter('length', 'taken off each face of a board before gluing', { in: 'mm' }),
  },
  basis: 'geometry',
});

const flattened = formula({
  symbol: 'F',
  gives: flattening,
  text: 'u f',
  where: {
    u: letter('count', 'glue-ups one after another'),
    f: letter('length', 'taken off the slab after each glue-up', { in: 'mm' }),
  },
  basis: 'geometry',
});

// A billionth is taken off before rounding up, or 60 / 20 could come out as 4 layers by the last binary digit.
const layers = formula({
  symbol: 'n',
  gives: count,
  text: 'ceil((T + F) / l - 10^(-9))',
  where: { T: top, F: flattening, l: planed },
  basis: 'geometry',
});

const final = formula({
  symbol: 'H',
  gives: letter('length', 'thickness of the slab once flattened', { in: 'mm' }),
  text: 'n l - F',
  where: { n: count, l: planed, F: flattening },
  basis: 'geometry',
});

const over = formula({
  symbol: 'e',
  gives: letter('length', 'thickness to spare', { in: 'mm' }),
  text: 'H - T',
  where: { H: letter('length', 'thickness of the slab once flattened', { in: 'mm' }), T: top },
  basis: 'geometry',
});

// Planing the spare off the boards instead of off the slab leaves every layer alike, and the slab the same above and below its middle.
const even = formula({
  symbol: 'b',
  gives: letter('length', 'thickness to plane each layer to, so that nothing is to spare', { in: 'mm' }),
  text: '(T + F) / n',
  where: { T: top, F: flattening, n: count },
  basis: 'geometry',
});

/**
 * How many boards to glue face to face for a thick top, how thick the slab comes out, and how thick to plane every
 * board so that the layers are alike and the slab is balanced about its middle. For boards of one rough thickness;
 * for a pile of mixed thickness see the pile's yield first. Lengths in, lengths and a count out.
 * A board that reaches the thickness by itself is not glued and not flattened.
 * Source: geometry.
 * @throws Refusal when planing eats the board, or over 1000 layers are needed
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
      says: 'thickness of the finished top',
      above: '0 mm',
      max: '2 m',
    }),
    stripThickness: field.length({
      symbol: 's',
      says: 'rough thickness of a board; give that of the thinnest',
      above: '0 mm',
      max: '1 m',
    }),
    planePerFace: field.length({
      symbol: 'p',
      says: 'taken off each of the two faces of a board before gluing',
      min: '0 mm',
      max: '100 mm',
      default: '1 mm',
    }),
    flattenPerGlueUp: field.length({
      symbol: 'f',
      says: 'taken off the slab’s thickness in flattening it after a glue-up, both faces together',
      min: '0 mm',
      max: '200 mm',
      default: '2 mm',
    }),
    glueUps: field.count({
      symbol: 'u',
      says: 'glue-ups one after another, each followed by a flattening; 1 when all layers are glued at once',
      min: 1,
      max: 999,
      default: 1,
    }),
  },
  outputs: {
    layers: out.count({ symbol: 'n', says: 'layers' }),
    finalThickness: out.length({
      symbol: 'H',
      says: 'thickness of the slab once flattened, before the spare is planed off',
    }),
    spare: out.length({ symbol: 'e', says: 'thickness to spare over the finished top' }),
    layerPlaned: out.length({ symbol: 'l', says: 'thickness of a layer planed as little as possible' }),
    layerBalanced: out.length({
      symbol: 'b',
      says: 'thickness to plane every layer to, so that all are alike and nothing is to spare',
    }),
    middle: out.text({ says: 'what lies at the middle of the slab' }),
  },
  formulas: [layer, flattened, layers, final, over, even],
  solve: (given, work) => {
    if (2 * given.planePerFace >= given.stripThickness) {
      throw new Refusal({
        field: 'planePerFace',
        says: `got ${mm(given.planePerFace)} from each face, takes less than half of the board's ${mm(given.stripThickness)}`,
      });
    }
    const l = work.apply(layer, { s: given.stripThickness, p: given.planePerFace });
    // One board is enough: nothing is glued, so nothing is flattened.
    const single = l >= given.topThickness - 1e-12;
    if (single)
      work.say(
        'One planed board reaches the thickness: nothing is glued, so nothing is taken for flattening.',
      );
    const F = single ? 0 : work.apply(flattened, { u: given.glueUps, f: given.flattenPerGlueUp });
    const n = work.apply(layers, { T: given.topThickness, F, l });
    if (n > 1000)
      throw new Refusal({
        field: 'stripThickness',
        says: `got ${mm(given.stripThickness)}, which needs ${n} layers; takes a thickness that needs 1000 or fewer`,
      });
    if (!single && given.glueUps > n - 1) {
      throw new Refusal({
        field: 'glueUps',
        says: `got ${given.glueUps}, takes at most ${n - 1} for ${n} layers: each glue-up adds a layer or more`,
      });
    }
    const H = work.apply(final, { n, l, F });
    const e = work.apply(over, { H, T: given.topThickness });
    const b = work.apply(even, { T: given.topThickness, F, n });
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
  chart: (given, answer) => layerPicture(given.topThickness, answer),
  example: {
    topThickness: '54 mm',
    stripThickness: '22 mm',
    planePerFace: '1.5 mm',
    flattenPerGlueUp: '2 mm',
  },
});
