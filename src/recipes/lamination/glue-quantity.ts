import { lineChart } from '../../charts/line-chart.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { printedMoisture, printedSpread } from './gluing-data.js';
import { freshSurfaces } from './salvage-caution.js';

const areaLetter = variable('area', 'area to spread', { unit: 'm2' });
const massLetter = variable('mass', 'glue to have at hand', { unit: 'g' });

const area = formula({
  symbol: 'A',
  result: areaLetter,
  expression: 'n c L h',
  variables: {
    n: variable('count', 'joints'),
    c: variable('count', 'faces spread in each joint'),
    L: variable('length', 'length of a joint', { unit: 'm' }),
    h: variable('length', 'height of a joint', { unit: 'm' }),
  },
  basis: 'geometry',
});

const mass = formula({
  symbol: 'm',
  result: massLetter,
  expression: 'A g * (1 + w)',
  variables: {
    A: areaLetter,
    g: variable('applicationRate', 'spread of glue', { unit: 'g/m2' }),
    w: variable('share', 'added for what is squeezed out or left in the pot'),
  },
  basis: 'definition',
});

const volume = formula({
  symbol: 'V',
  result: variable('liquid', 'volume of glue', { unit: 'mL' }),
  expression: 'm / rho',
  variables: { m: massLetter, rho: variable('density', 'density of the glue', { unit: 'g/mL' }) },
  basis: 'definition',
});

/**
 * How much glue a glue-up takes: mass and volume from the joints' area and the spread. For flat joints, edge to edge or
 * face to face; not for mortises, whose glue is judged by eye. Lengths and a spread in; kg and m³ inside.
 * Source: the spread of edge and face gluing is a trade magazine's; the glue's density is an estimate to be
 * replaced by the label's.
 */
export const glueQuantity = recipe({
  name: 'glueQuantity',
  title: 'Glue for a glue-up',
  topic: 'lamination',
  about: 'How much glue the joints take, by mass and by volume, from their area and the spread.',
  sources: [],
  inputs: {
    jointLength: field.length({ symbol: 'L', label: 'length of a joint', above: '0 mm', max: '50 m' }),
    jointHeight: field.length({
      symbol: 'h',
      label: 'joint height',
      help: 'Thickness of the slab in edge joints, width of the boards between faces.',
      above: '0 mm',
      max: '5 m',
    }),
    joints: field.count({
      symbol: 'n',
      label: 'joints',
      help: 'One less than the strips or layers.',
      min: 1,
      max: 10_000,
    }),
    spread: field.quantity('applicationRate', {
      symbol: 'g',
      label: 'spread',
      help: 'Glue on each spread face.',
      above: '0 g/m2',
      max: '2 kg/m2',
      default: '200 g/m2',
    }),
    sides: field.count({
      symbol: 'c',
      label: 'spread faces',
      help: 'Faces of a joint that are spread: 1, or 2 when both get the full spread.',
      min: 1,
      max: 2,
      default: 1,
    }),
    waste: field.share({
      symbol: 'w',
      label: 'waste',
      help: 'Added for what is squeezed out or left in the pot.',
      min: '0 %',
      max: '300 %',
      default: '0 %',
    }),
    glueDensity: field.density({
      symbol: 'rho',
      label: 'glue density',
      help: 'From the label of the glue.',
      min: '500 kg/m3',
      max: '2500 kg/m3',
      default: '1100 kg/m3',
    }),
  },
  outputs: {
    mass: out.mass({ symbol: 'm', label: 'glue needed', help: 'Glue to have at hand.' }),
    volume: out.liquid({ symbol: 'V', label: 'the same by volume' }),
    area: out.area({ symbol: 'A', label: 'area to spread' }),
    massPerJoint: out.mass({ label: 'glue for one joint' }),
  },
  formulas: [area, mass, volume],
  solve: (given, trace) => {
    const printed = printedSpread();
    if (!trace.silent)
      trace.note(
        `Printed for edge and face gluing: ${Math.round(printed.low * 1000)} to ${Math.round(printed.high * 1000)} g/m².`,
        printed.citation,
      );
    const A = trace.evaluate(area, {
      n: given.joints,
      c: given.sides,
      L: given.jointLength,
      h: given.jointHeight,
    });
    const m = trace.evaluate(mass, { A, g: given.spread, w: given.waste });
    const V = trace.evaluate(volume, { m, rho: given.glueDensity });
    return { mass: m, volume: V, area: A, massPerJoint: m / given.joints };
  },
  limits: [
    {
      when: (given) =>
        given.spread < printedSpread().low * 0.999 || given.spread > printedSpread().high * 1.03,
      message: (given) =>
        `${Math.round(given.spread * 1000)} g/m² lies outside the 171 to 244 g/m² printed for edge and face gluing: too little starves the joint, too much only runs; the glue’s own sheet decides`,
    },
  ],
  cautions: (given) => [
    freshSurfaces,
    note(
      `use white glue on timber of ${percents(printedMoisture('PVA glue'))} moisture`,
      printedMoisture('PVA glue').citation,
    ),
    note(
      `panels for dry rooms are glued at ${percents(printedMoisture('most of USA interior'))}`,
      printedMoisture('most of USA interior').citation,
    ),
    danger(
      'read the glue’s label: gloves and eye protection, and fresh air with glues that give off vapour (polyurethane, epoxy, urea)',
    ),
    ...(given.waste === 0
      ? [note('nothing is added for squeeze-out or what stays in the pot; 10 % more is common practice')]
      : []),
    note(
      'the density of 1.1 kg/L is usual for white and yellow glue (an estimate); take the label’s where it prints one',
    ),
  ],
  chart: (given, answer) => {
    const range = printedSpread();
    const top = Math.max(300, given.spread * 1000 * 1.2);
    const xs = Array.from({ length: 41 }, (_, i) => 80 + ((top - 80) * i) / 40);
    return lineChart({
      title: 'Glue against spread',
      x: { title: 'Spread', unit: 'g/m²', values: xs },
      y: {
        title: 'Glue',
        unit: 'g',
        domain: [0, ((answer.mass * 1000 * top) / (given.spread * 1000)) * 1.4],
      },
      series: [{ name: 'glue', values: xs.map((g) => (answer.mass * 1000 * g) / (given.spread * 1000)) }],
      rules: [
        { x: range.low * 1000, label: 'printed, least' },
        { x: range.high * 1000, label: 'printed, most' },
      ],
      marks:
        given.spread * 1000 < 80
          ? []
          : [
              {
                x: given.spread * 1000,
                y: answer.mass * 1000,
                label: `${Math.round(answer.mass * 1000)} g`,
              },
            ],
    });
  },
  sentence: 'Have {mass} of glue at hand: {volume}.',
  example: { jointLength: '2 m', jointHeight: '40 mm', joints: 14, spread: '200 g/m2', waste: '10 %' },
});

const percents = (range: { readonly low: number; readonly high: number }): string =>
  `${Math.round(range.low * 100)} to ${Math.round(range.high * 100)} %`;
