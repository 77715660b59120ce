// Joints and fixings that meet nothing, or take more than there is.
import { facesOf, jointsInPlaceNode, pairsOf, thicknessAt } from '../joint-places.js';
import { membersNode, sizeAlong } from '../member.js';
import type { Model } from '../piece-graph.js';
import { mm } from '../question.js';
import { topFixingsNode } from '../top-fixings.js';
import { once, type Contradiction, type Finder } from './contradiction.js';

const fixings: Finder = (m) => {
  const found: Contradiction[] = [];
  const names = new Set(Object.keys(m.all('parts')));
  const thickness = m.get('top', 'thickness');
  for (const [name, f] of Object.entries(m.all('fixings') ?? {})) {
    if (!names.has(f.to) && f.to !== 'floor' && f.to !== 'wall')
      found.push({ path: `fixings.${name}.to`, message: `there is no part "${f.to}"`, safety: true });
    if (f.holds !== 'top' && !names.has(f.holds))
      found.push({ path: `fixings.${name}.holds`, message: `there is no part "${f.holds}"`, safety: true });
    if (f.length <= f.through)
      found.push({
        path: `fixings.${name}.length`,
        message: `a screw of ${mm(f.length)} does not come through ${mm(f.through)} of wood`,
        safety: true,
      });
    else if (f.holds === 'top' && f.length - f.through > thickness - 2e-3)
      found.push({
        path: `fixings.${name}.length`,
        message: `a screw of ${mm(f.length)} goes ${mm(f.length - f.through)} into a top of ${mm(thickness)} and comes out`,
        safety: true,
      });
  }
  for (const p of m.of(topFixingsNode))
    if (!p.on)
      found.push({
        path: `fixings.${p.name}`,
        message: `the ${p.kind === 'slotted' ? 'slot' : 'screw'} at ${mm(p.x)} along and ${mm(p.y)} across has no part of ${p.part} beneath`,
        safety: true,
      });
  return once(found);
};

const joints: Finder = (m) => {
  const members = m.of(membersNode);
  const names = new Set(members.map((x) => x.part));
  return Object.entries(m.all('joints') ?? {}).flatMap(([name, joint]): Contradiction[] => {
    const path = `joints.${name}`;
    const unknown = joint.between.find((p) => !names.has(p));
    if (unknown !== undefined)
      return [{ path: `${path}.between`, message: `there is no part "${unknown}"`, safety: false }];
    if (pairsOf(joint, members).length === 0)
      return [
        {
          path: `${path}.between`,
          message: `${joint.between.join(' and ')} meet nowhere`,
          safety: true,
        },
      ];
    return cuts(m, name);
  });
};

/** Joints that take more than there is, or are cut from faces that do not meet. */
function cuts(m: Model, name: string): Contradiction[] {
  const found: Contradiction[] = [];
  for (const place of m.of(jointsInPlaceNode).filter((p) => p.name === name)) {
    const { a, b, joint } = place;
    const path = `joints.${name}`;
    const faces = facesOf(place);
    if (joint.cutFrom !== undefined && joint.cutFrom !== faces && !place.tenoned)
      found.push({
        path: `${path}.cutFrom`,
        message: `${a.part} and ${b.part} lie so that the joint is cut from ${faces}, not from ${joint.cutFrom}: the parts stand the other way in the rest of the description`,
        safety: false,
      });
    const thin = thicknessAt(place);
    if (place.depth >= thin - 1e-6)
      found.push({
        path: `${path}.depth`,
        message: `a cut of ${mm(place.depth)} goes through a part ${mm(thin)} thick`,
        safety: true,
      });
    const most = place.tenoned
      ? sizeAlong(place.tenoned, place.tenoned === a ? b.runs : a.runs)
      : Math.max(sizeAlong(a, b.runs), sizeAlong(b, a.runs));
    if (joint.width !== undefined && joint.width > most + 1e-6)
      found.push({
        path: `${path}.width`,
        message: `a joint ${mm(joint.width)} wide is wider than its part, ${mm(most)}`,
        safety: false,
      });
  }
  return once(found);
}

export const jointContradictions: readonly Finder[] = [fixings, joints];
