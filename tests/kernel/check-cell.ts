import { expect } from 'vitest';
import type { CellOutcome, NbOutput } from '../../src/kernel/session.js';
import type { Expected } from './conformance-cases.js';

/** Compares what a cell did with what is expected of it. */
export function checkCell(
  code: string,
  expected: Expected,
  outcome: CellOutcome,
  outputs: readonly NbOutput[],
): void {
  const { error } = outcome;
  if (expected.error === undefined) expect(error?.evalue, code).toBeUndefined();
  else expect(error?.evalue, code).toContain(expected.error);
  if (expected.at) expect([error?.line, error?.column], code).toEqual(expected.at);
  const printed = outputs.map((o) => (o.output_type === 'stream' ? o.text : '')).join('');
  if (expected.printed !== undefined) expect(printed, code).toBe(expected.printed);
  const shown = outputs.find((o) => o.output_type === 'execute_result');
  if (expected.result !== undefined) expect(shown?.data['text/plain'], code).toBe(expected.result);
  if (expected.shows) {
    const [type, part] = expected.shows;
    const bundles = outputs.flatMap((o) => ('data' in o ? [o.data] : []));
    expect(bundles.map((data) => JSON.stringify(data[type] ?? '')).join(' '), code).toContain(part);
  }
}
