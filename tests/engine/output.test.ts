import { describe, expect, it } from 'vitest';
import { out } from '../../src/engine/output.js';

// 254 mm is 10 in and 127 mm is 5 in, by definition of the inch; a share has no inches.
describe('an output', () => {
  it('of a list is shown in both measures where the trade has inches', () => {
    const lengths = out.list(out.length({ label: 'a length' }), { label: 'lengths' });
    expect(lengths.format([0.254, 0.127])).toEqual({ metric: '254 mm, 127 mm', inch: '10 in, 5 in' });
    expect(lengths.format([])).toEqual({ metric: '', inch: '' });
    const shares = out.list(out.share({ label: 'a share' }), { label: 'shares' });
    expect(shares.format([0.5, 0.25])).toEqual({ metric: '50 %, 25 %', inch: '' });
    expect(lengths.wrap([0.254])[0]?.in('in')).toBe(10);
  });

  it('of a record is shown by name', () => {
    const parts = out.record(out.length({ label: 'a length' }), { label: 'parts' });
    expect(parts.format({ rail: 0.254, leg: 0.127 })).toEqual({
      metric: 'rail 254 mm, leg 127 mm',
      inch: 'rail 10 in, leg 5 in',
    });
    const shares = out.record(out.share({ label: 'a share' }), { label: 'shares' });
    expect(shares.format({ oil: 0.5 })).toEqual({ metric: 'oil 50 %', inch: '' });
    expect(parts.wrap({ rail: 0.254 })['rail']?.in('mm')).toBe(254);
  });

  it('of a table tells how many rows it has', () => {
    const rows = out.table({ n: out.count({ label: 'n' }) }, { label: 'rows' });
    expect(rows.format([{ n: 1 }])).toEqual({ metric: '1 row', inch: '' });
    expect(rows.format([{ n: 1 }, { n: 2 }])).toEqual({ metric: '2 rows', inch: '' });
  });

  it('keeps its own unit, and yes and no as words', () => {
    expect(out.length({ label: 'depth', unit: 'um' }).format(0.0005).metric).toBe('500 µm');
    expect(out.flag({ label: 'whether' }).format(true).metric).toBe('yes');
    expect(out.flag({ label: 'whether' }).format(false).metric).toBe('no');
  });
});
