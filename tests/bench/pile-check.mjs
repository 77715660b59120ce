// Checks a plan against its instance, both in the exchange format. It shares no code with the search and reads nothing but
// the two objects; every rule of the format is looked at anew. Millimetres.

const eps = 1e-6;

/** Every rule that a plan breaks, in words. */
export function planFaults(instance, plan) {
  const wrong = [];
  const say = (text) => wrong.push(text);
  const pieces = piecesOf(instance, plan, say);
  checkRows(instance, plan, pieces, say);
  checkSlabs(instance, plan, say);
  return wrong;
}

const gap = (a, b) => Math.max(a.from - b.to, b.from - a.to);

/** All pieces by their ids, after a look at how boards are cut into sections, strips and pieces. */
function piecesOf(instance, plan, say) {
  const kerf = instance.shop.kerf;
  const needed = plan.thickness + 2 * instance.shop.planeFace;
  const pieces = new Map();
  const seen = new Set();
  for (const cut of plan.boards) {
    const board = instance.boards.find((b) => b.id === cut.board);
    const name = `${cut.board} copy ${cut.copy}`;
    if (!board) {
      say(`${name}: no such board`);
      continue;
    }
    if (seen.has(name)) say(`${name}: cut twice`);
    seen.add(name);
    if (!(cut.copy >= 1 && cut.copy <= (board.count ?? 1))) say(`${name}: no such copy`);
    apart(cut.sections, kerf, (text) => say(`${name}: sections ${text}`));
    for (const section of cut.sections) {
      checkSection(board, section, name, say);
      apart(section.strips, kerf, (text) => say(`${name}: strips ${text}`));
      for (const strip of section.strips) {
        checkStrip(instance, plan, board, strip, needed, (text) => say(`${name}: ${text}`));
        apart(strip.pieces, kerf, (text) => say(`${name}: pieces ${text}`));
        for (const piece of strip.pieces) {
          if (piece.from < section.from - eps || piece.to > section.to + eps)
            say(`${piece.id}: outside its section`);
          if (pieces.has(piece.id)) say(`${piece.id}: stands twice`);
          const across =
            plan.lay === 'flat' ? strip.to - strip.from : board.thickness - (board.allowance ?? 0);
          pieces.set(piece.id, { ...piece, across, tone: board.tone, used: false });
        }
      }
    }
  }
  return pieces;
}

function apart(list, kerf, say) {
  for (let i = 0; i < list.length; i++)
    for (let j = 0; j < i; j++)
      if (gap(list[i], list[j]) < kerf - eps)
        say(`${list[i].from}-${list[i].to} less than a kerf from ${list[j].from}-${list[j].to}`);
}

function checkSection(board, section, name, say) {
  const [left, right] = [board.endLeft ?? 0, board.length - (board.endRight ?? 0)];
  if (section.from < left - eps || section.to > right + eps)
    say(`${name}: a section reaches into a docked end`);
  for (const [from, to] of board.faults ?? [])
    if (section.from < to - eps && section.to > from + eps)
      say(`${name}: a section holds the fault ${from}-${to}`);
}

function checkStrip(instance, plan, board, strip, needed, say) {
  if (strip.from < -eps || strip.to > board.width + eps) say('a strip lies outside the board');
  const flatHeight = board.thickness - (board.allowance ?? 0);
  if (plan.lay === 'flat' && flatHeight < needed - eps) say(`${flatHeight} thick, ${needed} needed`);
  if (plan.lay === 'edge' && strip.to - strip.from < needed - eps)
    say(`a strip ${strip.to - strip.from} high, ${needed} needed`);
  const rips = instance.rules.rip === true || instance.rules.rip === 'yes';
  if (plan.lay === 'flat' && !rips && (strip.from > eps || strip.to < board.width - eps))
    say('ripped, which is not allowed');
}

function checkRows(instance, plan, pieces, say) {
  const { top, rules, shop } = instance;
  const rowLength = top.length + top.spare;
  let before = [];
  plan.rows.forEach((row, r) => {
    const own = row.pieces.map((id) => pieces.get(id));
    if (own.some((p) => p === undefined)) return say(`row ${r + 1}: a piece that is not cut`);
    for (const p of own) {
      if (p.used) say(`row ${r + 1}: ${p.id} is laid twice`);
      p.used = true;
    }
    const lengths = own.map((p) => p.to - p.from);
    const sum = lengths.reduce((a, b) => a + b, 0);
    if (Math.abs(sum - rowLength) > 0.01) say(`row ${r + 1}: ${sum} long`);
    if (own.length - 1 > rules.mostJoints) say(`row ${r + 1}: too many joints`);
    lengths.forEach((l, i) => {
      const ends = Number(i === 0) + Number(i === lengths.length - 1);
      if (l - (ends * top.spare) / 2 < rules.leastPiece - eps)
        say(`row ${r + 1}: a piece shows ${l} less its spare`);
    });
    if (row.width > Math.min(...own.map((p) => p.across)) - shop.jointEdge + 0.001)
      say(`row ${r + 1}: wider than its narrowest piece`);
    if (row.width > shop.machineWidth + eps) say(`row ${r + 1}: wider than the machine`);
    if (rules.tones === 'apart' && new Set(own.map((p) => p.tone)).size > 1) say(`row ${r + 1}: two tones`);
    const joints = [];
    lengths.slice(0, -1).reduce((at, l) => (joints.push(at + l), at + l), 0);
    if (joints.some((x) => before.some((y) => Math.abs(x - y) < rules.stagger - 0.01)))
      say(`row ${r + 1}: joints nearer than the stagger`);
    before = joints;
  });
  for (const p of pieces.values()) if (!p.used) say(`${p.id}: cut and not laid`);
}

function checkSlabs(instance, plan, say) {
  const { shop } = instance;
  const order = plan.slabs.flat();
  if (order.length !== plan.rows.length || order.some((r, i) => r !== i))
    say('slabs do not hold every row once, in order');
  let total = 0;
  plan.slabs.forEach((slab, i) => {
    const width = slab.reduce((s, r) => s + plan.rows[r].width, 0);
    if (width > shop.machineWidth + 0.01) say(`slab ${i + 1}: ${width} wide`);
    total += width - shop.slabJointing;
  });
  if (Math.abs(Math.max(0, total) - plan.width) > 0.01) say(`${plan.width} wide said, ${total} by its rows`);
}

/** Rough volume of the boards cut, less full-width offcuts of at least the least piece, in m³. */
export function timberOf(instance, plan) {
  let volume = 0;
  for (const cut of plan.boards) {
    const b = instance.boards.find((x) => x.id === cut.board);
    volume += b.length * b.width * b.thickness;
  }
  return volume / 1e9;
}
