// Lays up one pile and prints the plan, both plain JSON in whole millimetres, so that a checker from elsewhere can verify
// what topFromPile finds:  node tests/bench/pile.mjs --instance FILE.json [--seconds N]
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { topFromPile } from '../../dist/index.js';

const { values } = parseArgs({
  options: { instance: { type: 'string' }, seconds: { type: 'string', default: '5' } },
});
if (values.instance === undefined) {
  console.error('pile: takes --instance FILE.json, and --seconds N for a longer search');
  process.exit(2);
}
const instance = JSON.parse(readFileSync(values.instance, 'utf8'));
if (instance.format !== 'pile-instance/1') {
  console.error(`pile: format: got ${JSON.stringify(instance.format)}, takes "pile-instance/1"`);
  process.exit(2);
}
if (instance.rules.rip) {
  console.error('pile: rules.rip: boards laid flat are not ripped; takes false');
  process.exit(2);
}
const mm = (n) => `${n} mm`;
const { top, shop, rules } = instance;
const result = await topFromPile({
  boards: instance.boards.map((b) => ({
    name: b.id,
    count: b.count ?? 1,
    length: mm(b.length),
    width: mm(b.width),
    thickness: mm(b.thickness),
    endLeft: mm(b.endLeft ?? 0),
    endRight: mm(b.endRight ?? 0),
    // A gap over the whole width comes off whole: the fixed loss in thickness.
    cup: mm(b.allowance ?? 0),
    ...(b.faults?.length
      ? { faultsAt: `${b.faults.map(([from, to]) => `${from}-${to}`).join('; ')} mm` }
      : {}),
  })),
  topLength: mm(top.length),
  spare: mm(top.spare ?? 0),
  width: mm(top.width),
  ...(top.thickness === undefined ? {} : { thickness: mm(top.thickness) }),
  lay: top.lay === 'edge' ? 'on edge' : 'flat',
  kerf: mm(shop.kerf),
  plane: mm(shop.planeFace),
  jointing: mm(shop.jointEdge),
  slabJointing: mm(shop.slabJointing ?? 0),
  widestSlab: mm(shop.machineWidth),
  leastRow: '1 mm',
  leastPiece: mm(rules.leastPiece),
  stagger: mm(rules.stagger),
  maxJoints: rules.mostJoints,
  timeLimit: `${values.seconds} s`,
});

const whole = (q) => Math.round(q.in('mm') * 1000) / 1000;

/** Pieces of one board, by the strip and the clear length they come from. */
function boardsOf(pieces) {
  const boards = new Map();
  for (const p of pieces) {
    const key = `${p.board}#${p.copy}`;
    boards.set(key, [...(boards.get(key) ?? []), p]);
  }
  return [...boards.values()].map((own) => ({
    board: own[0].board,
    copy: own[0].copy,
    sections: sectionsOf(own),
  }));
}

/** Each run of pieces that no other overlaps along the board is a section; its strips lie side by side. */
function sectionsOf(own) {
  const sorted = [...own].sort((a, b) => a.boardFrom.value - b.boardFrom.value);
  const sections = [];
  for (const p of sorted) {
    const [from, to] = [whole(p.boardFrom), whole(p.boardFrom) + whole(p.length)];
    let section = sections.at(-1);
    if (section === undefined || from >= section.to)
      sections.push((section = { from, to, strips: new Map() }));
    section.to = Math.max(section.to, to);
    const strip = `${whole(p.stripFrom)}-${whole(p.stripTo)}`;
    section.strips.set(strip, [...(section.strips.get(strip) ?? []), { id: p.piece, from, to }]);
  }
  return sections.map((s) => ({
    from: s.from,
    to: s.to,
    strips: [...s.strips].map(([strip, pieces]) => {
      const [from, to] = strip.split('-').map(Number);
      return { from, to, pieces };
    }),
  }));
}

const slabs = [];
result.rows.forEach((row, r) => (slabs[row.slab - 1] ??= []).push(r));
console.log(
  JSON.stringify(
    {
      format: 'pile-plan/1',
      instance: instance.name,
      lay: top.lay,
      thickness: whole(result.thickness),
      boards: boardsOf(result.pieces),
      rows: result.rows.map((row, r) => ({
        pieces: result.pieces.filter((p) => p.row === r + 1).map((p) => p.piece),
        width: whole(row.width),
      })),
      slabs,
      width: whole(result.foundWidth),
      bound: whole(result.widthBound),
      verdict: result.verdict,
    },
    null,
    1,
  ),
);
