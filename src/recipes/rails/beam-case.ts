import { both, Quantity } from '../../units/quantity.js';
import { InputError, type Issue } from '../../units/input-error.js';
import { field, type Parsed } from '../../engine/field.js';
import type { Trace } from '../../engine/trace.js';
import type { Load } from './beam-loads.js';
import { holds, settled, solveBeam, type Solved } from './beam-solver.js';
import { loadsField, type LoadRead } from './load-field.js';
import { g0, ownWeightOf } from './loads-and-creep.js';
import { creepField } from './sag-limit.js';
import { sectionField } from './section.js';
import { sectionFacts, type SectionFacts } from './section-properties.js';
import { materialFields } from './material-fields.js';
import { materialOf, type Material } from './design-values.js';
import { supportsField } from './support-field.js';

export const beamInputs = {
  length: field.length({ label: 'length of the beam from end to end', above: '0 mm', max: '100 m' }),
  supports: supportsField({ label: 'where and how it is held' }),
  loads: loadsField({ label: 'what stands on it' }),
  section: sectionField({ label: 'its cross-section' }),
  ownWeight: field.flag({ label: 'whether its own weight counts beside the loads', default: false }),
  long: creepField({ label: 'how much more it sags in the long run', default: 'no creep' }),
  longShare: field.share({
    label: 'share of the load that stays on for months',
    min: '0 %',
    max: '100 %',
    default: '100 %',
  }),
  ...materialFields,
} as const;
export type BeamGiven = Parsed<typeof beamInputs>;

/** Reads the case and solves it. @throws InputError where something does not stand on the beam, or nothing holds it */
export function beamCase(
  given: BeamGiven,
  trace: Trace,
): { solved: Solved; material: Material; facts: SectionFacts } {
  checkPlaces(given);
  const material = materialOf(given, trace);
  const facts = sectionFacts(given.section, material.E, material.G);
  const loads = given.loads.map((l): Load =>
    l.kind === 'uniform' ? { kind: 'spread', from: 0, to: given.length, q1: l.q, q2: l.q } : l,
  );
  if (given.ownWeight) {
    if (material.density === undefined)
      throw new InputError({
        field: 'ownWeight',
        message: 'got yes, takes it only with a density; give density such as "500 kg/m3"',
      });
    const w = trace.evaluate(ownWeightOf, { rho: material.density, A: facts.area, g: g0 });
    loads.push({ kind: 'spread', from: 0, to: given.length, q1: w, q2: w });
  }
  return {
    material,
    facts,
    solved: solveBeam({ length: given.length, EI: facts.EI, GA: facts.GA, supports: given.supports, loads }),
  };
}

/** Everything must stand on the beam, supports apart from one another, and the whole may not fall over. */
function checkPlaces(given: BeamGiven): void {
  const mm = (m: number): string => both(new Quantity('length', m));
  const issues: Issue[] = [];
  const onBeam = (field: string, x: number): void => {
    if (settled(x, given.length) > given.length)
      issues.push({
        field,
        message: `got ${mm(x)}, takes a place on the beam, at most its length of ${mm(given.length)}`,
      });
  };
  given.supports.forEach((s, i) => {
    onBeam(`supports[${i + 1}].position`, s.position);
    const other = given.supports.findIndex(
      (o, k) => k < i && Math.abs(o.position - s.position) < given.length * 1e-4,
    );
    if (other >= 0)
      issues.push({
        field: `supports[${i + 1}].position`,
        message: `got ${mm(s.position)}, where support ${other + 1} is already; takes supports at least a ten-thousandth of the length apart`,
      });
  });
  given.loads.forEach((l: LoadRead, i) => {
    if (l.kind === 'spread') onBeam(`loads[${i + 1}].to`, l.to);
    else if (l.kind !== 'uniform') onBeam(`loads[${i + 1}].position`, l.at);
  });
  if (!holds(given.supports))
    issues.push({
      field: 'supports',
      message: 'got one support that lets the beam turn over it; takes two or more, or one that is fixed',
    });
  if (issues.length > 0) throw new InputError(issues);
}
