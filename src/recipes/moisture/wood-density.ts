import { barChart } from '../../charts/bar-chart.js';
import { InputError } from '../../units/input-error.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { nullTrace, type Trace } from '../../engine/trace.js';
import { timberField } from '../../materials/timber-field.js';
import type { Timber } from '../../materials/timber.js';
import {
  basicGravityOf,
  densityCautions,
  densityRule,
  densitySource,
  gravityAt,
  gravityFormulas,
  ndsRule,
  waterDensity,
} from './gravity-rules.js';

interface Given {
  readonly timber: Timber | undefined;
  readonly specificGravity: number | undefined;
  readonly gravityBasis: 'at this moisture' | 'green' | 'ovendry';
  readonly volumetricShrinkage: number | undefined;
}
interface Dense {
  readonly density: number;
  readonly specificGravity: number;
  readonly low: number;
  readonly high: number;
}

/** Density at a moisture, kg/m³, from a timber or a specific gravity. @throws InputError where neither or both are given */
export function densityAt(trace: Trace, given: Given, moisture: number): Dense {
  if ((given.timber === undefined) === (given.specificGravity === undefined)) {
    throw new InputError({
      field: given.timber ? 'specificGravity' : 'timber',
      message: given.timber
        ? 'given together with timber; takes one of the two'
        : 'missing; takes a timber by name such as "white oak", or give specificGravity',
    });
  }
  const rho = (w: Trace, G: number): number =>
    w.evaluate(densityRule, { rho_w: waterDensity, G, M: moisture });
  if (given.timber) {
    const basic = basicGravityOf(trace, given.timber);
    const volumetric = given.volumetricShrinkage ?? basic.volumetric;
    const G = gravityAt(trace, basic.middle, moisture, volumetric);
    const end = (g: number): number => rho(nullTrace, gravityAt(nullTrace, g, moisture, volumetric));
    return { density: rho(trace, G), specificGravity: G, low: end(basic.low), high: end(basic.high) };
  }
  const given_ = given.specificGravity as number;
  if (given.gravityBasis === 'ovendry') {
    const density = trace.evaluate(ndsRule, { G_0: given_, M: moisture });
    return {
      density,
      specificGravity: density / (waterDensity * (1 + moisture)),
      low: density,
      high: density,
    };
  }
  const G =
    given.gravityBasis === 'green' ? gravityAt(trace, given_, moisture, given.volumetricShrinkage) : given_;
  const density = rho(trace, G);
  return { density, specificGravity: G, low: density, high: density };
}

/** How heavy a timber is at a moisture: from its species, or from a specific gravity that you have measured or looked up. */
export const woodDensity = recipe({
  name: 'woodDensity',
  title: 'Density of wood',
  topic: 'moisture',
  about:
    'Density of wood with its water in, and its specific gravity on the volume it has at that moisture, from a species or from a specific gravity.',
  sources: [densitySource],
  inputs: {
    timber: timberField({
      needs: ['density', 'gravity'],
      label: 'timber',
      help: 'A species, or a group for a range.',
      optional: true,
    }),
    specificGravity: field.ratio({
      label: 'specific gravity',
      help: 'On oven-dry mass; give it in place of a timber.',
      min: 0.02,
      max: 1.55,
      optional: true,
    }),
    gravityBasis: field.choice(['at this moisture', 'green', 'ovendry'], {
      label: 'volume basis',
      help: 'Volume on which that specific gravity was taken.',
      default: 'at this moisture',
    }),
    volumetricShrinkage: field.share({
      label: 'volume shrinkage',
      help: 'From green to oven-dry; leave it out to take the published one, or 26.5 % times the specific gravity.',
      min: '0 %',
      max: '40 %',
      optional: true,
    }),
    moisture: field.moisture({ label: 'moisture content', min: '0 %', max: '300 %', default: '12 %' }),
  },
  outputs: {
    density: out.density({ label: 'density', help: 'Density of the wood with its water.' }),
    specificGravity: out.ratio({
      label: 'specific gravity',
      help: 'Oven-dry mass on the volume at this moisture.',
    }),
    low: out.density({
      label: 'density, low',
      help: 'Lower end: 10th percentile of a group, or the least printed.',
      optional: true,
    }),
    high: out.density({
      label: 'density, high',
      help: 'Upper end: 90th percentile of a group, or the most printed.',
      optional: true,
    }),
    volumePerTonne: out.volume({ label: 'volume of one tonne' }),
  },
  formulas: [...gravityFormulas, ndsRule],
  solve: (given, trace) => {
    const dense = densityAt(trace, given, given.moisture);
    const { low, high, ...middle } = dense;
    return { ...middle, ...(high > low ? { low, high } : {}), volumePerTonne: 1000 / dense.density };
  },
  cautions: (given) => densityCautions(given.moisture),
  chart: (given, answer) => {
    const at = [0, 0.08, 0.12, 0.2, 0.3, 0.6].filter(
      (m) => Math.round(Math.abs(m - given.moisture) * 1e6) > 5000,
    );
    if (given.gravityBasis === 'at this moisture' && given.specificGravity !== undefined) return undefined;
    const bars = [
      ...at.map((m) => ({ m, d: densityAt(nullTrace, given, m), chosen: false })),
      {
        m: given.moisture,
        d: { low: answer.density, high: answer.density, ...answer } as Dense,
        chosen: true,
      },
    ].sort((a, b) => a.m - b.m);
    return barChart({
      title: `Density at several moistures${given.timber ? `: ${given.timber.name}` : ''}`,
      of: 'Moisture',
      value: { title: 'Density', unit: 'kg/m³' },
      bars: bars.map((b) => ({
        name: `${Number((b.m * 100).toFixed(1))} % moisture`,
        value: b.d.density,
        ...(b.d.high > b.d.low ? { low: b.d.low, high: b.d.high } : {}),
        label: `${Math.round(b.d.density)} kg/m³`,
        chosen: b.chosen,
      })),
    });
  },
  sentence: 'It weighs {density}.',
  example: { timber: 'white oak', moisture: '12 %' },
});
