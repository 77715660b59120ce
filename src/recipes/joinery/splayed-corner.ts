import { danger, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { splayPicture } from './splay-picture.js';

const n = letter('count', 'sides of the whole');
const s = letter('angle', 'slope of a side from the flat', { in: 'deg' });
const deg = (says: string) => letter('angle', says, { in: 'deg' });

// The chart's own formula is not printed; its 154 figures are, and all but one agree to the last digit.
const mitre = formula({
  symbol: 'M',
  gives: deg('mitre: gauge or saw head off square'),
  text: 'atan(cos(pi s / 180) tan(pi / n)) * 180 / pi',
  where: { s, n },
  source: cite('saw-manual-compound', 'chart of compound angles, p. 24, which it reproduces'),
  basis: 'geometry',
});
const bevel = formula({
  symbol: 'B',
  gives: deg('bevel: blade off square'),
  text: 'asin(sin(pi s / 180) sin(pi / n)) * 180 / pi',
  where: { s, n },
  source: cite('saw-manual-compound', 'chart of compound angles, p. 24, which it reproduces'),
  basis: 'geometry',
});
const lean = formula({
  symbol: 'l',
  gives: deg('lean of a side from upright'),
  text: '90 - s',
  where: { s },
  basis: 'definition',
});
const dihedral = formula({
  symbol: 'D',
  gives: deg('angle between the faces of two sides'),
  text: '180 - 2 asin(sin(pi s / 180) sin(pi / n)) * 180 / pi',
  where: { s, n },
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
    sides: field.count({ symbol: 'n', says: 'sides of the whole', min: 3, max: 100 }),
    slope: field.angle({ symbol: 's', says: 'slope of a side from the flat', min: '0 deg', max: '90 deg' }),
  },
  steps: [mitre, bevel, lean, dihedral],
  outputs: {
    mitre: out.angle({ symbol: 'M', says: 'mitre: gauge or saw head off square' }),
    bevel: out.angle({ symbol: 'B', says: 'bevel: blade off square' }),
    lean: out.angle({ symbol: 'l', says: 'lean of a side from upright' }),
    between: out.angle({ symbol: 'D', says: 'angle between the faces of two sides' }),
  },
  cautions: [
    danger(
      'a tilted blade closes on small pieces: hold the work with a stop and a clamp, keep hands away, and check that the guard still moves freely',
    ),
    note(
      'cut a corner from scrap first: with many sides a tenth of a degree at each cut adds up to a gap in the last joint',
    ),
  ],
  chart: (_, answer) => splayPicture(answer),
  example: { sides: 6, slope: '60 deg' },
});
