// Seeded piles for the bench, in the exchange format of tests/bench/pile.mjs. The data are invented.

/** Numbers between 0 and 1 from a seed: a linear congruential generator, so that a pile stays the same for good. */
export function numbersOf(seed) {
  let state = (seed * 2654435761 + 12345) >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
  for (let i = 0; i < 8; i++) next();
  return next;
}

/** One or two faults of 20 to 90 mm, apart from each other and inside the board. */
function faultsOf(length, between, random) {
  const faults = [];
  const count = random() < 0.5 ? 0 : random() < 0.7 ? 1 : 2;
  for (let k = 0; k < count; k++) {
    const from = between(Math.round((length * (k + 0.3)) / 2), Math.round((length * (k + 0.7)) / 2));
    faults.push([from, Math.min(length - 80, from + between(20, 90))]);
  }
  return faults.filter(([from, to]) => to > from);
}

/** A pile of `count` boards, copies counted; thickness null: as thick as the pile allows. Whole millimetres. */
export function instance(count, seed, { rip = false, lay = 'flat', thickness = 30, width = 100_000 } = {}) {
  const random = numbersOf(seed * 1000 + count);
  const between = (low, high) => Math.round(low + random() * (high - low));
  const boards = [];
  for (let made = 0; made < count;) {
    const copies = Math.min(count - made, random() < 0.25 ? between(2, 4) : 1);
    made += copies;
    const length = between(700, 2900);
    const kind = random();
    const [group, w, t] =
      kind < 0.5
        ? ['rafter', between(88, 104), between(44, 52)]
        : kind < 0.8
          ? ['floorboard', between(110, 165), between(34, 40)]
          : ['batten', between(60, 80), between(38, 46)];
    boards.push({
      id: `B${boards.length + 1}`,
      group,
      count: copies,
      length,
      width: w,
      thickness: t,
      endLeft: between(15, 60),
      endRight: between(15, 60),
      faults: faultsOf(length, between, random),
      allowance: random() < 0.2 ? between(1, 3) : 0,
      tone: random() < 0.5 ? 'light' : 'dark',
    });
  }
  return {
    format: 'pile-instance/1',
    name: `seeded pile ${seed} of ${count} boards${rip ? ', ripped' : ''}`,
    boards,
    top: { length: 1950, spare: 40, width, ...(thickness === null ? {} : { thickness }), lay },
    shop: { kerf: 3, planeFace: 1, jointEdge: 3, machineWidth: 330, slabJointing: 2 },
    rules: { leastPiece: 250, stagger: 150, mostJoints: 3, tones: 'mixed', rip },
  };
}
