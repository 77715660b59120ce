import { both, Quantity } from '../../units/quantity.js';
import { InputError, type Issue } from '../../units/input-error.js';
import { field, type Parsed } from '../../engine/field.js';
import type { Trace } from '../../engine/trace.js';
import type { LoadMix } from '../../materials/working-stress/load-case.js';
import { longTermFactor } from '../../materials/working-stress/use-category.js';
import { forceOf, scaleLoad, type Load } from './beam-loads.js';
import { holds, settled, solveBeam, type Solved } from './beam-solver.js';
import { loadsField, type LoadRead } from './load-field.js';
import { situationFields, situationOf } from './load-situation.js';
import { notchField } from './notched-rail.js';
import { sectionField } from './section.js';
import { sectionFacts, type SectionFacts } from './section-properties.js';
import { materialFields } from './material-fields.js';
import { chosenOf, materialOf, ownWeightPerLength, type Material } from './design-values.js';
import { supportsField } from './support-field.js';

export const beamInputs = {
  length: field.length({
    label: 'length',
    help: 'Length of the beam from end to end.',
    above: '0 mm',
    max: '100 m',
  }),
  supports: supportsField({ label: 'supports', help: 'Where and how it is held.' }),
  loads: loadsField({ label: 'what stands on it' }),
  section: sectionField({ label: 'its cross-section' }),
  notch: notchField,
  ownWeight: field.flag({
    label: 'own weight',
    help: 'Whether its own weight counts beside the loads.',
    default: false,
  }),
  ...situationFields,
  ...materialFields,
} as const;
export type BeamGiven = Parsed<typeof beamInputs>;

/** A beam solved for the loads as they come on and for those of the long run. */
export interface BeamSolution {
  readonly solved: Solved;
  /** Under its loads times what creep makes of each: its sag is the sag in the long run. */
  readonly lasting: Solved;
  readonly material: Material;
  readonly facts: SectionFacts;
}

/** Reads the case and solves it. @throws InputError where something does not stand on the beam, or nothing holds it */
export function beamCase(given: BeamGiven, trace: Trace): BeamSolution {
  checkPlaces(given);
  const situation = situationOf(given, chosenOf(given), trace);
  const imposed = given.loads.map((l): Load =>
    l.kind === 'uniform' ? { kind: 'spread', from: 0, to: given.length, q1: l.q, q2: l.q } : l,
  );
  const own = given.ownWeight ? ownWeightPerLength(given, sectionFacts(given.section, 1).area, trace) : 0;
  const material = materialOf(given, trace, {
    section: given.section,
    mix: mixOf(imposed, own * given.length),
    situation,
  });
  const facts = sectionFacts(given.section, material.E, material.G);
  const solveWith = (onOwn: number, onImposed: number): Solved => {
    const loads = imposed.map((l) => scaleLoad(l, onImposed));
    if (own > 0) loads.push({ kind: 'spread', from: 0, to: given.length, q1: own * onOwn, q2: own * onOwn });
    return solveBeam({ length: given.length, EI: facts.EI, GA: facts.GA, supports: given.supports, loads });
  };
  const factorOf = (permanent: number): number =>
    longTermFactor.evaluate({ G: permanent, Q: 1 - permanent, k: situation.creep, s: situation.stays });
  trace.evaluate(
    longTermFactor,
    { G: 0, Q: 1, k: situation.creep, s: situation.stays },
    `sag of the loads in the long run over the first${own > 0 ? `; own weight stays whole, ${situation.creep} times` : ''}`,
  );
  return { material, facts, solved: solveWith(1, 1), lasting: solveWith(factorOf(1), factorOf(0)) };
}

/**
 * Own weight beside the other loads. By their forces; moments have none, and then all counts as imposed, which has the
 * larger load factor.
 */
function mixOf(loads: readonly Load[], own: number): LoadMix {
  if (loads.some((l) => l.kind === 'moment')) return { permanent: 0, imposed: 1 };
  const imposed = loads.reduce((s, l) => s + Math.abs(forceOf(l)), 0);
  return imposed + own > 0 ? { permanent: own, imposed } : { permanent: 0, imposed: 1 };
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
