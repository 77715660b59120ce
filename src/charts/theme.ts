import type { ChartSpec } from './chart-spec.js';

export const chartSchema = 'https://vega.github.io/schema/vega-lite/v5.json';

/** DejaVu first (every Linux workshop machine has it), then its metric twin, then whatever the system speaks. */
export const chartFont = '"DejaVu Sans", Verdana, "Segoe UI", system-ui, sans-serif';

/** What a chart is drawn on: a light page, a dark page. */
export type ChartGround = 'light' | 'dark';

export interface ChartColours {
  readonly ground: string;
  readonly ink: string;
  readonly soft: string;
  readonly line: string;
  readonly faint: string;
  /** Fills of a to-scale picture: a board, a second board, a cut or hole, the ground behind. */
  readonly wood: string;
  readonly woodDark: string;
  readonly waste: string;
  readonly series: readonly string[];
}

/**
 * The series colours are those of Okabe and Ito (Color Universal Design, 2008): told apart by red-green and by blue-blind
 * readers. On a light ground their yellow is left out (1.3:1 against paper) and orange is darkened.
 */
export const colours: Readonly<Record<ChartGround, ChartColours>> = {
  light: {
    ground: '#fffdf8',
    ink: '#2b2620',
    soft: '#5f554a',
    line: '#cfc4b4',
    faint: '#ece4d8',
    wood: '#ecd3ab',
    woodDark: '#cfa873',
    waste: '#e4e1dc',
    series: ['#0072b2', '#d55e00', '#007a5a', '#a8497f', '#7a5c00', '#2b2620', '#3b8fc2'],
  },
  dark: {
    ground: '#211d19',
    ink: '#f1e9dd',
    soft: '#c0b4a4',
    line: '#574d42',
    faint: '#393129',
    wood: '#8d6a3f',
    woodDark: '#5e4426',
    waste: '#4a4641',
    series: ['#56b4e9', '#f28e4b', '#2fc59b', '#e08fbf', '#f0e442', '#f1e9dd', '#8fb8d6'],
  },
};

/** Dash patterns and point shapes, in the order of the series colours, so that colour is never the only sign. */
export const dashes: readonly (readonly number[])[] = [
  [1, 0],
  [7, 3],
  [2, 3],
  [10, 3, 2, 3],
  [4, 4],
  [12, 4],
  [1, 3],
];
export const shapes: readonly string[] = [
  'circle',
  'square',
  'triangle-up',
  'diamond',
  'cross',
  'triangle-down',
  'stroke',
];

const labelSize = 12;
const titleSize = 13;

/** The house look as a Vega-Lite `config`: warm paper, dark ink, labels of 12 px (9 pt in print). */
export function configFor(ground: ChartGround): ChartSpec {
  const c = colours[ground];
  return {
    background: c.ground,
    font: chartFont,
    padding: 8,
    view: { continuousWidth: 560, continuousHeight: 320, discreteWidth: 560, stroke: c.line },
    axis: axisConfig(c),
    axisY: { titleLimit: 320 },
    legend: legendConfig(c),
    header: { labelColor: c.ink, titleColor: c.ink, labelFontSize: labelSize, titleFontSize: titleSize },
    title: {
      color: c.ink,
      subtitleColor: c.soft,
      fontSize: 15,
      subtitleFontSize: labelSize,
      fontWeight: 'bold',
      anchor: 'start',
      offset: 12,
      limit: 640,
    },
    text: { color: c.ink, fontSize: labelSize },
    line: { color: c.series[0], strokeWidth: 2.5 },
    trail: { color: c.series[0] },
    point: { color: c.series[0], filled: true, size: 80 },
    bar: { color: c.series[0] },
    rect: { color: c.series[0] },
    area: { color: c.series[0], opacity: 0.25, line: false },
    rule: { color: c.soft, strokeWidth: 1.5 },
    arc: { stroke: c.ground },
    range: {
      category: c.series,
      symbol: shapes,
      ordinal: { scheme: 'viridis' },
      ramp: { scheme: 'viridis' },
      heatmap: { scheme: 'viridis' },
    },
  };
}

const axisConfig = (c: ChartColours): ChartSpec => ({
  labelColor: c.ink,
  titleColor: c.ink,
  labelFontSize: labelSize,
  titleFontSize: titleSize,
  titleFontWeight: 'normal',
  titlePadding: 10,
  gridColor: c.faint,
  domainColor: c.soft,
  tickColor: c.soft,
  labelLimit: 260,
  titleLimit: 520,
  // Numbers that nearly touch read as one number.
  labelOverlap: true,
  labelSeparation: 8,
});

const legendConfig = (c: ChartColours): ChartSpec => ({
  labelColor: c.ink,
  titleColor: c.ink,
  labelFontSize: labelSize,
  titleFontSize: labelSize,
  titleFontWeight: 'normal',
  labelLimit: 420,
  symbolSize: 110,
  symbolStrokeWidth: 2.5,
  orient: 'bottom',
  columnPadding: 18,
});

/** The light look. */
export const chartConfig: ChartSpec = configFor('light');

/** `spec` with the house look under it; whatever the spec's own `config` sets wins. Plain data in, plain data out. */
export function themed(spec: ChartSpec, ground: ChartGround = 'light'): ChartSpec {
  const own = isPlain(spec['config']) ? spec['config'] : {};
  const base = ground === 'light' ? spec : repaint(spec, colours.light, colours[ground]);
  return { $schema: chartSchema, ...base, config: merge(configFor(ground), own) };
}

/**
 * A builder writes the light colours into a picture (vega-lite has no names for colours). On another ground each
 * of them is exchanged for its opposite number; colours that are not ours stay.
 */
function repaint(spec: ChartSpec, from: ChartColours, to: ChartColours): ChartSpec {
  const swap = new Map<string, string>();
  for (const key of ['ground', 'ink', 'soft', 'line', 'faint', 'wood', 'woodDark', 'waste'] as const)
    swap.set(from[key], to[key]);
  from.series.forEach((colour, i) => {
    if (!swap.has(colour)) swap.set(colour, to.series[i] ?? colour);
  });
  const walk = (value: unknown): unknown => {
    if (typeof value === 'string') return swap.get(value) ?? value;
    if (Array.isArray(value)) return value.map(walk);
    if (isPlain(value)) return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, walk(v)]));
    return value;
  };
  return walk(spec) as ChartSpec;
}

function merge(base: ChartSpec, over: ChartSpec): ChartSpec {
  const out: Record<string, unknown> = { ...base };
  for (const [key, value] of Object.entries(over)) {
    const under = out[key];
    out[key] = isPlain(under) && isPlain(value) ? merge(under, value) : value;
  }
  return out;
}

function isPlain(value: unknown): value is ChartSpec {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
