import { barChart } from '../../charts/bar-chart.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { markAdvice, markNames } from './pallet-marks.js';
import { boardsOf, nailLines, type PalletBoard } from './pallet-survey.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const count = (label: string) => variable('count', label);

const pulledLength = formula({
  symbol: 'l_p',
  result: mm('length of a board with its nails pulled'),
  expression: 'L - 2 s',
  variables: { L: mm('length of the board'), s: mm('split end lost') },
  basis: 'geometry',
});
const sawnLength = formula({
  symbol: 'l_s',
  result: mm('clear length sawn between two bearers'),
  expression: '(L - n b) / (n - 1) - 2 k',
  variables: {
    L: mm('length of the board'),
    n: count('bearers'),
    b: mm('width of a bearer'),
    k: mm('lost at each cut'),
  },
  basis: 'geometry',
});
// A billionth comes off before rounding up, so that an exact fit is not one pallet too many.
const palletsFor = formula({
  symbol: 'P',
  result: count('pallets for the area needed'),
  expression: 'ceil(A / a - 10^(-9))',
  variables: {
    A: variable('area', 'area needed', { unit: 'm2' }),
    a: variable('area', 'area that a pallet gives', { unit: 'm2' }),
  },
  basis: 'definition',
});

/** Kinds of pallet whose boards are printed with their thickness, or take one. */
const kinds = ['48 x 40 pallet', 'FIN pallet'] as const;

/**
 * The boards a kind of pallet gives, two ways: nails pulled, with split ends lost and a share that breaks, or sawn between
 * the bearers, in short clear lengths; pieces, length, area and weight, and the pallets for a need. Sizes are as published
 * for the kind. Source: published drawings of pallets, and the treatment marks of ISPM 15.
 * @throws InputError where the bearers or split ends leave no board, or a kind without a printed thickness gets none
 */
export const palletBoards = recipe({
  name: 'palletBoards',
  title: 'Boards of a pallet',
  topic: 'stock',
  about:
    'What a kind of pallet gives: boards with their nails pulled or sawn between the bearers, clear lengths, area and weight, pallets for a need, and what its treatment mark allows.',
  sources: [],
  inputs: {
    kind: field.choice(kinds, { label: 'kind of pallet' }),
    mark: field.choice(markNames, { label: 'treatment mark', help: 'Treatment mark stamped on the pallet.' }),
    thickness: field.length({
      label: 'thickness',
      help: 'Thickness of the boards, in place of the published one.',
      above: '0 mm',
      max: '60 mm',
      optional: true,
    }),
    bearers: field.count({ symbol: 'n', label: 'bearers under a board', min: 2, max: 5, default: 3 }),
    bearerWidth: field.length({
      symbol: 'b',
      label: 'width of a bearer',
      above: '0 mm',
      max: '200 mm',
      default: '38 mm',
    }),
    splitEnd: field.length({
      symbol: 's',
      label: 'split end',
      help: 'Length of split end lost where nails are pulled.',
      min: '0 mm',
      max: '300 mm',
      default: '40 mm',
    }),
    broken: field.share({
      label: 'boards broken',
      help: 'Share of boards that break where nails are pulled.',
      min: '0 %',
      max: '95 %',
      default: '20 %',
    }),
    cutLoss: field.length({
      symbol: 'k',
      label: 'loss per cut',
      help: 'Length lost at each cut beside a bearer.',
      min: '0 mm',
      max: '50 mm',
      default: '5 mm',
    }),
    density: field.density({
      label: 'density of the boards',
      above: '0 kg/m3',
      max: '1500 kg/m3',
      default: '450 kg/m3',
    }),
    need: field.area({
      symbol: 'A',
      label: 'area of boards needed',
      above: '0 m2',
      max: '1000 m2',
      optional: true,
    }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    allowed: out.text({ label: 'what the mark allows' }),
    boards: out.count({ label: 'boards of a pallet' }),
    pulledLength: out.length({ label: 'clear length, nails pulled' }),
    pulledArea: out.area({ label: 'area, pulled', help: 'Board area of one pallet where nails are pulled.' }),
    sawnLength: out.length({ label: 'length, sawn', help: 'Clear length of a board sawn between bearers.' }),
    sawnArea: out.area({ label: 'area, sawn', help: 'Board area of one pallet sawn between bearers.' }),
    mass: out.mass({ label: 'mass of boards', help: 'Mass of the boards of one pallet.' }),
    pallets: out.count({
      label: 'pallets, pulled',
      help: 'Pallets needed where nails are pulled.',
      optional: true,
    }),
    palletsSawn: out.count({
      label: 'pallets, sawn',
      help: 'Pallets needed where boards are sawn between bearers.',
      optional: true,
    }),
    survey: out.table(
      {
        board: out.text({ label: 'board' }),
        count: out.count({ label: 'boards' }),
        length: out.length({ label: 'length' }),
        width: out.length({ label: 'width' }),
        thickness: out.length({ label: 'thickness' }),
        nails: out.text({ label: 'nail lines', help: 'Distances from one end.' }),
      },
      { label: 'Survey', help: 'The boards as rows of a survey.' },
    ),
  },
  formulas: [pulledLength, sawnLength, palletsFor],
  solve: (given, trace) => {
    const advice = markAdvice(given.mark);
    if (advice.citation) trace.source(advice.citation);
    const boards = boardsOf(given, trace);
    const [first] = boards as [PalletBoard];
    const l_p = trace.evaluate(pulledLength, { L: first.length, s: given.splitEnd });
    const l_s = trace.evaluate(sawnLength, {
      L: first.length,
      n: given.bearers,
      b: given.bearerWidth,
      k: given.cutLoss,
    });
    for (const [length, name] of [
      [l_p, 'splitEnd'],
      [l_s, 'bearerWidth'],
    ] as const)
      // prettier-ignore
      if (length <= 0)
        throw new InputError({ field: name, message: `leaves no clear length of a board of ${(first.length * 1000).toFixed(0)} mm; takes less` });
    const width = boards.reduce((sum, b) => sum + b.count * b.width, 0);
    const pulledArea = l_p * width * (1 - given.broken);
    const sawnArea = l_s * width * (given.bearers - 1);
    const mass =
      boards.reduce((sum, b) => sum + b.count * b.length * b.width * b.thickness, 0) * given.density;
    const need = given.need;
    const pallets = need === undefined ? undefined : trace.evaluate(palletsFor, { A: need, a: pulledArea });
    const palletsSawn =
      need === undefined
        ? undefined
        : trace.evaluate(palletsFor, { A: need, a: sawnArea }, 'pallets for the need, sawn');
    const m2 = (a: number): string => `${a.toFixed(2)} m²`;
    return {
      sentence: advice.usable
        ? `A pallet gives ${m2(pulledArea)} in lengths of ${(l_p * 1000).toFixed(0)} mm with its nails pulled, or ${m2(sawnArea)} in lengths of ${(l_s * 1000).toFixed(0)} mm sawn${pallets === undefined || palletsSawn === undefined ? '' : `: take ${pallets}, or ${palletsSawn} sawn`}.`
        : advice.words,
      allowed: advice.words,
      boards: boards.reduce((sum, b) => sum + b.count, 0),
      pulledLength: l_p,
      pulledArea,
      sawnLength: l_s,
      sawnArea,
      mass,
      pallets,
      palletsSawn,
      survey: boards.map(({ name, ...b }) => ({ board: name, ...b, nails: nailLines(given, b.length) })),
    };
  },
  cautions: (given) => [
    ...(markAdvice(given.mark).usable ? [] : [danger(markAdvice(given.mark).words)]),
    danger(
      'wear goggles and gloves, lever at the bearers, and find every nail with a magnet before a saw or planer does: boards spring when a nail lets go',
    ),
    note(
      'count two or three pallets first and give what they yield to pileSampling: pallets of one kind differ',
    ),
    note('sawing beside the bearers is the faster way and leaves no nails in the boards, but no long ones'),
  ],
  chart: (_, answer) =>
    barChart({
      title: 'Area of boards from a pallet',
      subtitle: answer.sentence,
      of: '',
      value: { title: 'Area', unit: 'm²', zero: true },
      bars: [
        {
          name: 'nails pulled',
          value: answer.pulledArea,
          label: `lengths of ${(answer.pulledLength * 1000).toFixed(0)} mm`,
        },
        {
          name: 'sawn between bearers',
          value: answer.sawnArea,
          label: `lengths of ${(answer.sawnLength * 1000).toFixed(0)} mm`,
        },
      ],
    }),
  example: { kind: '48 x 40 pallet', mark: 'HT', need: '3 m2' },
});
