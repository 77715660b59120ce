// Shear between pieces that are glued one on another: the line glued in a shop is not counted as strong as the wood.
import { note, type Caution } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { factor } from '../../materials/working-stress/factors.js';
import type { Material } from './design-values.js';
import type { Section } from './section.js';
import { sectionFacts, stripsOf } from './section-properties.js';

const glueLineArea = variable('area', 'shear force over shear stress at the glue line, E I b / (E S)', {
  unit: 'mm2',
});
const glueLineStress = formula({
  symbol: 'tau_g',
  result: variable('stress', 'greatest shear stress at a glue line', { unit: 'MPa' }),
  expression: 'V / A_g',
  variables: { V: variable('force', 'greatest shear force'), A_g: glueLineArea },
  source: cite('gere-mechanics', 'shear flow V Q / I in built-up beams', { read: 'memory' }),
});
export const glueLineAllowed = formula({
  symbol: 'f_g',
  result: variable('stress', 'shear stress to stay under at a glue line', { unit: 'MPa' }),
  expression: 'n f_v',
  variables: {
    n: variable('ratio', 'share kept for a joint glued in the shop'),
    f_v: variable('stress', 'working shear stress of the wood along the grain', { unit: 'MPa' }),
  },
  source: cite('library-choices', 'half, since pressure and surfaces are not controlled'),
});
export const glueLineFormulas = [glueLineStress, glueLineAllowed];

/**
 * Area by which a shear force of a section is divided for the stress at its worst glue line, m²: E I b over the
 * stiffness-weighted first moment of all above the line, on the narrower of the two pieces. Undefined without glue lines.
 */
export function glueLineAreaOf(section: Section, E: number): number | undefined {
  if (section.shape !== 'box' && !(section.shape === 'layers' && !section.loose && section.pieces.length > 1))
    return undefined;
  const { EI, axis } = sectionFacts(section, E);
  const down = [...stripsOf(section, E)].sort((a, b) => b.top - a.top);
  let above = 0;
  let worst = 0;
  for (const [i, strip] of down.entries()) {
    above += strip.E * strip.width * (strip.top - strip.bottom) * ((strip.top + strip.bottom) / 2 - axis);
    const next = down[i + 1];
    if (next) worst = Math.max(worst, Math.abs(above) / (EI * Math.min(strip.width, next.width)));
  }
  return 1 / worst;
}

/** Shear stress to stay under at a glue line, pascals; undefined where no shear strength is known. */
export const glueAllowed = (material: Material, trace: Trace): number | undefined =>
  material.shear === undefined
    ? undefined
    : trace.evaluate(glueLineAllowed, { n: factor('joint.shop-glued'), f_v: material.shear });

/** Stress at the worst glue line under a shear force, and its share of the one to stay under. */
export function glueLineUse(section: Section, V: number, material: Material, trace: Trace) {
  const A_g = glueLineAreaOf(section, material.E);
  if (A_g === undefined) return {};
  const stress = trace.evaluate(glueLineStress, { V, A_g });
  const allowed = glueAllowed(material, trace);
  return { glueStress: stress, glueUse: allowed === undefined ? undefined : stress / allowed };
}

/** What a section with glue lines rests on. */
export const glueLineCautions = (section: Section): Caution[] =>
  glueLineAreaOf(section, 1) === undefined
    ? []
    : [
        note(
          'glued layers and boxes are taken as one: the glue lines carry the shear between them, at half of the wood’s own shear strength. Plane, glue within a day, press evenly, and use a glue made for the place: polyvinyl acetate creeps under a load that stays, in heat and in damp',
        ),
      ];
