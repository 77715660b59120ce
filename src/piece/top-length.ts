import { mitredEnd } from '../recipes/joinery/mitred-end.js';
import { need } from './open-question.js';
import type { Model, PieceNode } from './piece-graph.js';
import { ask, type Asked } from './recipe-ask.js';

/** The mitred ends of a waterfall top; undefined where the ends are square. */
export const mitresNode: PieceNode<Asked<typeof mitredEnd.outputs> | undefined> = {
  name: 'mitred ends',
  compute: (m) =>
    m.get('top', 'ends') === 'square'
      ? undefined
      : ask(m, mitredEnd, {
          topLength: () => m.get('top', 'length'),
          endHeight: () => need(m.get('top', 'endHeight'), 'top.endHeight'),
          thickness: () => m.get('top', 'thickness'),
          kerf: () => m.get('shop', 'kerf'),
        }),
};

/** Length of the top's strips without the spare at their ends. */
export const gluedLengthOfTop = (m: Model): number =>
  m.of(mitresNode)?.out.stripLength ?? m.get('top', 'length');

/** Length of the strips as they are glued, spare ends included. */
export const gluedLengthNode: PieceNode<number> = {
  name: 'glued length',
  compute: (m) => gluedLengthOfTop(m) + m.get('top', 'spareEnds'),
};
