import { InputError } from '../../units/input-error.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { curveLeft } from './flattening-loss.js';
import { dressingFields, dressingOf } from './dressing-fields.js';
import { byGroup, roughOf, steps, totalsAt } from './pile-totals.js';
import { salvage } from './salvage-cautions.js';
import { dress, gives, nameOf, surveyField } from './survey.js';
import { yieldChart } from './yield-chart.js';

const dressed = variable('volume', 'dressed volume');

const dressedVolume = formula({
  symbol: 'V',
  result: dressed,
  expression: 'A T',
  variables: {
    A: variable('area', 'face area of the dressed pieces'),
    T: variable('length', 'common thickness'),
  },
  basis: 'geometry',
});

const yieldShare = formula({
  symbol: 'y',
  result: variable('share', 'yield'),
  expression: 'V / V_0',
  variables: { V: dressed, V_0: variable('volume', 'volume of the pile as found') },
  basis: 'definition',
});

/**
 * What a surveyed pile of salvaged boards gives as dressed stock of one thickness. Ends and faults are docked, cup and
 * bow planed out, and the thinnest board governs unless a thickness is asked for; the chart shows whether leaving thin
 * boards out would pay. A survey does not say where faults lie: for the cuts themselves take the cutting plan.
 */
export const pileYield = recipe({
  name: 'pileYield',
  title: 'What the pile yields',
  topic: 'stock',
  about:
    'What a surveyed pile of salvaged boards gives as dressed stock of one thickness: length, area, volume, pieces and yield, and the thickness at which the yield peaks. For where to cut, use the cutting plan.',
  sources: [],
  inputs: {
    boards: surveyField,
    ...dressingFields,
  },
  outputs: {
    commonThickness: out.length({ label: 'common thickness' }),
    yield: out.share({ label: 'yield', help: 'Dressed volume as a share of the pile.' }),
    pieces: out.count({ label: 'dressed pieces' }),
    usableLength: out.length({ label: 'usable length', help: 'Length of the dressed pieces.', unit: 'm' }),
    area: out.area({ label: 'area', help: 'Face area of the dressed pieces.' }),
    volume: out.volume({ label: 'dressed volume' }),
    roughVolume: out.volume({ label: 'rough volume', help: 'Volume of the pile as found.' }),
    boardsLeftOut: out.count({
      label: 'boards left out',
      help: 'Boards that give nothing at this thickness.',
    }),
    peakThickness: out.length({ label: 'best thickness', help: 'Thickness at which the yield is greatest.' }),
    peakYield: out.share({ label: 'yield at that thickness' }),
    byGroup: out.table(
      {
        group: out.text({ label: 'group' }),
        boards: out.count({ label: 'boards surveyed' }),
        thinnest: out.length({ label: 'thinnest once dressed', optional: true }),
        pieces: out.count({ label: 'dressed pieces' }),
        usableLength: out.length({ label: 'length of the pieces', unit: 'm' }),
        area: out.area({ label: 'face area' }),
        volume: out.volume({ label: 'dressed volume' }),
        yield: out.share({ label: 'yield' }),
      },
      { label: 'By group', help: 'At the common thickness.' },
    ),
    byThickness: out.table(
      {
        thickness: out.length({ label: 'common thickness' }),
        boards: out.count({ label: 'boards that give pieces' }),
        volume: out.volume({ label: 'dressed volume' }),
        yield: out.share({ label: 'yield' }),
      },
      { label: 'By thickness', help: 'Thicknesses at which boards begin to drop out.' },
    ),
  },
  formulas: [curveLeft, dressedVolume, yieldShare],
  solve: (given, trace) => {
    const how = dressingOf(given);
    const rows = given.boards.map((r) => dress(r, how));
    const useful = rows.filter(gives);
    if (useful.length === 0)
      throw new InputError({
        field: 'boards',
        message:
          'got no board that leaves a piece more than 1 mm thick; takes at least one: check the columns’ units, or ask for smaller pieces',
      });
    const rough = roughOf(rows);
    const total = rows.reduce((s, d) => s + d.row.count, 0);
    const thinnest = useful.reduce((a, b) => (b.thickness < a.thickness ? b : a));
    const wanted = typeof given.target === 'number' ? given.target : given.target?.thickness;
    const T = wanted ?? thinnest.thickness;
    if (!trace.silent) {
      trace.note(
        `${rows.length} rows, ${total} boards. From each: ends and faults docked, then cup and bow planed out of the pieces, then ${Number((given.plane * 1000).toFixed(2))} mm off each face.`,
      );
      trace.note(
        wanted === undefined
          ? `The thinnest board, ${nameOf(thinnest, rows.indexOf(thinnest))}, governs the common thickness.`
          : 'The common thickness is as asked; thinner boards are left out.',
      );
    }
    const sum = totalsAt(rows, T, how);
    if (sum.boards === 0)
      throw new InputError({
        field: 'target',
        message: `got ${(T * 1000).toFixed(1)} mm, takes at most ${(useful.reduce((most, d) => Math.max(most, d.thickness), 0) * 1000).toFixed(1)} mm, the thickest that a board leaves`,
      });
    const V = trace.evaluate(dressedVolume, { A: sum.area, T });
    const curve = steps(useful, how).map((t) => ({ t, ...totalsAt(rows, t, how) }));
    const peak = curve.reduce((a, b) => (b.volume > a.volume * (1 + 1e-12) ? b : a));
    trace.note(
      `Tried every thickness at which a board drops out (${curve.length}); between two of them the yield only rises with thickness, so the peak is one of them.`,
    );
    return {
      commonThickness: T,
      yield: trace.evaluate(yieldShare, { V, V_0: rough }),
      pieces: sum.pieces,
      usableLength: sum.length,
      area: sum.area,
      volume: V,
      roughVolume: rough,
      boardsLeftOut: total - sum.boards,
      peakThickness: peak.t,
      peakYield: peak.volume / rough,
      byGroup: byGroup(rows, T, how),
      byThickness: curve
        .filter((c, i) => c === peak || i % Math.ceil(curve.length / 24) === 0)
        .map((c) => ({
          thickness: c.t,
          boards: c.boards,
          volume: c.volume,
          yield: c.volume / rough,
        })),
    };
  },
  cautions: (given, answer) =>
    salvage(
      given.boards.map((r) => dress(r, dressingOf(given))),
      answer.commonThickness,
    ),
  chart: (given, answer) =>
    yieldChart(
      given.boards.map((r) => dress(r, dressingOf(given))),
      dressingOf(given),
      answer,
    ),
  sentence: 'The pile gives {usableLength} planed to {commonThickness}: {yield} of its volume.',
  example: {
    boards: [
      {
        name: 'R1',
        group: 'rafter',
        count: 3,
        length: '2310 mm',
        width: '97 mm',
        thickness: '47 mm',
        endLoss: '110 mm',
        faultLength: '140 mm',
        faults: 2,
        cup: '1 mm',
        bow: '5 mm',
      },
      {
        name: 'R2',
        group: 'rafter',
        count: 4,
        length: '1870 mm',
        width: '98 mm',
        thickness: '47 mm',
        endLoss: '120 mm',
        faultLength: '80 mm',
        cup: '0.5 mm',
        bow: '3 mm',
      },
      {
        name: 'F1',
        group: 'floorboard',
        count: 5,
        length: '1620 mm',
        width: '142 mm',
        thickness: '22 mm',
        endLoss: '65 mm',
        faultLength: '120 mm',
        faults: 2,
        cup: '1.5 mm',
        bow: '2 mm',
      },
      {
        name: 'F2',
        group: 'floorboard',
        count: 1,
        length: '1340 mm',
        width: '138 mm',
        thickness: '19 mm',
        endLoss: '75 mm',
        faultLength: '55 mm',
        cup: '3.5 mm',
        bow: '3 mm',
      },
    ],
    plane: '1 mm',
    kerf: '3 mm',
    target: { width: '42 mm' },
  },
});
