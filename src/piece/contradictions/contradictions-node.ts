import type { PieceNode } from '../piece-graph.js';
import { whereKnown, type Contradiction } from './contradiction.js';
import { jointContradictions } from './joint-contradictions.js';
import { partContradictions } from './part-contradictions.js';
import { sumContradictions } from './sum-contradictions.js';

/** Every contradiction in the description. */
export const contradictionsNode: PieceNode<readonly Contradiction[]> = {
  name: 'contradictions',
  compute: (m) =>
    [...partContradictions, ...jointContradictions, ...sumContradictions].flatMap((find) =>
      whereKnown(find)(m),
    ),
};
