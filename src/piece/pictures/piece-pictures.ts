// Pictures of a piece to scale, drawn from the same numbers as its tables.
import { drawing, pxPerMm } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { grouped } from '../grouped.js';
import { jointsInPlaceNode } from '../joint-places.js';
import { membersNode } from '../member.js';
import type { PieceGraph, PieceNode } from '../piece-graph.js';
import { topFixingsNode } from '../top-fixings.js';
import { endShapes, frontShapes, planShapes, sectionShapes, type Drawn } from './view-shapes.js';
import { jointShapes } from './joint-shapes.js';

export const pictureNames = ['plan', 'front', 'end', 'section', 'joint'] as const;
export type PictureName = (typeof pictureNames)[number];

const titles: Readonly<Record<Exclude<PictureName, 'joint'>, string>> = {
  plan: 'Plan, front edge below',
  front: 'Front',
  end: 'End, front at the left',
  section: 'Section across, front at the left',
};

/** What is drawn, in millimetres. */
const drawnNode: PieceNode<Drawn> = {
  name: 'what is drawn',
  compute: (m) => ({
    top: {
      length: m.get('top', 'length') * 1000,
      width: m.get('top', 'width') * 1000,
      thickness: m.get('top', 'thickness') * 1000,
      endHeight: m.get('top', 'ends') === 'square' ? 0 : (m.get('top', 'endHeight') ?? 0) * 1000,
    },
    height: m.all('height') * 1000,
    members: m.of(membersNode),
    fixings: m.of(topFixingsNode),
  }),
};

/** Every joint at full size, to be printed and pricked through. */
export const jointTemplates = (graph: PieceGraph): ChartSpec[] =>
  [...grouped(graph.of(jointsInPlaceNode), (p) => p.name).values()].flatMap(([place]) =>
    place && place.depth > 0
      ? [drawing({ title: place.name, subtitle: 'Full size.', shapes: jointShapes(place), scale: pxPerMm })]
      : [],
  );

/** One picture. @throws InputError for a picture or a joint that there is not, or while the parts have no place */
export function piecePictures(graph: PieceGraph, which: PictureName, joint?: string): ChartSpec {
  if (!pictureNames.includes(which))
    throw new InputError(
      `got ${inspectValue(which)}, takes one of ${pictureNames.map((n) => inspectValue(n)).join(', ')}`,
    );
  const drawn = graph.of(drawnNode);
  if (which === 'joint') {
    const places = graph.of(jointsInPlaceNode);
    const names = [...new Set(places.map((p) => p.name))];
    const place = places.find((p) => joint === undefined || p.name === joint);
    if (!place)
      throw new InputError(
        `joint: got ${inspectValue(joint)}, takes ${names.map((n) => inspectValue(n)).join(', ') || 'a joint of the description; there is none'}`,
      );
    return drawing({
      title: `${place.name}, drawn apart`,
      subtitle: 'Sizes in mm.',
      shapes: jointShapes(place),
    });
  }
  const shapes = { plan: planShapes, front: frontShapes, end: endShapes, section: sectionShapes }[which](
    drawn,
  );
  return drawing({ title: titles[which], subtitle: 'Sizes in mm.', shapes });
}
