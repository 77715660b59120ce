// What gluing takes: the glue of every joint, and the clamps of every stage.
import { clampPlan } from '../recipes/lamination/clamp-plan.js';
import { glueQuantity } from '../recipes/lamination/glue-quantity.js';
import { gluingStagesNode, type GluingStage } from './gluing-stages.js';
import { isHardwood } from './hardwood.js';
import { jointHeightNode, layUpNode } from './lay-up.js';
import type { Model, PieceNode } from './piece-graph.js';
import { ask, placed, type Asked } from './recipe-ask.js';
import { gluedLengthNode } from './top-length.js';

/** Glue for every joint of the top. */
export const glueNode: PieceNode<Asked<typeof glueQuantity.outputs>> = {
  name: 'glue',
  compute: (m) =>
    ask(m, glueQuantity, {
      jointLength: () => m.of(gluedLengthNode),
      jointHeight: () => m.of(jointHeightNode),
      joints: () => Math.max(1, m.of(layUpNode).rows.length - 1),
      spread: () => m.get('gluing', 'spread'),
      waste: () => m.get('gluing', 'waste'),
    }),
};

const clampsOf = (m: Model, stage: GluingStage): Asked<typeof clampPlan.outputs> =>
  ask(
    m,
    clampPlan,
    {
      length: () => m.of(gluedLengthNode),
      jointHeight: () => m.of(jointHeightNode),
      timberKind: () => (isHardwood(m.get('top', 'timber')) ? 'hardwood' : 'softwood'),
      clampForce: () => m.get('gluing', 'clampForce'),
      outerWidth: () => placed('(stages of gluing)', stage.outer),
      pad: () => m.get('gluing', 'pad'),
      padLength: () => m.get('gluing', 'padLength'),
      reach: () => m.get('gluing', 'reach'),
      needReach: () =>
        m.get('gluing', 'reach') === undefined ? undefined : stage.width + 2 * m.get('gluing', 'pad'),
    },
    stage.name,
  );

/** Clamps of each stage. */
export const clampsNode: PieceNode<
  readonly { readonly stage: GluingStage; readonly asked: Asked<typeof clampPlan.outputs> }[]
> = {
  name: 'clamps',
  compute: (m) =>
    m
      .of(gluingStagesNode)
      .filter((s) => s.joints > 0)
      .map((stage) => ({ stage, asked: clampsOf(m, stage) })),
};
