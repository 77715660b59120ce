// Opening, editing, running: what a person does all day.
import assert from 'node:assert/strict';
import { cell, output, type, until } from './bench.mjs';

/** The page draws cells and formulas a moment after it is asked: the figure must come to `value`, and is waited for. */
const comes = (figure, value) =>
  until(`${value} (${figure})`, async () => (await figure()) === value, 10_000);

export default {
  async 'the home page lists the chapters with a sentence each'(bench) {
    const { page, troubles, shot } = await bench.person();
    await comes(() => page.locator('.chapter').count(), 9);
    assert.match(
      await page.locator('.chapter').first().innerText(),
      /01[\s\S]*A first chapter[\s\S]*It calculates a board\./,
    );
    assert.equal(new URL(page.url()).search, '', 'the key is gone from the address');
    await shot('home');
    assert.deepEqual(troubles, []);
  },

  async 'nothing on the home page moves when its questions come: a click lands where it was aimed'(bench) {
    const { page } = await bench.person({ viewport: { width: 1280, height: 1600 } });
    const place = async () =>
      Math.round((await page.locator('button:has-text("New notebook")').boundingBox()).y);
    let free;
    const held = new Promise((resolve) => (free = resolve));
    await page.route('**/reckoner/notebooks', (route) => held.then(() => route.continue()));
    await page.route('**/*.js', async (route) => {
      // The recipes come in a worker's own file, after the page.
      if (/worker/.test(route.request().url())) await held;
      await route.continue();
    });
    await page.goto(bench.address, { waitUntil: 'commit' });
    await page.waitForSelector('.questions');
    assert.equal(await page.locator('.questions a[href]').count(), 0, 'the questions are held back');
    const before = await place();
    free();
    await page.waitForSelector('.questions a[href]');
    assert.ok(Math.abs((await place()) - before) <= 2, `moved from ${before} to ${await place()}`);
  },

  async 'a notebook opens, its text rendered, its kernel ready'(bench) {
    const me = await bench.person();
    const page = await me.open('01-a-first.ipynb');
    assert.match(await cell(page, 0).locator('h1').innerText(), /A first chapter/);
    await comes(() => page.locator('.jp-CodeCell').count(), 3);
    assert.deepEqual(me.troubles, []);
  },

  async 'a cell is edited and run with Shift + Enter'(bench) {
    const me = await bench.person();
    const page = await me.open('02-edit.ipynb');
    await type(page, 1, 'const parts = [1, 2, 3];\nparts.reduce((a, b) => a + b)');
    await page.keyboard.press('Shift+Enter');
    await until('the sum', async () => (await output(page, 1).allInnerTexts()).join('').includes('6'));
    assert.ok(
      await cell(page, 2).evaluate((node) => node.classList.contains('jp-mod-active')),
      'the next cell is the active one',
    );
  },

  async 'a type error is said in the cell, and the next run fixes it'(bench) {
    const me = await bench.person();
    const page = await me.open('02-edit.ipynb');
    await type(page, 1, "const n: number = 'nine';");
    await page.keyboard.press('Control+Enter');
    await until('the error', async () =>
      /not assignable|number/.test((await output(page, 1).allInnerTexts()).join('')),
    );
    await type(page, 1, 'const m: number = 9; m');
    await page.keyboard.press('Control+Enter');
    await until('the value', async () => (await output(page, 1).allInnerTexts()).join('').trim() === '9');
  },

  async 'run all runs every cell; the chart is drawn with its marks, the answer and workings stand beside it'(
    bench,
  ) {
    const me = await bench.person();
    const page = await me.open('01-a-first.ipynb');
    await page.click('[aria-label="Run all cells"]');
    await page.waitForSelector('.chart-output svg');
    const marks = await page.locator('.chart-output svg .mark-line path').count();
    assert.ok(marks >= 2, `lines of the curve family in the page: ${marks}`);
    assert.ok(
      (await page.locator('.chart-output svg .role-axis-label text').count()) > 5,
      'the axes have labels',
    );
    assert.match(await output(page, 2).innerText(), /Answer[\s\S]*9\.2/);
    await until(
      'the workings are typeset',
      async () => (await output(page, 2).locator('.katex').count()) > 0,
    );
    assert.match(await output(page, 1).innerText(), /901/);
    await until('the print', async () => /done/.test((await output(page, 3).allTextContents()).join('')));
    await me.shot('ran');
    assert.deepEqual(me.troubles, []);
  },

  async 'Tab completes the fields of a recipe'(bench) {
    const me = await bench.person();
    const page = await me.open('02-edit.ipynb');
    await type(page, 1, 'equilibriumMo');
    await page.keyboard.press('Tab');
    await until(
      'the completed name',
      async () =>
        (await page.locator('.jp-Completer:not(.lm-mod-hidden)').count()) > 0 ||
        /equilibriumMoisture/.test(await cell(page, 1).locator('.cm-content').innerText()),
    );
    if ((await page.locator('.jp-Completer:not(.lm-mod-hidden)').count()) > 0)
      await page.keyboard.press('Enter');
    await until('the name in the cell', async () =>
      /equilibriumMoisture/.test(await cell(page, 1).locator('.cm-content').innerText()),
    );
    await type(page, 1, 'equilibriumMoisture({ ');
    await page.keyboard.press('Tab');
    await page.waitForSelector('.jp-Completer:not(.lm-mod-hidden)').catch(() => undefined);
    const offers = await page.locator('.jp-Completer-match').allInnerTexts();
    assert.ok(
      offers.some((offer) => /humidity/.test(offer)),
      `offered: ${offers.join(', ')}`,
    );
    await me.shot('completion');
    await page.keyboard.press('Escape');
  },

  async 'Shift + Tab explains the name at the cursor'(bench) {
    const me = await bench.person();
    const page = await me.open('02-edit.ipynb');
    await type(page, 1, 'equilibriumMoisture');
    await page.keyboard.press('Shift+Tab');
    await page.waitForSelector('.jp-Tooltip');
    assert.match(await page.locator('.jp-Tooltip').innerText(), /moisture/i);
    await me.shot('tooltip');
    await page.keyboard.press('Escape');
  },

  async 'while (true) {} is stopped, and what was calculated before is kept'(bench) {
    const me = await bench.person();
    const page = await me.open('03-loop.ipynb');
    await cell(page, 1).locator('.cm-content').click();
    await page.keyboard.press('Shift+Enter');
    // The first cell must be through, or the stop would hit it instead of the loop.
    await until('the first cell is through', async () =>
      /\[1\]/.test(await cell(page, 1).locator('.jp-InputPrompt').innerText()),
    );
    await page.keyboard.press('Shift+Enter');
    await page.waitForSelector('.kernel.working');
    await new Promise((resolve) => setTimeout(resolve, 300));
    const began = Date.now();
    await page.click('[aria-label="Stop what runs"]');
    await page.waitForSelector('.kernel.ready');
    assert.ok(Date.now() - began < 3000, `stopped after ${Date.now() - began} ms`);
    await cell(page, 3).locator('.cm-content').click();
    await page.keyboard.press('Shift+Enter');
    await until('42', async () => (await output(page, 3).allInnerTexts()).join('').includes('42'));
  },

  async 'restart forgets values and keeps text and results'(bench) {
    const me = await bench.person();
    const page = await me.open('02-edit.ipynb');
    await type(page, 1, 'const marker = 5; marker');
    await page.keyboard.press('Control+Enter');
    await until('5', async () => (await output(page, 1).allInnerTexts()).join('').includes('5'));
    await page.click('[aria-label="Restart the kernel"]');
    await page.click('dialog .first');
    await page.waitForSelector('.kernel.ready');
    assert.match((await output(page, 1).allInnerTexts()).join(''), /5/);
    await type(page, 2, 'marker');
    await page.keyboard.press('Control+Enter');
    await until('the name is gone', async () =>
      /marker/.test((await output(page, 2).allInnerTexts()).join('')),
    );
  },

  async 'the keys of Jupyter work: A, B, M, Y, D D, Z, arrows, Enter, Escape'(bench) {
    bench.copyBook('02-edit.ipynb', 'keys.ipynb');
    const me = await bench.person();
    const page = await me.open('keys.ipynb', { kernel: false });
    const count = () => page.locator('.jp-Cell').count();
    const active = () =>
      page.evaluate(() =>
        [...document.querySelectorAll('.jp-Cell')].findIndex((node) =>
          node.classList.contains('jp-mod-active'),
        ),
      );
    await comes(count, 3);
    const before = 3;
    await cell(page, 1).locator('.cm-content').click();
    await page.keyboard.press('Escape');
    await page.keyboard.press('b');
    await comes(count, before + 1);
    await comes(active, 2);
    await page.keyboard.press('a');
    await comes(count, before + 2);
    // Changes within half a second of one another are undone together.
    await page.waitForTimeout(700);
    await page.keyboard.press('d');
    await page.keyboard.press('d');
    await comes(count, before + 1);
    await page.keyboard.press('z');
    await comes(count, before + 2);
    const from = await active();
    await page.keyboard.press('ArrowUp');
    await comes(active, from - 1);
    await page.keyboard.press('j');
    await comes(active, from);
    await page.keyboard.press('m');
    assert.ok(await cell(page, from).evaluate((node) => node.classList.contains('jp-MarkdownCell')));
    await page.keyboard.press('Enter');
    await page.keyboard.insertText('## A heading, $a^2$');
    await page.keyboard.press('Shift+Enter');
    await until('the heading', async () => (await cell(page, from).locator('h2').count()) === 1);
    await comes(() => cell(page, from).locator('.katex').count(), 1);
    await page.keyboard.press('k');
    await page.keyboard.press('y');
    assert.ok(await cell(page, await active()).evaluate((node) => node.classList.contains('jp-CodeCell')));
    await page.keyboard.press('h');
    await page.waitForSelector('dialog.keys');
    await me.shot('keys');
    await page.keyboard.press('Escape');
  },

  async 'find goes from place to place, replace changes the text'(bench) {
    bench.copyBook('03-loop.ipynb', 'find.ipynb');
    const me = await bench.person();
    const page = await me.open('find.ipynb', { kernel: false });
    await page.keyboard.press('ControlOrMeta+f');
    await page.keyboard.type('kept');
    await until('2 found', async () => /2 found/.test(await page.locator('.find .count').innerText()));
    await page.keyboard.press('Enter');
    await until('1 of 2', async () => /1 of 2/.test(await page.locator('.find .count').innerText()));
    await me.shot('find');
    await page.fill('.find [aria-label="Replace by"]', 'saved');
    await page.click('.find button:has-text("All")');
    await until(
      'both replaced',
      async () =>
        (await cell(page, 1).locator('.cm-content').innerText()).includes('let saved = 41') &&
        (await cell(page, 3).locator('.cm-content').innerText()).includes('saved + 1'),
    );
  },

  async 'a what-if chart recalculates in the page when its slider moves, with no kernel'(bench) {
    const me = await bench.person();
    const page = await me.open('08-sliders.ipynb');
    await page.click('[aria-label="Run all cells"]');
    await page.waitForSelector('.chart-output .vega-bind input[type=range]');
    const line = () => page.locator('.chart-output svg .mark-line path').first().getAttribute('d');
    const before = await line();
    await page.route('**/api/**', (route) => route.abort());
    const slider = page.locator('.vega-bind input[type=range]').first();
    await slider.focus();
    for (let n = 0; n < 12; n += 1) await page.keyboard.press('ArrowRight');
    await until('another line', async () => (await line()) !== before);
    await me.shot('sliders');
    assert.deepEqual(
      me.troubles.filter((trouble) => /eval|policy/i.test(trouble)),
      [],
    );
  },
};
