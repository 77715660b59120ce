import { quasiRandom } from './samples.js';
import type { Sampler } from './sampler.js';
import type { InputDistribution } from './distributions.js';

/** How much of the spread of the answer comes from one input: alone (first), and with all it acts through (total). */
export interface Sensitivity {
  readonly input: string;
  readonly first: number;
  readonly total: number;
}

/** How many runs of `n` draws {@link sensitivityOf} takes for so many inputs. */
export const runsFor = (inputs: number): number => inputs + 2;

/**
 * Sobol indices by the estimators of Saltelli (first) and Jansen (total), Saltelli et al. 2010, Table 2, from `n` draws
 * and as many again for each input.
 */
export async function sensitivityOf(
  run: Sampler,
  spreads: readonly InputDistribution[],
  n: number,
  seed: number,
): Promise<Sensitivity[]> {
  const d = spreads.length;
  const draws = quasiRandom(2 * d, seed + 7919);
  const a = await run(n, draws, (k) => k);
  const b = await run(n, draws, (k) => d + k);
  let mean = 0;
  for (let i = 0; i < n; i++) mean += ((a[i] as number) + (b[i] as number)) / (2 * n);
  let variance = 0;
  for (let i = 0; i < n; i++) variance += ((a[i] as number) - mean) ** 2 + ((b[i] as number) - mean) ** 2;
  variance /= 2 * n;
  const out: Sensitivity[] = [];
  for (let k = 0; k < d; k++) {
    const ab = await run(n, draws, (j) => (j === k ? d + j : j));
    let first = 0;
    let total = 0;
    for (let i = 0; i < n; i++) {
      first += ((b[i] as number) - mean) * ((ab[i] as number) - (a[i] as number));
      total += ((a[i] as number) - (ab[i] as number)) ** 2;
    }
    const share = (x: number): number => (variance > 0 ? Math.min(1, Math.max(0, x / variance)) : 0);
    out.push({
      input: (spreads[k] as InputDistribution).name,
      first: share(first / n),
      total: share(total / (2 * n)),
    });
  }
  return out.sort((x, y) => y.total - x.total);
}
