// A pile as plain JSON in whole millimetres, what topFromPile takes for it, and its plan as plain JSON again.

const mm = (n) => `${n} mm`;
const whole = (q) => Math.round(q.in('mm') * 1000) / 1000;

/** What is wrong with an instance, in words; undefined where nothing is. */
export function refusal(instance) {
  if (instance === null || typeof instance !== 'object') return 'takes one JSON object';
  if (instance.format !== 'pile-instance/1')
    return `format: got ${JSON.stringify(instance.format)}, takes "pile-instance/1"`;
  if (!Array.isArray(instance.boards) || instance.boards.length === 0)
    return 'boards: takes a list of boards';
  for (const part of ['top', 'shop', 'rules'])
    if (instance[part] === null || typeof instance[part] !== 'object') return `${part}: takes an object`;
  if (!['flat', 'edge'].includes(instance.top.lay))
    return `top.lay: got ${JSON.stringify(instance.top.lay)}, takes "flat" or "edge"`;
  return undefined;
}

const yes = (value) => value === true || value === 'yes';

/** What topFromPile takes for an instance, searching for so many seconds. */
export function inputOf({ boards, top, shop, rules }, seconds, more = {}) {
  return {
    boards: boards.map((b) => ({
      name: String(b.id),
      ...(b.group === undefined ? {} : { group: String(b.group) }),
      count: b.count ?? 1,
      length: mm(b.length),
      width: mm(b.width),
      thickness: mm(b.thickness),
      endLeft: mm(b.endLeft ?? 0),
      endRight: mm(b.endRight ?? 0),
      ...(b.tone === undefined || b.tone === null ? {} : { tone: String(b.tone) }),
      // A gap over the whole width comes off whole: the fixed loss in thickness.
      cup: mm(b.allowance ?? 0),
      ...(b.faults?.length
        ? { faultsAt: `${b.faults.map(([from, to]) => `${from}-${to}`).join('; ')} mm` }
        : {}),
    })),
    topLength: mm(top.length),
    spare: mm(top.spare ?? 0),
    width: mm(top.width),
    ...(typeof top.thickness === 'number' ? { thickness: mm(top.thickness) } : {}),
    lay: top.lay === 'edge' ? 'on edge' : 'flat',
    kerf: mm(shop.kerf ?? 0),
    plane: mm(shop.planeFace ?? 0),
    jointing: mm(shop.jointEdge ?? 0),
    slabJointing: mm(shop.slabJointing ?? 0),
    widestSlab: mm(shop.machineWidth ?? 5000),
    leastRow: '1 mm',
    leastPiece: mm(rules.leastPiece),
    stagger: mm(rules.stagger ?? 0),
    maxJoints: rules.mostJoints,
    rip: yes(rules.rip) ? 'yes' : 'no',
    tones: rules.tones === 'apart' ? 'apart' : 'mixed',
    curves: false,
    whatIfs: false,
    rounds: 1_000_000_000,
    timeLimit: `${seconds} s`,
    ...more,
  };
}

/** The plan of a result, in the exchange format. */
export function planOf(instance, result) {
  const slabs = [];
  result.rows.forEach((row, r) => (slabs[row.slab - 1] ??= []).push(r));
  return {
    format: 'pile-plan/1',
    instance: instance.name,
    lay: instance.top.lay,
    thickness: whole(result.thickness),
    boards: boardsOf(result.pieces, instance.shop.kerf ?? 0),
    rows: result.rows.map((row, r) => ({
      pieces: result.pieces.filter((p) => p.row === r + 1).map((p) => p.piece),
      width: whole(row.width),
    })),
    slabs,
    width: whole(result.foundWidth),
    bound: whole(result.widthBound),
    verdict: result.verdict,
  };
}

/** Pieces of one board, by the strip and the clear length they come from. */
function boardsOf(pieces, kerf) {
  const boards = new Map();
  for (const p of pieces) {
    const key = `${p.board}#${p.copy}`;
    boards.set(key, [...(boards.get(key) ?? []), p]);
  }
  return [...boards.values()].map((own) => ({
    board: own[0].board,
    copy: own[0].copy,
    sections: sectionsOf(own, kerf),
  }));
}

/** Each run of pieces that no other overlaps along the board, its kerf counted, is a section; its strips lie side by side. */
function sectionsOf(own, kerf) {
  const sorted = [...own].sort((a, b) => a.boardFrom.value - b.boardFrom.value);
  const sections = [];
  for (const p of sorted) {
    const [from, to] = [whole(p.boardFrom), Math.round((whole(p.boardFrom) + whole(p.length)) * 1000) / 1000];
    let section = sections.at(-1);
    if (section === undefined || from >= section.to + kerf)
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
