import { quasiRandom } from './samples.js';
import type { SamplePlan } from './sample-plan.js';
import type { Sampler } from './sampler.js';

/** How much of the variance of the answer comes from one input, or from correlated inputs together: alone (first), and with all it acts through (total). */
export interface Sensitivity {
  /** Name of the input; `a + b` for correlated ones. */
  readonly input: string;
  readonly first: number;
  readonly total: number;
}

/** How many runs of `n` samples {@link sensitivityOf} takes for so many factors. */
export const runsFor = (factors: number): number => factors + 2;

/**
 * Sobol indices by the estimators of Saltelli (first) and Jansen (total), Saltelli et al. 2010, Table 2, from `n` samples
 * and as many again for each factor.
 */
export async function sensitivityOf(
  run: Sampler,
  plan: SamplePlan,
  n: number,
  seed: number,
): Promise<Sensitivity[]> {
  const d = plan.dimensions;
  const samples = quasiRandom(2 * d, seed + 7919);
  const a = await run(n, samples, (k) => k);
  const b = await run(n, samples, (k) => d + k);
  let mean = 0;
  for (let i = 0; i < n; i++) mean += ((a[i] as number) + (b[i] as number)) / (2 * n);
  let variance = 0;
  for (let i = 0; i < n; i++) variance += ((a[i] as number) - mean) ** 2 + ((b[i] as number) - mean) ** 2;
  variance /= 2 * n;
  const share = (x: number): number => (variance > 0 ? Math.min(1, Math.max(0, x / variance)) : 0);
  const out: Sensitivity[] = [];
  for (const factor of plan.factors) {
    const ab = await run(n, samples, (j) => (factor.dimensions.includes(j) ? d + j : j));
    let first = 0;
    let total = 0;
    for (let i = 0; i < n; i++) {
      first += ((b[i] as number) - mean) * ((ab[i] as number) - (a[i] as number));
      total += ((a[i] as number) - (ab[i] as number)) ** 2;
    }
    out.push({ input: factor.name, first: share(first / n), total: share(total / (2 * n)) });
  }
  return out.toSorted((x, y) => y.total - x.total);
}
