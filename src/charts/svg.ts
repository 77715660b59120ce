import { themed, type ChartGround } from './theme.js';
import { textWidth, wrapText } from './text-width.js';
import { ChartError, type ChartSpec } from './chart-spec.js';

export interface SvgOptions {
  /** px; used where the chart asks for the width of its container, and for charts marked fluid. Default 560. */
  readonly width?: number;
  readonly ground?: ChartGround;
}

/**
 * Draws a chart as an SVG document (text). The one place that loads vega, and only when called. Nothing is fetched: a
 * chart that names an address for its data or a picture is refused. The same chart always gives the same bytes.
 * Throws {@link ChartError}.
 */
export async function renderSvg(spec: ChartSpec, options: SvgOptions = {}): Promise<string> {
  refuseAddresses(spec, 'chart');
  const [vega, lite] = await Promise.all([import('vega'), import('vega-lite')]);
  const complaints: string[] = [];
  const logger = quietLogger(complaints);
  let svg: string;
  try {
    measureByTable(vega);
    const full = fitWidth(themed(spec, options.ground), options.width);
    // The grammar is the same in 5 and 6; only the number in $schema differs, which vega-lite would warn of.
    const compiled = lite.compile(full as never, { logger: logger }).spec;
    const view = new vega.View(vega.parse(compiled), {
      renderer: 'none',
      logger: logger,
      loader: refusingLoader(),
    });
    try {
      vega.resetSVGDefIds();
      svg = await view.toSVG();
    } finally {
      view.finalize();
    }
  } catch (error) {
    if (error instanceof ChartError) throw error;
    throw new ChartError(
      'chart',
      `cannot be drawn: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
  if (complaints.length > 0) throw new ChartError('chart', `cannot be drawn: ${complaints.join('; ')}`);
  return finish(svg, typeof spec['description'] === 'string' ? spec['description'] : titleOf(spec));
}

/** The chart at `width` px where its width is its container's, or where a builder marked it `fluid`. */
export function fitWidth(spec: ChartSpec, width?: number): ChartSpec {
  const mark = spec['usermeta'] as { reckoner?: { fluid?: boolean } } | undefined;
  const fluid = mark?.reckoner?.fluid === true;
  if (spec['width'] !== 'container' && !(fluid && width !== undefined)) return spec;
  const to = width ?? 560;
  const from = typeof spec['width'] === 'number' ? spec['width'] : 620;
  return {
    ...(refold(spec, to, from) as ChartSpec),
    width: to,
    autosize: { type: 'fit-x', contains: 'padding' },
  };
}

/** Titles that were broken to one width are broken to another, and a legend gets as many columns as still fit. */
function refold(value: unknown, to: number, from: number, key = ''): unknown {
  if (Array.isArray(value)) return key === 'values' ? value : value.map((v) => refold(v, to, from));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => {
      if (key === 'title' && (name === 'text' || name === 'subtitle') && Array.isArray(inner))
        return [name, wrapText(inner.join(' '), to - 16, name === 'text' ? 15 : 12, name === 'text')];
      if (key === 'legend' && name === 'columns' && typeof inner === 'number')
        return [name, Math.max(1, Math.floor((inner * to) / from))];
      return [name, refold(inner, to, from, name)];
    }),
  );
}

function measureByTable(vega: unknown): void {
  // vega-scenegraph lets its text measure be replaced; without this its guess without a canvas is 0.8 em a letter.
  const metrics = (vega as { textMetrics?: { width: unknown } }).textMetrics;
  if (metrics === undefined || typeof document !== 'undefined') return;
  metrics.width = (item: TextItem, line?: unknown) => {
    const text = plainText(line ?? item.text).trim();
    return textWidth(text, item.fontSize ?? 11, item.fontWeight === 'bold' || Number(item.fontWeight) >= 600);
  };
}
/** A line to measure; vega hands over text, or a number that stands on an axis. */
const plainText = (line: unknown): string =>
  typeof line === 'string' ? line : typeof line === 'number' ? String(line) : '';

interface TextItem {
  readonly text?: unknown;
  readonly fontSize?: number;
  readonly fontWeight?: string | number;
}

function quietLogger(errors: string[]) {
  const self = {
    level: () => 0,
    error: (...said: unknown[]) => (errors.push(said.map(String).join(' ')), self),
    warn: () => self,
    info: () => self,
    debug: () => self,
  };
  return self;
}

function refusingLoader() {
  const refuse = (address: string) =>
    Promise.reject(
      new ChartError('chart', `asks for ${address}; a chart carries its own values and fetches nothing`),
    );
  return { options: {}, load: refuse, sanitize: refuse, http: refuse, file: refuse };
}

function refuseAddresses(value: unknown, path: string, depth = 0): void {
  if (depth > 200) throw new ChartError(path, 'nested more than 200 deep');
  if (Array.isArray(value)) {
    value.forEach((v, i) => refuseAddresses(v, `${path}[${i}]`, depth + 1));
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    if (key === 'values' || key === 'datasets') continue; // rows of a table may well have a column called url
    if ((key === 'url' || key === 'href') && inner !== null && inner !== undefined)
      throw new ChartError(
        `${path}.${key}`,
        `got ${JSON.stringify(inner).slice(0, 60)}; a chart carries its own values and fetches nothing: give data.values`,
      );
    refuseAddresses(inner, `${path}.${key}`, depth + 1);
  }
}

function titleOf(spec: ChartSpec): string {
  const title = spec['title'];
  if (typeof title === 'string') return title;
  const text = (title as { text?: unknown } | undefined)?.text;
  return Array.isArray(text) ? text.join(' ') : typeof text === 'string' ? text : 'chart';
}

/**
 * Two charts in one page must not share ids (a clip of one would cut the other), so ids get a print of the drawing's
 * own content. A scaling style and a title make it fit a phone and speak to a screen reader.
 */
function finish(svg: string, title: string): string {
  const print = fingerprint(svg);
  return svg
    .replace(/\bid="((?:clip|gradient)[^"]*)"/g, `id="c${print}-$1"`)
    .replace(/url\(#((?:clip|gradient)[^)]*)\)/g, `url(#c${print}-$1)`)
    .replace(
      /^<svg /,
      `<svg role="img" style="max-width:100%;height:auto" aria-label="${escapeXml(title)}" `,
    );
}

function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash.toString(36);
}

function escapeXml(text: string): string {
  return text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);
}
