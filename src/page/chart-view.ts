import { parse, View, Warn, type Loader } from 'vega';
import { expressionInterpreter } from 'vega-interpreter';
import { compile, type TopLevelSpec } from 'vega-lite';
import { colours, themed } from '../charts/theme.js';
import type { ChartSpec } from '../charts/chart-spec.js';

/** A notebook from elsewhere may name any address in its chart: none is fetched, the data must be in the chart. `refused` hears of it. */
function closedLoader(refused: (message: string) => void): Loader {
  const refuse = (what: string): Promise<never> => {
    refused(what);
    return Promise.reject(new Error(what));
  };
  return {
    options: {},
    load: (uri: string) => refuse(`its data must be inside it, got the address ${uri.slice(0, 80)}`),
    sanitize: (uri: string) => refuse(`addresses in charts are not followed, got ${uri.slice(0, 80)}`),
    http: () => refuse('no network'),
    file: () => refuse('no files'),
  } as unknown as Loader;
}

/** Draws a Vega-Lite specification into `host`, no wider than `room` pixels. Gives a function that takes it away. */
export async function drawChart(
  spec: ChartSpec,
  host: HTMLElement,
  room: number,
  ground: 'light' | 'dark',
): Promise<() => void> {
  const { spec: vega } = compile(fitted(onGround(spec, ground), room) as unknown as TopLevelSpec, {
    logger: quiet,
  });
  // `ast` and the interpreter: expressions are walked, not compiled, so the page's policy need not allow eval.
  let refusal: string | undefined;
  const loader = closedLoader((message) => (refusal ??= message));
  const view = new View(parse(vega, undefined, { ast: true }), {
    expr: expressionInterpreter,
    renderer: 'svg',
    loader,
    logLevel: Warn,
    logger: quiet,
    hover: true,
  });
  await view.initialize(host).runAsync();
  if (refusal !== undefined) throw new Error(refusal);
  return () => view.finalize();
}

/** The chart in the colours of the page. Charts of ours carry the light look in `config`; any other look is left alone. */
function onGround(spec: ChartSpec, ground: 'light' | 'dark'): ChartSpec {
  const own = spec['config'] as ChartSpec | undefined;
  const ours =
    own === undefined || own['background'] === colours.light.ground || own['background'] === undefined;
  if (!ours) return spec;
  const { config: _light, ...bare } = spec;
  const config = own === undefined ? undefined : (themed({ own }, ground) as { own?: ChartSpec }).own;
  // The cell's own paper shows through, whatever its shade.
  return themed({ ...bare, config: { ...config, background: 'transparent' } }, ground);
}

/** One plot wider than the page is drawn narrower, so that its letters keep their size; several side by side are scaled by the style sheet. */
function fitted(spec: ChartSpec, room: number): ChartSpec {
  const single = 'mark' in spec || 'layer' in spec;
  if (!single || room <= 0) return spec;
  const config = spec['config'] as
    { view?: { continuousWidth?: number; discreteWidth?: number } } | undefined;
  const wished = spec['width'] ?? config?.view?.continuousWidth ?? 300;
  if (wished === 'container')
    return { ...spec, width: room, autosize: { type: 'fit-x', contains: 'padding' } };
  if (typeof wished !== 'number' || wished + 60 <= room) return spec;
  return { ...spec, width: room, autosize: { type: 'fit-x', contains: 'padding' } };
}

const nothing = (): typeof quiet => quiet;
const quiet: {
  level: (n?: number) => never;
  error: (...args: unknown[]) => never;
  warn: () => never;
  info: () => never;
  debug: () => never;
} = {
  level: nothing as never,
  warn: nothing as never,
  info: nothing as never,
  debug: nothing as never,
  error: (...args: unknown[]) => {
    throw new Error(args.map(String).join(' '));
  },
};
