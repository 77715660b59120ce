// How the top is glued up: its rows across, the slabs they make, and the length of the strips.
import { stripCount } from '../recipes/lamination/strip-count.js';
import { OpenQuestion } from './open-question.js';
import type { Model, PieceNode } from './piece-graph.js';
import { ask, type Asked } from './recipe-ask.js';
import { topPlanFits } from './plan-fit.js';

export interface SlabOfTop {
  readonly name: string;
  readonly strips: number;
  readonly width: number;
}

export interface LayUp {
  /** What it rests on: the search's plan, or strips of one width. */
  readonly basis: 'plan' | 'strips';
  /** Width of each row once jointed, from front to back. */
  readonly rows: readonly number[];
  readonly slabs: readonly SlabOfTop[];
  readonly gluedWidth: number;
}

/** Strips of one width, where the description gives them. */
export const stripsNode: PieceNode<Asked<typeof stripCount.outputs> | undefined> = {
  name: 'strips across',
  compute: (m) => {
    const strips = m.get('top', 'strips');
    if (strips === undefined) return undefined;
    return ask(m, stripCount, {
      topWidth: () => m.get('top', 'width'),
      stripWidth: () => strips.width,
      jointing: () => strips.jointing,
      finalTrim: () => m.get('top', 'trim'),
      machineWidth: () => m.get('shop', 'thicknesser'),
    });
  },
};

export const layUpNode: PieceNode<LayUp> = {
  name: 'lay-up of the top',
  compute: (m) => {
    const rows = rowsOf(m);
    const slabs = slabsOf(m, rows.rows);
    return { ...rows, slabs, gluedWidth: rows.rows.reduce((a, b) => a + b, 0) };
  },
};

function rowsOf(m: Model): Pick<LayUp, 'basis' | 'rows'> {
  const plan = m.plan('top');
  if (plan && m.of(topPlanFits).fits) {
    const wanted = m.get('top', 'width') + m.get('top', 'trim');
    const rows: number[] = [];
    let sum = 0;
    for (const row of plan.rows) {
      if (sum >= wanted - 1e-9) break;
      rows.push(row.width);
      sum += row.width;
    }
    return { basis: 'plan', rows };
  }
  const strips = m.of(stripsNode);
  if (strips)
    return {
      basis: 'strips',
      rows: Array.from({ length: strips.out.strips }, () => strips.out.stripFinished),
    };
  throw m.get('pile', 'survey') === undefined
    ? new OpenQuestion('top.strips', 'Give top.strips (width of a strip), or pile.survey and run the search.')
    : new OpenQuestion('', 'Run the search for the top, or give top.strips.');
}

/** Slabs as described, or as few as pass the thicknesser, as equal as whole rows allow. */
function slabsOf(m: Model, rows: readonly number[]): readonly SlabOfTop[] {
  const described = m.get('top', 'slabs');
  if (described !== undefined) {
    let from = 0;
    return Object.entries(described).map(([name, s]) => {
      const width = rows.slice(from, from + s.strips).reduce((a, b) => a + b, 0);
      from += s.strips;
      return { name, strips: s.strips, width };
    });
  }
  const machine = m.get('shop', 'thicknesser');
  for (let count = 1; count <= rows.length; count++) {
    const slabs = equalSlabs(rows, count);
    if (machine === 0 || count === rows.length || slabs.every((s) => s.width <= machine + 1e-9)) return slabs;
  }
  return equalSlabs(rows, 1);
}

function equalSlabs(rows: readonly number[], count: number): SlabOfTop[] {
  let from = 0;
  return Array.from({ length: count }, (_, i) => {
    const strips = Math.floor(rows.length / count) + (i < rows.length % count ? 1 : 0);
    const width = rows.slice(from, from + strips).reduce((a, b) => a + b, 0);
    from += strips;
    return { name: `slab ${i + 1}`, strips, width };
  });
}

/** Height of a glue joint before the slab is flattened. */
export const jointHeightNode: PieceNode<number> = {
  name: 'height of a glue joint',
  compute: (m) => m.get('top', 'thickness') + m.get('top', 'flattening'),
};
