import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { splayDrawing } from './splay-drawing.js';

const n = variable('count', 'number of sides');
const s = variable('angle', 'slope of a side from the flat', { unit: 'deg' });
const deg = (label: string) => variable('angle', label, { unit: 'deg' });

// The manual prints figures without their formula: 154 of them, and all but one agree to the last digit.
const mitre = formula({
  symbol: 'M',
  result: deg('mitre: gauge or saw head off square'),
  expression: 'atan(cos(s) tan(pi / n))',
  variables: { s, n },
  source: cite('saw-manual-compound', 'chart of compound angles, p. 24, whose figures it gives'),
  basis: 'geometry',
});
const bevel = formula({
  symbol: 'B',
  result: deg('bevel: blade off square'),
  expression: 'asin(sin(s) sin(pi / n))',
  variables: { s, n },
  source: cite('saw-manual-compound', 'chart of compound angles, p. 24, whose figures it gives'),
  basis: 'geometry',
});
const lean = formula({
  symbol: 'l',
  result: deg('lean of a side from upright'),
  expression: '90 deg - s',
  variables: { s },
  basis: 'definition',
});
const dihedral = formula({
  symbol: 'D',
  result: deg('angle between the faces of two sides'),
  expression: '180 deg - 2 asin(sin(s) sin(pi / n))',
  variables: { s, n },
  basis: 'geometry',
});

/**
 * Saw settings for the mitred corners of a box, hopper or planter whose sides slope: any number of equal sides. Slope 0
 * is a flat frame, 90 degrees an upright box.
 */
export const splayedCorner = recipe({
  name: 'splayedCorner',
  title: 'Mitres of a box with sloping sides',
  topic: 'joinery',
  about:
    'Mitre and bevel for the corners of a frame, hopper or box of equal sides that slope; slope 0° is flat on the bench, 90° upright.',
  sources: [cite('saw-manual-compound', 'chart of compound angles, p. 24')],
  inputs: {
    sides: field.count({ symbol: 'n', label: 'number of sides', min: 3, max: 100 }),
    slope: field.angle({
      symbol: 's',
      label: 'slope',
      help: 'Slope of a side from the flat.',
      min: '0 deg',
      max: '90 deg',
    }),
  },
  steps: [mitre, bevel, lean, dihedral],
  outputs: {
    mitre: out.angle({ symbol: 'M', label: 'mitre setting', help: 'Gauge or saw head off square.' }),
    bevel: out.angle({ symbol: 'B', label: 'bevel setting', help: 'Blade off square.' }),
    lean: out.angle({ symbol: 'l', label: 'lean', help: 'Lean of a side from upright.' }),
    between: out.angle({
      symbol: 'D',
      label: 'dihedral angle',
      help: 'Angle between the faces of two sides.',
    }),
  },
  cautions: [
    danger(
      'hold the work with a stop and a clamp, keep hands away, and check that the guard still moves freely: a tilted blade closes on small pieces',
    ),
    note(
      'cut a corner from scrap first: with many sides a tenth of a degree at each cut adds up to a gap in the last joint',
    ),
  ],
  chart: (_, answer) => splayDrawing(answer),
  sentence: 'Set the mitre to {mitre} and tilt the blade to {bevel}.',
  example: { sides: 6, slope: '60 deg' },
});
