// Slabs and stages of gluing that never exist, and sums that do not add up.
import { namesIn } from '../gluing-stages.js';
import { layUpNode } from '../lay-up.js';
import { massesNode } from '../masses.js';
import { kg } from '../question.js';
import { billNode } from '../questions/cost-questions.js';
import { clampsNode } from '../gluing-needs.js';
import type { Contradiction, Finder } from './contradiction.js';

const slabs: Finder = (m) => {
  const layUp = m.of(layUpNode);
  const names = new Set(layUp.slabs.map((s) => s.name));
  const strips = layUp.slabs.reduce((s, x) => s + x.strips, 0);
  const found: Contradiction[] = [];
  if (m.get('top', 'slabs') !== undefined && strips !== layUp.rows.length)
    found.push({
      path: 'top.slabs',
      message: `the slabs hold ${strips} strips together; the top has ${layUp.rows.length}`,
      safety: false,
    });
  (m.get('top', 'gluing') ?? []).forEach((stage, i) => {
    const stranger = namesIn(stage.glues).find((n) => !names.has(n));
    if (stranger !== undefined)
      found.push({
        path: `top.gluing[${i + 1}].glues`,
        message: `there is no slab "${stranger}": the top is glued in ${[...names].join(', ')}`,
        safety: false,
      });
  });
  return found;
};

const stages: Finder = (m) =>
  m.of(clampsNode).flatMap(({ stage, asked }): Contradiction[] =>
    stage.clamps !== undefined && stage.clamps < asked.out.clamps
      ? [
          {
            path: 'top.gluing',
            message: `${stage.name} is given ${stage.clamps} clamps; it takes ${asked.out.clamps}`,
            safety: false,
          },
        ]
      : [],
  );

const sums: Finder = (m) => {
  const found: Contradiction[] = [];
  const mass = m.get('costs', 'statedMass');
  const masses = m.of(massesNode);
  if (mass !== undefined && (mass < masses.least * 0.98 || mass > masses.most * 1.02))
    found.push({
      path: 'costs.statedMass',
      message: `the mass is given as ${kg(mass)}; the parts add up to ${kg(masses.least)} to ${kg(masses.most)}`,
      safety: false,
    });
  const lines = m.get('costs', 'lines') ?? [];
  lines.forEach((line, i) => {
    if (line.kind === 'timber')
      found.push({
        path: `costs.lines[${i + 1}]`,
        message: `${line.item}: the timber of the piece is in the bill already, so this charges it twice`,
        safety: false,
      });
  });
  const cost = m.get('costs', 'statedCost');
  if (cost !== undefined) {
    const total = m.of(billNode).out.total;
    if (Math.abs(cost - total) > 0.01 * Math.max(cost, total))
      found.push({
        path: 'costs.statedCost',
        message: `the cost is given as ${cost.toFixed(2)}; the lines add up to ${total.toFixed(2)}`,
        safety: false,
      });
  }
  return found;
};

export const sumContradictions: readonly Finder[] = [slabs, stages, sums];
