import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { templateSheets } from '../../src/notes/template-sheets.js';
import { drawing } from '../../src/charts/drawing.js';
import { halfLap } from '../../src/recipes/joinery/half-lap.js';
import { pieceWeight } from '../../src/recipes/moisture/piece-weight.js';

const lap = (widthA: string) => halfLap({ widthA, widthB: '150 mm', thickness: '45 mm' });
/** The widest box of a drawing over all sheets, in mm at 96 px to the inch. */
async function widthOf(widthA: string): Promise<number> {
  const html = await templateSheets(lap(widthA)).toHtml();
  const boxes = [...html.matchAll(/viewBox="([\d.]+) ([\d.]+) 718[\d.]* [\d.]+"/g)];
  return boxes.length === 0 ? 0 : Math.max(...boxes.map((m) => Number(m[1])));
}

describe('a template', () => {
  it('takes more sheets for a wider joint, none of them fitted', async () => {
    // The last sheet of the wider one begins further to the right by what the joint is wider, to a sheet.
    const sheet = (180 / 25.4) * 96;
    const further = (await widthOf('540 mm')) - (await widthOf('180 mm'));
    expect(further / sheet).toBeGreaterThanOrEqual(2);
    expect(further / sheet).toBeLessThanOrEqual(4);
  });
  it('is refused where it would be fitted to the page, or is none', () => {
    expect(() => templateSheets(lap('1400 mm'))).toThrow(InputError);
    expect(() => templateSheets(lap('1400 mm'))).toThrow(/at most 1\.5 m wide/);
    const fitted = drawing({
      shapes: [{ kind: 'rectangle', x: 0, y: 0, width: 10, height: 10 }],
      title: 'x',
    });
    expect(() => templateSheets([fitted])).toThrow(/full size/);
    expect(() => templateSheets(pieceWeight(pieceWeight.example))).toThrow(
      /takes the result of a recipe that draws/,
    );
  });
});
