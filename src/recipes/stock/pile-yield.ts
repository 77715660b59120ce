import { lineChart } from '../../charts/lineChart.js';
import { Refusal } from '../../quantities/refusal.js';
import { danger, dataCaution, estimate, note, type Caution } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { curveLeft } from './flattening-loss.js';
import { dress, layersAt, surveyField, type Dressed, type Dressing } from './survey.js';

const dressedLetter = letter('volume', 'dressed volume');

const dressedVolume = formula({
  symbol: 'V',
  gives: dressedLetter,
  text: 'A T',
  where: { A: letter('area', 'face area of the dressed pieces'), T: letter('length', 'common thickness') },
  basis: 'geometry',
});

const yieldShare = formula({
  symbol: 'y',
  gives: letter('share', 'yield'),
  text: 'V / V_0',
  where: { V: dressedLetter, V_0: letter('volume', 'volume of the pile as found') },
  basis: 'definition',
});

/** What the dressed rows give at one common thickness. Base units. */
function totalsAt(rows: readonly Dressed[], thickness: number, how: Dressing) {
  const sum = { boards: 0, pieces: 0, length: 0, area: 0, volume: 0 };
  for (const d of rows) {
    const pieces = d.row.count * d.along * d.across * layersAt(d, thickness, how);
    if (pieces === 0) continue;
    sum.boards += d.row.count;
    sum.pieces += pieces;
    sum.length += pieces * d.pieceLength;
    sum.area += pieces * d.pieceLength * d.pieceWidth;
  }
  sum.volume = sum.area * thickness;
  return sum;
}

/** Thicknesses at which boards drop out: between them the yield only rises, so one of them is the peak. Thinnest first. */
function steps(rows: readonly Dressed[], how: Dressing): number[] {
  const all = new Set<number>();
  for (const d of rows) {
    for (let layers = 1; layers <= (how.resaw ? 40 : 1); layers++) {
      const t = layers === 1 ? d.thickness : (d.flat + how.kerf) / layers - how.kerf - 2 * how.plane;
      if (t < 1e-3) break;
      // Rounded down to a ten-thousandth of a millimetre, so that equal boards are one step and none drops out of its own.
      all.add(Math.floor(t * 1e7 + 1e-4) / 1e7);
    }
  }
  // A planer is set to a tenth of a millimetre: a long survey is read at that fineness.
  const list =
    all.size > 400 ? [...new Set([...all].map((t) => Math.floor(t * 1e4 + 1e-6) / 1e4))] : [...all];
  return list.filter((t) => t > 0).sort((a, b) => a - b);
}

const roughOf = (rows: readonly Dressed[]): number =>
  rows.reduce((s, { row: r }) => s + r.count * r.length * r.width * r.thickness, 0);
const settings = (given: {
  plane: number;
  jointing: number;
  kerf: number;
  resaw: boolean;
  target?: number | { width?: number; length?: number } | undefined;
}): Dressing => ({
  plane: given.plane,
  jointing: given.jointing,
  kerf: given.kerf,
  resaw: given.resaw,
  ...(typeof given.target === 'object' ? { width: given.target.width, length: given.target.length } : {}),
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
    plane: field.length({
      says: 'planed off each face once it is flat',
      min: '0 mm',
      max: '20 mm',
      default: '1 mm',
    }),
    kerf: field.length({ says: 'saw kerf', min: '0 mm', max: '20 mm', default: '3 mm' }),
    jointing: field.length({
      says: 'taken off each strip in jointing, both edges together',
      min: '0 mm',
      max: '50 mm',
      default: '3 mm',
    }),
    target: field.either(
      [
        field.length({ says: 'common thickness wanted', above: '0 mm', max: '500 mm' }),
        field.group(
          {
            thickness: field.length({
              says: 'common thickness wanted',
              above: '0 mm',
              max: '500 mm',
              optional: true,
            }),
            width: field.length({
              says: 'finished width of a strip',
              above: '0 mm',
              max: '3 m',
              optional: true,
            }),
            length: field.length({ says: 'length of a piece', above: '0 mm', max: '30 m', optional: true }),
          },
          { says: 'section and length wanted' },
        ),
      ],
      { says: 'finished thickness wanted, or thickness, strip width and piece length', optional: true },
    ),
    resaw: field.flag({ says: 'whether thick boards are resawn into layers', default: false }),
  },
  outputs: {
    commonThickness: out.length({ says: 'common thickness' }),
    yield: out.share({ says: 'dressed volume as a share of the pile' }),
    pieces: out.count({ says: 'dressed pieces' }),
    usableLength: out.length({ says: 'length of the dressed pieces', unit: 'm' }),
    area: out.area({ says: 'face area of the dressed pieces' }),
    volume: out.volume({ says: 'dressed volume' }),
    roughVolume: out.volume({ says: 'volume of the pile as found' }),
    boardsLeftOut: out.count({ says: 'boards that give nothing at this thickness' }),
    peakThickness: out.length({ says: 'thickness at which the yield peaks' }),
    peakYield: out.share({ says: 'yield at that thickness' }),
    byGroup: out.table(
      {
        group: out.text({ says: 'group' }),
        boards: out.count({ says: 'boards surveyed' }),
        thinnest: out.length({ says: 'thinnest once dressed', optional: true }),
        pieces: out.count({ says: 'dressed pieces' }),
        usableLength: out.length({ says: 'length of the pieces', unit: 'm' }),
        area: out.area({ says: 'face area' }),
        volume: out.volume({ says: 'dressed volume' }),
        yield: out.share({ says: 'yield' }),
      },
      { says: 'By group, at the common thickness' },
    ),
    byThickness: out.table(
      {
        thickness: out.length({ says: 'common thickness' }),
        boards: out.count({ says: 'boards that give pieces' }),
        volume: out.volume({ says: 'dressed volume' }),
        yield: out.share({ says: 'yield' }),
      },
      { says: 'Thicknesses at which boards begin to drop out' },
    ),
  },
  formulas: [curveLeft, dressedVolume, yieldShare],
  solve: (given, work) => {
    const how = settings(given);
    const rows = given.boards.map((r) => dress(r, how));
    const useful = rows.filter((d) => d.along * d.across > 0 && d.thickness > 1e-3);
    if (useful.length === 0)
      throw new Refusal({
        field: 'boards',
        says: 'got no board that leaves a piece more than 1 mm thick; takes at least one: check the columns’ units, or ask for smaller pieces',
      });
    const rough = roughOf(rows);
    const thinnest = useful.reduce((a, b) => (b.thickness < a.thickness ? b : a));
    const wanted = typeof given.target === 'number' ? given.target : given.target?.thickness;
    const T = wanted ?? thinnest.thickness;
    const label = (d: Dressed): string => d.row.name ?? `row ${rows.indexOf(d) + 1}`;
    if (!work.silent) {
      work.say(
        `${rows.length} rows, ${rows.reduce((s, d) => s + d.row.count, 0)} boards. From each: ends and faults docked, then cup and bow planed out of the pieces, then ${Number((given.plane * 1000).toFixed(2))} mm off each face.`,
      );
      work.say(
        wanted === undefined
          ? `The thinnest board, ${label(thinnest)}, governs the common thickness.`
          : 'The common thickness was asked for; thinner boards are left out.',
      );
    }
    const sum = totalsAt(rows, T, how);
    if (sum.boards === 0)
      throw new Refusal({
        field: 'target',
        says: `got ${(T * 1000).toFixed(1)} mm, takes at most ${(Math.max(...useful.map((d) => d.thickness)) * 1000).toFixed(1)} mm, the thickest that a board leaves`,
      });
    const V = work.apply(dressedVolume, { A: sum.area, T });
    const y = work.apply(yieldShare, { V, V_0: rough });
    const curve = steps(useful, how).map((t) => ({ t, ...totalsAt(rows, t, how) }));
    const peak = curve.reduce((a, b) => (b.volume > a.volume * (1 + 1e-12) ? b : a));
    work.say(
      `Tried every thickness at which a board drops out (${curve.length}); between two of them the yield only rises with thickness, so the peak is one of them.`,
    );
    const groups = [...new Set(rows.map((d) => d.row.group))];
    const total = rows.reduce((s, d) => s + d.row.count, 0);
    const shown =
      curve.length <= 24
        ? curve
        : curve.filter((c, i) => c === peak || i % Math.ceil(curve.length / 24) === 0);
    return {
      commonThickness: T,
      yield: y,
      pieces: sum.pieces,
      usableLength: sum.length,
      area: sum.area,
      volume: V,
      roughVolume: rough,
      boardsLeftOut: total - sum.boards,
      peakThickness: peak.t,
      peakYield: peak.volume / rough,
      byGroup: groups.map((group) => {
        const mine = rows.filter((d) => d.row.group === group);
        const s = totalsAt(mine, T, how);
        const left = mine.filter((d) => useful.includes(d)).map((d) => d.thickness);
        return {
          group,
          boards: mine.reduce((n, d) => n + d.row.count, 0),
          ...(left.length > 0 ? { thinnest: left.reduce((a, b) => Math.min(a, b)) } : {}),
          pieces: s.pieces,
          usableLength: s.length,
          area: s.area,
          volume: s.volume,
          yield: s.volume / roughOf(mine),
        };
      }),
      byThickness: shown.map((c) => ({
        thickness: c.t,
        boards: c.boards,
        volume: c.volume,
        yield: c.volume / rough,
      })),
    };
  },
  cautions: (given, answer) =>
    salvage(
      given.boards.map((r) => dress(r, settings(given))),
      answer,
      typeof given.target === 'object' ? given.target.length : undefined,
    ),
  chart: (given, answer) => {
    const how = settings(given);
    const rows = given.boards.map((r) => dress(r, how));
    const at = steps(
      rows.filter((d) => d.along * d.across > 0),
      how,
    );
    // Each step is a cliff: just above it the board is gone.
    const xs = [0, ...at.flatMap((t) => [t, t + 2e-6])].slice(0, -1);
    return lineChart({
      title: 'Yield against common thickness',
      subtitle: 'It rises with thickness and falls where a board becomes too thin to join in.',
      x: { title: 'Common thickness', unit: 'mm', values: xs.map((t) => t * 1000) },
      y: { title: 'Yield', unit: '%', zero: true },
      series: [
        { name: 'yield', values: xs.map((t) => (100 * totalsAt(rows, t, how).volume) / answer.roughVolume) },
      ],
      interpolate: 'linear',
      points: false,
      marks: [
        {
          x: answer.peakThickness * 1000,
          y: answer.peakYield * 100,
          label: `peak, ${Number((answer.peakThickness * 1000).toFixed(1))} mm`,
        },
        ...(Math.abs(answer.peakThickness - answer.commonThickness) > 1e-6
          ? [
              {
                x: answer.commonThickness * 1000,
                y: answer.yield * 100,
                label: `reckoned, ${Number((answer.commonThickness * 1000).toFixed(1))} mm`,
              },
            ]
          : []),
      ],
    });
  },
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

function salvage(
  rows: readonly Dressed[],
  answer: { readonly commonThickness: number; readonly boardsLeftOut: number },
  length: number | undefined,
): Caution[] {
  const lost = rows.flatMap((d, i) =>
    d.thickness <= 1e-3 || d.along * d.across === 0 ? [d.row.name ?? `row ${i + 1}`] : [],
  );
  const shortest = length ?? rows.reduce((s, d) => (d.along > 0 ? Math.min(s, d.pieceLength) : s), Infinity);
  return [
    danger(
      'go over every salvaged board with a metal detector, from both faces, and pull nails, staples and screws before it meets a blade; then wear eye protection all the same',
    ),
    danger(
      'leave out timber with treatment marks, green or oily stain, or old paint that may hold lead: neither its dust nor its shavings belong in a workshop, and it must not touch food',
    ),
    ...(shortest < 0.3
      ? [
          danger(
            'some pieces are shorter than about 300 mm (common practice; the machine maker’s own limit rules): plane them before crosscutting, never singly',
          ),
        ]
      : []),
    ...(answer.commonThickness < 0.006
      ? [
          danger(
            'under about 6 mm boards may shatter in a thicknesser: keep to the machine maker’s least thickness, or use a carrier board',
          ),
        ]
      : []),
    ...(lost.length > 0
      ? [
          dataCaution(
            `these give nothing: ${lost.slice(0, 20).join(', ')}${lost.length > 20 ? ` and ${lost.length - 20} more` : ''}`,
          ),
        ]
      : []),
    ...(rows.some((d) => d.along > 1)
      ? [
          estimate(
            'a survey does not say where faults lie: the clear stretches of a board are taken as equal',
          ),
        ]
      : []),
    note(
      'cup and bow add up in the loss; a board ripped into strips keeps less of its cup than one planed whole',
    ),
  ];
}
