// Twenty questions about a porch bench, a piece that is in no notebook here, answered by forms alone. Each figure on the page is
// compared with the library's own result for the same values.
import assert from 'node:assert/strict';
import * as library from '../../dist/index.js';

/** Words typed into the search, the recipe they must lead to, what is given, and the figures looked at. */
const journeys = [
  [
    'how much will the seat shrink',
    'movementAcross',
    { width: '420 mm', timber: 'European oak', from: '15 %', to: '10 %' },
    ['change', 'finalWidth'],
  ],
  [
    'how many strips for the seat',
    'stripCount',
    { topWidth: '420 mm', stripWidth: '62 mm', machineWidth: '260 mm' },
    ['strips', 'spare'],
  ],
  [
    'how many clamps',
    'clampPlan',
    {
      length: '1600 mm',
      jointHeight: '38 mm',
      timberKind: 'hardwood',
      clampForce: 'I-beam bar (sash) clamp',
      outerWidth: '59 mm',
    },
    ['clamps', 'spacing'],
  ],
  [
    'how much glue',
    'glueQuantity',
    { jointLength: '1.6 m', jointHeight: '38 mm', joints: '6' },
    ['mass', 'area'],
  ],
  [
    'how heavy is the bench',
    'pieceWeight',
    { dimensions: '1600 x 420 x 38 mm', timber: 'European oak' },
    ['mass'],
  ],
  [
    'will the seat sag',
    'topSag',
    {
      length: '1600 mm',
      width: '420 mm',
      thickness: '38 mm',
      supports: '100 mm, 1500 mm',
      load: '1.5 kPa',
      grade: 'D30',
    },
    ['sag', 'allowed'],
  ],
  [
    'how dry does wood get in the porch',
    'equilibriumMoisture',
    { temperature: '12 degC', humidity: '72 %' },
    ['moisture'],
  ],
  ['how humid may the room be', 'humidityFor', { temperature: '18 degC', moisture: '11 %' }, ['humidity']],
  ['moisture by oven weighing', 'moistureByWeight', { wetMass: '112 g', ovenDryMass: '98 g' }, ['moisture']],
  [
    'will a board cup',
    'cupDepth',
    { width: '180 mm', timber: 'European oak', ringRadius: '140 mm', from: '15 %', to: '10 %' },
    ['cup'],
  ],
  [
    'board feet and price',
    'boardMeasure',
    { length: '2.4 m', width: '150 mm', thickness: '27 mm', count: '9' },
    ['volume'],
  ],
  [
    'how flat is it after planing a cupped board',
    'flatteningLoss',
    { thickness: '50 mm', width: '150 mm', length: '1.7 m', cup: '3 mm', bow: '6 mm' },
    ['dressedThickness'],
  ],
  [
    'how many layers for a thick seat',
    'layerCount',
    { topThickness: '38 mm', stripThickness: '16 mm' },
    ['layers'],
  ],
  [
    'is the frame square',
    'squareness',
    { width: '1400 mm', height: '420 mm', diagonalA: '1463 mm', diagonalB: '1460 mm' },
    ['outOfSquare'],
  ],
  ['mark a half lap', 'halfLap', { widthA: '60 mm', widthB: '45 mm', thickness: '38 mm' }, ['depth']],
  ['biscuits along the joint', 'biscuitSpacing', { length: '1600 mm' }, ['count']],
  ['compound mitre for a sloping box', 'splayedCorner', { sides: '4', slope: '12 deg' }, ['mitre']],
  [
    'how smooth will the planer cut',
    'cutterMarks',
    { spindleSpeed: '5000 rpm', knives: '2', feed: '5 m/min' },
    ['pitch'],
  ],
  ['pound cut of shellac', 'shellacCut', { cut: '240 g/L', volume: '400 mL' }, ['mass']],
  [
    'how much oil for the bench',
    'finishQuantity',
    { surfaces: { length: '1600 mm', width: '420 mm', thickness: '38 mm' }, coats: '3', coverage: '14 m2/L' },
    ['volume', 'tins'],
  ],
];

/** Writes one value into the box, list or parts of a field, as a person does. */
async function give(page, name, value) {
  const row = page.locator(`[data-field="${name}"]`);
  if (!(await row.isVisible())) await page.locator('.more-fields > summary').click();
  if (typeof value === 'object') {
    for (const [part, text] of Object.entries(value)) await page.locator(`#q-${name}-${part}`).fill(text);
    return;
  }
  const kind = row.locator('select.kind');
  const options = row.locator('.chosen option, .box > select:only-child option');
  const isWord = (await options.allTextContents()).includes(value);
  if (isWord) await options.locator('xpath=..').selectOption(value);
  else {
    if ((await kind.count()) > 0 && (await row.locator('input').count()) === 0)
      await kind.selectOption({ index: 1 });
    await row.locator('input').first().fill(value);
  }
}

/** The figure on the page against the library's, to the last digit shown. */
function sameFigure(shown, quantity, what) {
  const [, sign, digits, unit] = /^([−-]?)([\d.,\s\u2009\u202f]+)\s*(.*?)(?: ·.*)?$/.exec(shown) ?? [];
  assert.ok(digits !== undefined, `${what}: ${shown}`);
  const plain = digits.replace(/[\s\u2009\u202f,]/g, '');
  const number = Number(plain) * (sign === '' ? 1 : -1);
  const expected = typeof quantity === 'number' ? quantity : quantity.in(unitName(unit));
  const half = 0.5 * 10 ** -(plain.split('.')[1]?.length ?? 0);
  const slack = Math.max(half, Math.abs(expected) * 0.006);
  assert.ok(
    Math.abs(number - expected) <= slack * 1.0001,
    `${what}: the page has ${shown}, the library ${expected}`,
  );
}

const unitName = (unit) =>
  unit
    .replace('²', '2')
    .replace('³', '3')
    .replace('°C', 'degC')
    .replace(/^°$/, 'deg')
    .replace('µm', 'um')
    .trim();

const plainValue = (value) => {
  if (typeof value === 'object') return value;
  if (/^\d+$/.test(value)) return Number(value);
  return value.includes(', ') ? value.split(', ') : value;
};

export default Object.fromEntries(
  journeys.map(([words, recipe, given, figures]) => [
    `journey: ${words}`,
    async (bench) => {
      const me = await bench.person();
      const { page, troubles } = me;
      await page.waitForSelector('[data-question]');
      await page.fill('#ask', words);
      const item = page.locator('.found li', { hasText: library[recipe].title });
      await item.first().click();
      await page.waitForSelector(`[data-recipe=${recipe}]`);
      for (const [name, value] of Object.entries(given)) await give(page, name, value);
      await page.waitForSelector('[data-state=answer]');
      const inputs = Object.fromEntries(
        Object.entries(given).map(([name, value]) => [name, plainValue(value)]),
      );
      const expected = await library[recipe](inputs);
      for (const figure of figures) {
        const cell = page.locator(`dd[data-output=${figure}]`);
        await cell.waitFor();
        sameFigure((await cell.innerText()).trim(), expected[figure], `${recipe}.${figure}`);
      }
      assert.deepEqual(troubles, []);
    },
  ]),
);
