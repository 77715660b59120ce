// Parts that cannot stand as they are described, and parts longer than any stock.
import { membersNode, middleOf, sizeAlong } from '../member.js';
import { normalOf } from '../joint-places.js';
import { cutPartsNode } from '../plan-fit.js';
import { mm } from '../question.js';
import { carriedRailsNode, meet } from '../supports.js';
import { once, type Contradiction, type Finder } from './contradiction.js';

const parts: Finder = (m) =>
  Object.entries(m.all('parts')).flatMap(([name, part]): Contradiction[] => {
    const forLegs = /wide face/.test(part.orientation ?? '');
    if (part.orientation !== undefined && forLegs !== (part.role === 'leg'))
      return [
        {
          path: `parts.${name}.orientation`,
          message: `${name} is a ${part.role} and cannot stand "${part.orientation}"`,
          safety: false,
        },
      ];
    return [];
  });

const standing: Finder = (m) => {
  const length = m.get('top', 'length');
  const width = m.get('top', 'width');
  const found: Contradiction[] = [];
  for (const member of m.of(membersNode)) {
    const at = `parts.${member.part}`;
    if (member.length <= 0 || sizeAlong(member, member.runs) <= 0)
      found.push({ path: at, message: `${member.part} ends before it begins`, safety: false });
    else if (member.role === 'rail' && (member.x[0] < -1e-6 || member.x[1] > length + 1e-6))
      found.push({ path: at, message: `${member.part} reaches past the ends of the top`, safety: false });
    else if (member.role !== 'foot' && (member.y[0] < -0.5 * width || member.y[1] > 1.5 * width))
      found.push({ path: at, message: `${member.part} stands far outside the top`, safety: false });
    else if (member.z[0] < -1e-6)
      found.push({ path: at, message: `${member.part} reaches below the floor`, safety: false });
  }
  return once(found);
};

const carried: Finder = (m) =>
  once(
    m
      .of(carriedRailsNode)
      .filter((r) => r.supports.length < 2)
      .map((r) => ({
        path: `parts.${r.member.part}`,
        message: `${r.member.part} stands on ${r.supports.length === 0 ? 'no leg' : 'one leg only'}`,
        safety: true,
      })),
  );

/** Parts in one place that no joint joins. */
const overlaps: Finder = (m) => {
  const members = m.of(membersNode);
  const joined = new Set(Object.values(m.all('joints') ?? {}).map((j) => [...j.between].sort().join('|')));
  const found: Contradiction[] = [];
  members.forEach((a, i) => {
    for (const b of members.slice(i + 1)) {
      if (a.part === b.part || joined.has([a.part, b.part].sort().join('|'))) continue;
      if (a.rise > 0 || b.rise > 0 || !meet(a, b, -1.5e-3)) continue;
      const where = normalOf(a, b) ? 'cross' : 'lie in one place';
      found.push({
        path: `parts.${a.part}`,
        message: `${a.part} and ${b.part} ${where} at ${mm(middleOf(a).x)} along, and no joint is described`,
        safety: false,
      });
    }
  });
  return once(found);
};

const stock: Finder = (m) => {
  const battens = m.get('pile', 'battens');
  if (battens === undefined) return [];
  const longest = Math.max(...battens.map((b) => b.length)) - 2 * m.get('shop', 'trimEachEnd');
  return m
    .of(cutPartsNode)
    .filter((p) => p.length > longest + 1e-6)
    .map((p) => ({
      path: `parts.${p.name}`,
      message: `${p.name} is ${mm(p.length)} long; the longest batten gives ${mm(longest)}`,
      safety: false,
    }));
};

export const partContradictions: readonly Finder[] = [parts, standing, carried, overlaps, stock];
