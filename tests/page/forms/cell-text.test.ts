import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { removeField, setField, setName, withEdits } from '../../../src/page/forms/cell-text/edit-call.js';
import { plainValue } from '../../../src/page/forms/model/argument.js';
import { CodeText } from '../../../src/page/forms/cell-text/literal-text.js';
import { freeName, nameProblem, asName, renameIn } from '../../../src/page/forms/cell-text/rename.js';
import { givenOf, readCell, scopeOf } from '../../../src/page/forms/cell-text/read-cell.js';

const recipes = new Set(['stripCount', 'movementAcross', 'clampPlan']);
const read = (text: string) => readCell(text, recipes);
const firstCall = (text: string) => read(text).calls[0]!;
const set = (text: string, key: string, value: unknown): string =>
  withEdits(text, setField(text, firstCall(text), key, value));
const remove = (text: string, key: string): string =>
  withEdits(text, removeField(text, firstCall(text), key));

describe('reading a cell', () => {
  it('finds a call with its name and what is given', () => {
    const cell = read(
      "const strips = stripCount({ topWidth: '640 mm', jointing: 3, machineWidth: shop().thicknesserWidth, stripWidth: pile.boards[0].width, w });",
    );
    expect(cell.isCallsOnly).toBe(true);
    expect(cell.calls[0]).toMatchObject({ recipe: 'stripCount', name: 'strips' });
    expect(givenOf(cell.calls[0]!)).toEqual({
      topWidth: { type: 'value', value: '640 mm' },
      jointing: { type: 'value', value: 3 },
      machineWidth: { type: 'reference', name: 'shop()', path: ['thicknesserWidth'] },
      stripWidth: { type: 'reference', name: 'pile', path: ['boards', 0, 'width'] },
      w: { type: 'reference', name: 'w', path: [] },
    });
  });

  it('takes what it cannot follow as code', () => {
    const given = givenOf(
      firstCall("stripCount({ topWidth: '6' + '40 mm', stripWidth: f(x), jointing: `${a} mm` })"),
    );
    expect(Object.values(given).map(({ type }) => type)).toEqual(['code', 'code', 'code']);
  });

  it('finds no form in a loop, a function or a text that is broken', () => {
    expect(read('for (const w of ws) stripCount({ topWidth: w })').calls).toEqual([]);
    expect(read('const f = () => stripCount({})').calls).toEqual([]);
    expect(read('stripCount({ topWidth: ').isBroken).toBe(true);
    expect(read('stripCount({}); console.log(1)').isCallsOnly).toBe(false);
  });

  it('reads awaited calls, tables and constants', () => {
    const cell = read(
      "const w = '640 mm';\nconst m = await movementAcross({ width: w, strips: [{ timber: 'ash', width: '40 mm' }] });\nm;",
    );
    expect(cell.calls[0]?.name).toBe('m');
    expect(scopeOf([cell])['w']).toEqual({ value: { type: 'value', value: '640 mm' } });
    expect(cell.names).toEqual(['w', 'm']);
  });
});

describe('writing a field', () => {
  it('replaces the value alone', () => {
    expect(
      set("stripCount({ topWidth: '600 mm', /* kept */ jointing: '3 mm' }) // end", 'topWidth', '640 mm'),
    ).toBe("stripCount({ topWidth: '640 mm', /* kept */ jointing: '3 mm' }) // end");
  });

  it('adds in the style of the call, and removing it gives the same bytes', () => {
    for (const text of [
      'stripCount({})',
      "stripCount({ topWidth: '1 m' })",
      "stripCount({ topWidth: '1 m', })",
      "stripCount({\n  topWidth: '1 m',\n})",
      "stripCount({\n  topWidth: '1 m', // across\n});",
      "stripCount({\n  topWidth: '1 m' // across\n});",
      'const strips = stripCount({\n});\nstrips;',
    ]) {
      const added = set(text, 'stripWidth', '48 mm');
      expect(givenOf(firstCall(added))['stripWidth']).toEqual({ type: 'value', value: '48 mm' });
      expect(read(added).isBroken).toBe(false);
      expect(remove(added, 'stripWidth')).toBe(text);
    }
  });

  it('writes references as code and one cell of a table alone', () => {
    expect(
      set("clampPlan({ outerWidth: '48 mm' })", 'outerWidth', new CodeText('strips.stripFinished')),
    ).toBe('clampPlan({ outerWidth: strips.stripFinished })');
    const table =
      "movementAcross({ strips: [{ timber: 'ash', /* a */ width: '40 mm' }, { timber: 'oak', width: '50 mm' }] })";
    expect(
      set(table, 'strips', [
        { timber: 'ash', width: '41 mm' },
        { timber: 'oak', width: '50 mm' },
      ]),
    ).toBe(table.replace('40 mm', '41 mm'));
  });

  it('gives a shorthand its own value and wins over a spread', () => {
    expect(set('stripCount({ topWidth })', 'topWidth', '650 mm')).toBe("stripCount({ topWidth: '650 mm' })");
    expect(set("stripCount({ topWidth: '1 m', ...pine })", 'topWidth', '650 mm')).toBe(
      "stripCount({ topWidth: '1 m', ...pine, topWidth: '650 mm' })",
    );
  });

  const key = fc.constantFrom('topWidth', 'stripWidth', 'jointing', 'finalTrim', 'machineWidth');
  const value = fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.integer(),
    fc.boolean(),
    fc.array(fc.record({ a: fc.string() }), { maxLength: 3 }),
  );
  const comment = fc.constantFrom('', ' // a note, with a comma', ' /* { a, b } */', '\n  // alone');
  const cell = fc
    .tuple(
      fc.uniqueArray(key, { maxLength: 5 }),
      fc.boolean(),
      fc.boolean(),
      fc.array(comment, { minLength: 5, maxLength: 5 }),
    )
    .map(([keys, isLong, hasComma, comments]) => {
      const parts = keys.map((k, i) => `${k}: '${i} mm'`);
      if (parts.length === 0 && !isLong) return 'const s = stripCount({}); // end';
      if (!isLong)
        return `const s = stripCount({ ${parts.join(', ')}${hasComma && parts.length > 0 ? ',' : ''} }); // end`;
      const lines = parts.map((p, i) => `  ${p}${i < parts.length - 1 || hasComma ? ',' : ''}${comments[i]}`);
      return `// head\nconst s = stripCount({\n${lines.join('\n')}\n});`;
    });
  const comments = (text: string): string[] => text.match(/\/\*.*?\*\/|\/\/.*/g) ?? [];

  it('keeps every other field and every comment, whatever the cell', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(cell, key, value, (text, k, v) => {
        const before = givenOf(firstCall(text));
        const after = set(text, k, v);
        expect(read(after).isBroken).toBe(false);
        const given = givenOf(firstCall(after));
        const { [k]: written, ...others } = given;
        const { [k]: _former, ...former } = before;
        expect(others).toEqual(former);
        expect(plainValue(written!)).toEqual(v);
        expect(comments(after).filter((c) => comments(text).includes(c))).toHaveLength(comments(text).length);
        expect(set(after, k, v)).toBe(after);
        const gone = remove(after, k);
        expect(read(gone).isBroken).toBe(false);
        expect(givenOf(firstCall(gone))).toEqual(former);
        if (!(k in before)) expect(gone).toBe(text);
      }),
      { numRuns: 200 },
    );
  });
});

describe('names', () => {
  it('are given, changed and checked', () => {
    const text = 'stripCount({})';
    expect(withEdits(text, setName(text, firstCall(text), 'strips'))).toBe('const strips = stripCount({})');
    expect(asName('hall top')).toBe('hallTop');
    expect(nameProblem('await', new Set())).toMatch(/meaning of its own/);
    expect(nameProblem('2by4', new Set())).toMatch(/begins with a figure/);
    expect(freeName('strips', new Set(['strips', 'strips2']))).toBe('strips3');
  });

  it('are changed by what is parsed: not in texts, comments, fields or inner scopes', () => {
    const text =
      "const strips = stripCount({}); // strips\nclampPlan({ outerWidth: strips.stripFinished, note: 'strips', strips, o: a.strips });\nconst f = (strips: number) => strips + 1;";
    expect(withEdits(text, renameIn(text, 'strips', 'staves'))).toBe(
      "const staves = stripCount({}); // strips\nclampPlan({ outerWidth: staves.stripFinished, note: 'strips', strips: staves, o: a.strips });\nconst f = (strips: number) => strips + 1;",
    );
  });
});
