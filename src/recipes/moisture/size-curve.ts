// One curve of size against moisture: the coefficient from 6 to 14 %, the shrinkage from green below and above. Each
// stretch multiplies the size that the one before left, so that the curve has no jump and never turns back.
import { dataCaution } from '../../engine/caution.js';
import type { Trace } from '../../engine/trace.js';
import { coefficientRange, coefficientRule, coefficientSource, greenRule } from './movement-formulas.js';

/** The two published figures of a timber in one direction, and its fibre saturation. */
export interface CurveFigures {
  /** Change of size for each fraction of moisture. */
  readonly coefficient: number;
  /** Shrinkage from green to oven-dry, as a fraction. */
  readonly shrinkage: number;
  readonly saturation: number;
}

const { low, high } = coefficientRange;

/** Change of a width between two moistures up to fibre saturation, on that curve. */
export function curveChange(figures: CurveFigures, width: number, a: number, b: number): number {
  const green = (from: number, to: number): number =>
    1 + greenRule.evaluate({ D: 1, M_F: to, M_I: from, f: figures.saturation, S: figures.shrinkage });
  const inside = (m: number): number => Math.min(Math.max(m, low), high);
  const growth =
    green(Math.min(a, low), Math.min(b, low)) *
    (1 + coefficientRule.evaluate({ D: 1, C: figures.coefficient / 100, M_F: inside(b), M_I: inside(a) })) *
    green(Math.max(a, high), Math.max(b, high));
  return width * (growth - 1);
}

const percent = (m: number): string => `${Number((m * 100).toFixed(1))} %`;

/** The stretches of a change one after another, for the workings: each from the size the one before left. */
function curveSteps(figures: CurveFigures, width: number, a: number, b: number) {
  const stops = [a, ...[low, high].filter((m) => (m - a) * (m - b) < 0), b];
  if (a > b) stops.sort((x, y) => y - x);
  let D = width;
  return stops.slice(1).map((to, i) => {
    const from = stops[i] as number;
    const label = `change of width from ${percent(from)} to ${percent(to)}`;
    const inside = Math.min(from, to) >= low - 1e-12 && Math.max(from, to) <= high + 1e-12;
    const args = { D, M_F: to, M_I: from };
    if (inside) {
      const step = { rule: 'coefficient', label, args: { ...args, C: figures.coefficient / 100 } } as const;
      D += coefficientRule.evaluate(step.args);
      return step;
    }
    const step = {
      rule: 'green',
      label,
      args: { ...args, f: figures.saturation, S: figures.shrinkage },
    } as const;
    D += greenRule.evaluate(step.args);
    return step;
  });
}

/** The steps of a change that crosses the range of the coefficients. */
export function traceCurve(trace: Trace, figures: CurveFigures, width: number, a: number, b: number): void {
  for (const step of curveSteps(figures, width, a, b))
    if (step.rule === 'coefficient') trace.evaluate(coefficientRule, step.args, step.label);
    else trace.evaluate(greenRule, step.args, step.label);
}

/** A difference of the two sources beyond this share is told. */
const tolerated = 0.03;

/** How far the two sources alone differ over a change, where that is over 3 %. */
export function tellDisagreement(
  trace: Trace,
  name: string,
  figures: CurveFigures,
  width: number,
  a: number,
  b: number,
): void {
  const C = coefficientRule.evaluate({ D: width, C: figures.coefficient / 100, M_F: b, M_I: a });
  const S = greenRule.evaluate({ D: width, M_F: b, M_I: a, f: figures.saturation, S: figures.shrinkage });
  if (a === b || Math.abs(C / S - 1) <= tolerated) return;
  trace.warn(
    dataCaution(
      `the two published figures of ${name} disagree: over the whole change the coefficient alone gives ${(C * 1000).toFixed(1)} mm, the shrinkage from green alone ${(S * 1000).toFixed(1)} mm; slots are made for the larger`,
      coefficientSource,
    ),
  );
}
