// The conformance cases in Node; tests/browser/cell-worker.test.ts runs the same in a browser's worker.
import { tmpdir } from 'node:os';
import { describe, expect, it, vi } from 'vitest';
import { checkCell } from './check-cell.js';
import { conformanceCases } from './conformance-cases.js';
import { openNotebook } from './sample-cells.js';

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

describe('cells in Node', () => {
  it.each(conformanceCases)('$name', async ({ cells }) => {
    const { session, run } = await openNotebook(tmpdir());
    try {
      for (const [code, expected] of cells) {
        const { outputs, ...outcome } = await run(code);
        checkCell(code, expected, outcome, outputs);
      }
    } finally {
      await session.dispose();
    }
  });
  it('are enough cases', () => {
    expect(conformanceCases.flatMap(({ cells }) => cells).length).toBeGreaterThan(25);
  });
});
