import { lineChart } from '../../charts/line-chart.js';
import { dataCaution, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable, type Variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { priceField } from './stock-price.js';

const pieces = variable('count', 'pieces');
const long = variable('length', 'length of a piece');
const width = variable('length', 'width');
const thick = variable('length', 'thickness');
const solid = variable('volume', 'volume of all pieces');

const lineal = formula({
  symbol: 'L',
  result: variable('length', 'length of all pieces end to end'),
  expression: 'n l',
  variables: { n: pieces, l: long },
  basis: 'definition',
});

const volume = formula({
  symbol: 'V',
  result: solid,
  expression: 'n l w t',
  variables: { n: pieces, l: long, w: width, t: thick },
  basis: 'geometry',
});

// The board foot is 1 ft x 12 in x 1 in: thickness and width enter in inches, length in feet, as the tally stick has it.
const board = formula({
  symbol: 'F',
  result: variable('boardFeet', 'board feet of all pieces', { unit: 'bf' }),
  expression: 'n t w l / 12',
  empirical: true,
  variables: {
    n: pieces,
    t: variable('length', 'thickness', { unit: 'in' }),
    w: variable('length', 'width', { unit: 'in' }),
    l: variable('length', 'length of a piece', { unit: 'ft' }),
  },
  source: cite('noyes-1910', 'ch. IV'),
  basis: 'definition',
});

const superficial = formula({
  symbol: 'S',
  result: variable('superFeet', 'super feet of all pieces', { unit: 'super ft' }),
  expression: '12 V',
  empirical: true,
  variables: { V: variable('volume', 'volume of all pieces', { unit: 'ft3' }) },
  source: cite('super-foot', 'the same volume as a board foot'),
  basis: 'definition',
});

const surface = formula({
  symbol: 'A',
  result: variable('area', 'face area of all pieces'),
  expression: 'n l w',
  variables: { n: pieces, l: long, w: width },
  basis: 'geometry',
});

const total = variable('money', 'price of all pieces');
const part = (symbol: string, gives: Variable, x: Variable) =>
  formula({ symbol, result: gives, expression: 'P / x', variables: { P: total, x }, basis: 'definition' });
const byFoot = part(
  'p_F',
  variable('pricePerVolume', 'price by board foot', { unit: 'money/bf' }),
  variable('boardFeet', 'board feet', { unit: 'bf' }),
);
const byCube = part(
  'p_V',
  variable('pricePerVolume', 'price by cubic metre', { unit: 'money/m3' }),
  variable('volume', 'volume'),
);
const byMetre = part(
  'p_L',
  variable('pricePerLength', 'price by metre', { unit: 'money/m' }),
  variable('length', 'length of all pieces'),
);
const byPiece = part('p_n', variable('money', 'price of a piece'), pieces);

/**
 * Board feet, super feet, cubic metres and running metres of rectangular timber, and one price turned into all the
 * ways a yard may quote it. Sizes in any unit of length. For round logs it does not serve.
 */
export const boardMeasure = recipe({
  name: 'boardMeasure',
  title: 'Board measure and price',
  topic: 'stock',
  about:
    'How much timber a stack of equal boards holds, in board feet, super feet, cubic metres and running metres, and what a price comes to by each. Not for round logs.',
  sources: [cite('tradelink-conversions', 'board foot of 144 in³; 423.776 board feet to the cubic metre')],
  inputs: {
    length: field.length({ symbol: 'l', label: 'length of a piece', above: '0 mm', max: '10 km' }),
    width: field.length({ symbol: 'w', label: 'width of a piece', above: '0 mm', max: '5 m' }),
    thickness: field.length({ symbol: 't', label: 'thickness of a piece', above: '0 mm', max: '2 m' }),
    count: field.count({ symbol: 'n', label: 'pieces of this size', min: 1, max: 1_000_000, default: 1 }),
    price: priceField({
      label: 'price',
      help: 'As quoted, by board foot, cubic metre, square metre, metre or piece.',
      optional: true,
    }),
  },
  outputs: {
    boardFeet: out.boardFeet({ label: 'board feet', help: 'Board feet of all pieces.' }),
    superFeet: out.superFeet({ label: 'super feet', help: 'Super feet of all pieces.' }),
    volume: out.volume({ label: 'volume of all pieces' }),
    linealLength: out.length({ label: 'total length', help: 'Length of all pieces end to end.' }),
    surface: out.area({ label: 'face area', help: 'Face area of all pieces.' }),
    price: out.money({ label: 'price of all pieces', optional: true }),
    pricePerBoardFoot: out.quantity('pricePerVolume', {
      label: 'price by board foot',
      unit: 'money/bf',
      optional: true,
    }),
    pricePerCubicMetre: out.quantity('pricePerVolume', {
      label: 'price by cubic metre',
      unit: 'money/m3',
      optional: true,
    }),
    pricePerMetre: out.quantity('pricePerLength', {
      label: 'price by running metre',
      unit: 'money/m',
      optional: true,
    }),
    pricePerPiece: out.money({ label: 'price of a piece', optional: true }),
  },
  formulas: [board, volume, superficial, lineal, surface, byFoot, byCube, byMetre, byPiece],
  solve: (given, trace) => {
    const { count: n, length: l, width: w, thickness: t, price } = given;
    const F = trace.evaluate(board, { n, t, w, l });
    const V = trace.evaluate(volume, { n, l, w, t });
    const S = trace.evaluate(superficial, { V });
    const L = trace.evaluate(lineal, { n, l });
    const A = trace.evaluate(surface, { n, l, w });
    const measures = { boardFeet: F, superFeet: S, volume: V, linealLength: L, surface: A };
    if (!price) return measures;
    const P = price.amount * { piece: n, length: L, area: A, volume: V }[price.by];
    trace.note(
      `The price of all pieces is the quoted price times ${{ piece: 'the pieces', length: 'their length', area: 'their face area', volume: 'their volume' }[price.by]}.`,
    );
    return {
      ...measures,
      price: P,
      pricePerBoardFoot: trace.evaluate(byFoot, { P, x: F }),
      pricePerCubicMetre: trace.evaluate(byCube, { P, x: V }),
      pricePerMetre: trace.evaluate(byMetre, { P, x: L }),
      pricePerPiece: trace.evaluate(byPiece, { P, x: n }),
    };
  },
  cautions: (given) => [
    ...(given.thickness < 0.0254 - 1e-9
      ? [
          dataCaution(
            'boards thinner than 1 in are often sold as if they were 1 in thick (custom of the trade); this calculates the size given: ask how the yard tallies',
          ),
        ]
      : []),
    note(
      'softwood is often sold by its nominal size before drying and planing; give the size that the yard charges for, not the size you measure, when you compare prices',
    ),
  ],
  chart: (given, answer) => {
    const longest = given.length * 2;
    const lengths = [0, longest];
    const widths = [0.5, 1, 1.5].map((k) => k * given.width);
    const feet = (w: number, l: number): number =>
      board.evaluate({ n: given.count, t: given.thickness, w, l }) / 0.002359737216;
    return lineChart({
      title: `Board feet of ${given.count === 1 ? 'a piece' : `${given.count} pieces`} ${Number((given.thickness * 1000).toFixed(1))} mm thick`,
      x: { title: 'Length of a piece', unit: 'm', values: lengths },
      y: { title: 'Board measure', unit: 'bf', zero: true },
      series: widths.map((w) => ({
        name: `${Number((w * 1000).toFixed(0))} mm wide`,
        values: lengths.map((l) => feet(w, l)),
      })),
      points: false,
      marks: [{ x: given.length, y: answer.boardFeet / 0.002359737216, label: 'these' }],
    });
  },
  sentence: (_given, out) => `That is {boardFeet}${out.price === undefined ? '' : ', for {price}'}.`,
  example: { length: '8 ft', width: '6 in', thickness: '2 in', count: 12, price: '$4.50/bf' },
});
