// Every screen of the forms looked at by axe-core, light and dark, wide and as a phone; and the keyboard alone.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { stripCount } from '../../dist/index.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds wrong, one line a rule and element. */
async function violations(page) {
  await page.evaluate(axe);
  const { violations: found } = await page.evaluate(() => globalThis.axe.run(document.body));
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
}

const screens = {
  'the first page': async (page) => {
    await page.waitForSelector('[data-question]');
  },
  'a search': async (page) => {
    await page.waitForSelector('[data-question]');
    await page.fill('#ask', 'clamps');
    await page.waitForSelector('.found li');
  },
  'a form with its answer': async (page) => {
    await page.goto(new URL('/#question=stripCount', page.url()).href);
    await page.fill('#q-topWidth', '640');
    await page.fill('#q-stripWidth', '48');
    await page.waitForSelector('[data-state=answer]');
  },
  'values tried': async (page) => {
    await screens['a form with its answer'](page);
    await page.click('text=Try values');
    await page.waitForSelector('.try .drawn svg');
    await page.getByLabel('and with').selectOption('stripWidth');
    await page.locator('.try .drawn svg', { hasText: 'as it is now' }).waitFor();
  },
  'an error': async (page) => {
    await page.goto(new URL('/#question=stripCount', page.url()).href);
    await page.fill('#q-topWidth', '640 m');
    await page.waitForSelector('.field-row.wrong');
  },
  'a form with a table': async (page) => {
    await page.goto(new URL('/#question=tipping', page.url()).href);
    await page.waitForSelector('.grid');
  },
  'my shop': async (page) => {
    await page.goto(new URL('/#shop', page.url()).href);
    await page.waitForSelector('.shop-page .field-row');
  },
  'a survey': async (page) => {
    await page.goto(new URL('/#survey', page.url()).href);
    await page.fill(
      '#survey-text',
      'Qty,Length (mm),Width (mm),Thickness (mm)\n2,2400,96,48\n1,2300,9600,48\n3,2200,96,48',
    );
    await page.waitForSelector('.survey-doubts li');
  },
};

const looks = Object.entries(screens).map(([name, open]) => [
  `accessible: ${name}`,
  async (bench) => {
    for (const width of [1280, 390]) {
      const { page, shot } = await bench.person({ viewport: { width, height: 844 } });
      await open(page);
      // Widths differ in layout and grounds in contrast: both grounds are looked at wide, the phone in one.
      for (const theme of width === 1280 ? ['light', 'dark'] : ['dark']) {
        const now = await page.evaluate(() => document.documentElement.dataset.theme);
        // By the button, so that pictures are drawn anew on the new ground.
        if (now !== theme) await page.click('[aria-label="Light or dark"]');
        await page.waitForTimeout(400);
        assert.deepEqual(await violations(page), [], `${width} px, ${theme}`);
        await shot(`${name.replaceAll(' ', '-')}-${width}-${theme}`);
      }
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= width, `${name} is ${wide} wide on ${width} px`);
    }
  },
]);

export default {
  ...Object.fromEntries(looks),

  async 'accessible: an answer with the keyboard alone'(bench) {
    const { page } = await bench.person();
    await page.waitForSelector('[data-question=stripCount]');
    await page.keyboard.press('/');
    await page.keyboard.type('how many strips');
    await page.waitForSelector('.found li');
    await page.keyboard.press('Enter');
    await page.waitForSelector('#q-topWidth:focus');
    await page.keyboard.type('800');
    await page.keyboard.press('Enter');
    await page.waitForSelector('#q-stripWidth:focus');
    await page.keyboard.type('48');
    await page.waitForSelector('[data-state=answer]');
    const { strips } = stripCount({ topWidth: '800 mm', stripWidth: '48 mm' });
    assert.ok((await page.innerText('.sentence')).includes(`${strips} strips`));
    await page.keyboard.press('Enter');
    assert.equal(await page.evaluate(() => document.activeElement?.textContent), 'Put into the notebook');
  },

  async 'accessible: Enter is not lost while the questions are on their way'(bench) {
    const { page, context } = await bench.person();
    let release;
    const held = new Promise((resolve) => (release = resolve));
    await context.route('**/recipe-worker-*.js', async (route) => {
      await held;
      await route.continue();
    });
    await page.reload();
    await page.waitForSelector('.chapter');
    await page.keyboard.press('/');
    await page.keyboard.type('how many strips');
    await page.keyboard.press('Enter');
    assert.ok(!page.url().includes('#question'));
    release();
    await page.waitForSelector('#q-topWidth:focus');
    assert.ok(page.url().includes('#question=stripCount'));
  },
};
