import { describe, expect, it } from 'vitest';
import { mulberry32 } from '../../src/engine/random.js';

describe('the seeded generator', () => {
  // mulberry32 written out again in whole numbers of any size, as its author describes it.
  function* big(seed: bigint) {
    const cut = (n: bigint) => BigInt.asUintN(32, n);
    for (let s = cut(seed); ;) {
      s = cut(s + 0x6d2b79f5n);
      let t = cut((s ^ (s >> 15n)) * (s | 1n));
      t = cut(t ^ (t + cut((t ^ (t >> 7n)) * (t | 61n))));
      yield Number(cut(t ^ (t >> 14n))) / 2 ** 32;
    }
  }
  it.each([0, 1, 7, 4_000_000_000, 4_294_967_295])(
    'from seed %d agrees with whole numbers of any size',
    (seed) => {
      const other = big(BigInt(seed));
      const random = mulberry32(seed);
      for (let i = 0; i < 300; i++) expect(random()).toBe(other.next().value);
    },
  );
});
