import { lineChart } from '../../charts/lineChart.js';
import { dataCaution, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter, type Letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { priceField } from './price.js';

const pieces = letter('count', 'pieces');
const long = letter('length', 'length of a piece');
const width = letter('length', 'width');
const thick = letter('length', 'thickness');
const solid = letter('volume', 'volume of all pieces');

const lineal = formula({
  symbol: 'L',
  gives: letter('length', 'length of all pieces end to end'),
  text: 'n l',
  where: { n: pieces, l: long },
  basis: 'definition',
});

const volume = formula({
  symbol: 'V',
  gives: solid,
  text: 'n l w t',
  where: { n: pieces, l: long, w: width, t: thick },
  basis: 'geometry',
});

// The board foot is 1 ft x 12 in x 1 in: thickness and width enter in inches, length in feet, as the tally stick has it.
const board = formula({
  symbol: 'F',
  gives: letter('boardFeet', 'board feet of all pieces', { in: 'bf', bare: true }),
  text: 'n t w l / 12',
  where: {
    n: pieces,
    t: letter('length', 'thickness', { in: 'in', bare: true }),
    w: letter('length', 'width', { in: 'in', bare: true }),
    l: letter('length', 'length of a piece', { in: 'ft', bare: true }),
  },
  source: cite('noyes-1910', 'ch. IV'),
  basis: 'definition',
});

const superficial = formula({
  symbol: 'S',
  gives: letter('superFeet', 'super feet of all pieces', { in: 'super ft', bare: true }),
  text: '12 V',
  where: { V: letter('volume', 'volume of all pieces', { in: 'ft3', bare: true }) },
  source: cite('super-foot', 'one twelfth of a cubic foot', { read: 'memory' }),
  basis: 'definition',
});

const surface = formula({
  symbol: 'A',
  gives: letter('area', 'face area of all pieces'),
  text: 'n l w',
  where: { n: pieces, l: long, w: width },
  basis: 'geometry',
});

const total = letter('money', 'price of all pieces');
const part = (symbol: string, gives: Letter, x: Letter) =>
  formula({ symbol, gives, text: 'P / x', where: { P: total, x }, basis: 'definition' });
const byFoot = part(
  'p_F',
  letter('pricePerVolume', 'price by board foot', { in: 'money/bf' }),
  letter('boardFeet', 'board feet', { in: 'bf', bare: true }),
);
const byCube = part(
  'p_V',
  letter('pricePerVolume', 'price by cubic metre', { in: 'money/m3' }),
  letter('volume', 'volume', { bare: true }),
);
const byMetre = part(
  'p_L',
  letter('pricePerLength', 'price by metre', { in: 'money/m' }),
  letter('length', 'length of all pieces', { bare: true }),
);
const byPiece = part('p_n', letter('money', 'price of a piece'), pieces);

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
    length: field.length({ symbol: 'l', says: 'length of a piece', above: '0 mm', max: '10 km' }),
    width: field.length({ symbol: 'w', says: 'width of a piece', above: '0 mm', max: '5 m' }),
    thickness: field.length({ symbol: 't', says: 'thickness of a piece', above: '0 mm', max: '2 m' }),
    count: field.count({ symbol: 'n', says: 'pieces of this size', min: 1, max: 1_000_000, default: 1 }),
    price: priceField({
      says: 'price as quoted, by board foot, cubic metre, square metre, metre or piece',
      optional: true,
    }),
  },
  outputs: {
    boardFeet: out.boardFeet({ says: 'board feet of all pieces' }),
    superFeet: out.superFeet({ says: 'super feet of all pieces' }),
    volume: out.volume({ says: 'volume of all pieces' }),
    linealLength: out.length({ says: 'length of all pieces end to end' }),
    surface: out.area({ says: 'face area of all pieces' }),
    price: out.money({ says: 'price of all pieces', optional: true }),
    pricePerBoardFoot: out.quantity('pricePerVolume', {
      says: 'price by board foot',
      unit: 'money/bf',
      optional: true,
    }),
    pricePerCubicMetre: out.quantity('pricePerVolume', {
      says: 'price by cubic metre',
      unit: 'money/m3',
      optional: true,
    }),
    pricePerMetre: out.quantity('pricePerLength', {
      says: 'price by running metre',
      unit: 'money/m',
      optional: true,
    }),
    pricePerPiece: out.money({ says: 'price of a piece', optional: true }),
  },
  formulas: [board, volume, superficial, lineal, surface, byFoot, byCube, byMetre, byPiece],
  solve: (given, work) => {
    const { count: n, length: l, width: w, thickness: t, price } = given;
    const F = work.apply(board, { n, t, w, l });
    const V = work.apply(volume, { n, l, w, t });
    const S = work.apply(superficial, { V });
    const L = work.apply(lineal, { n, l });
    const A = work.apply(surface, { n, l, w });
    const measures = { boardFeet: F, superFeet: S, volume: V, linealLength: L, surface: A };
    if (!price) return measures;
    const P = price.amount * { piece: n, length: L, area: A, volume: V }[price.by];
    work.say(
      `The price of all pieces is the quoted price times ${{ piece: 'the pieces', length: 'their length', area: 'their face area', volume: 'their volume' }[price.by]}.`,
    );
    return {
      ...measures,
      price: P,
      pricePerBoardFoot: work.apply(byFoot, { P, x: F }),
      pricePerCubicMetre: work.apply(byCube, { P, x: V }),
      pricePerMetre: work.apply(byMetre, { P, x: L }),
      pricePerPiece: work.apply(byPiece, { P, x: n }),
    };
  },
  cautions: (given) => [
    ...(given.thickness < 0.0254 - 1e-9
      ? [
          dataCaution(
            'boards thinner than 1 in are often sold as if they were 1 in thick (custom of the trade); this reckons the size given: ask how the yard tallies',
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
      board.of({ n: given.count, t: given.thickness, w, l }) / 0.002359737216;
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
  example: { length: '8 ft', width: '6 in', thickness: '2 in', count: 12, price: '$4.50/bf' },
});
