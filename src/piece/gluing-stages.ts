// The stages in which the top is glued: each slab of its strips, then the slabs to one another.
import { layUpNode } from './lay-up.js';
import type { PieceNode } from './piece-graph.js';

export interface GluingStage {
  readonly name: string;
  /** Slabs or strips that this stage brings together. */
  readonly glues: readonly string[];
  readonly joints: number;
  readonly width: number;
  /** Width of the outermost row, under the clamps' pads. */
  readonly outer: number;
  /** Clamps that the description gives it. */
  readonly clamps?: number | undefined;
}

/** Names written in one text: "left, middle + right". */
export const namesIn = (text: string): string[] =>
  text
    .split(/\s*(?:,|\+|;|\band\b)\s*/)
    .map((s) => s.trim())
    .filter((s) => s !== '');

/** The stages as described, or each slab by itself and then all together. */
export const gluingStagesNode: PieceNode<readonly GluingStage[]> = {
  name: 'stages of gluing',
  compute: (m) => {
    const layUp = m.of(layUpNode);
    const byName = new Map(layUp.slabs.map((s) => [s.name, s]));
    const outer = layUp.rows[0] ?? 0;
    const own = (names: readonly string[], clamps?: number): GluingStage => {
      const slabs = names.flatMap((n) => byName.get(n) ?? []);
      const only = slabs.length === 1 ? slabs[0] : undefined;
      return {
        name: only ? only.name : `${slabs.length} slabs into one`,
        glues: names,
        joints: only ? only.strips - 1 : Math.max(0, slabs.length - 1),
        width: slabs.reduce((s, x) => s + x.width, 0),
        outer: only ? outer : Math.min(...slabs.map((s) => s.width), Infinity) || outer,
        clamps,
      };
    };
    const described = m.get('top', 'gluing');
    if (described !== undefined)
      return (
        described
          .map((stage) => own(namesIn(stage.glues), stage.clamps))
          // A stage of slabs that do not exist is reported as a contradiction.
          .filter((stage) => stage.width > 0)
      );
    const names = layUp.slabs.map((s) => s.name);
    return [...names.map((n) => own([n])), ...(names.length > 1 ? [own(names)] : [])];
  },
};
