// The side panel, the notes, looks, the phone, what comes from elsewhere, and how fast it all is.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from '../../src/launch/prepare.mjs';
import { cell, output, type, until } from './bench.mjs';
import { median } from '../bench/median.mjs';

export default {
  async 'the side panel finds a recipe by word, shows formula and sources, and puts a cell that runs into the notebook'(
    bench,
  ) {
    bench.copyBook('02-edit.ipynb', 'side-panel.ipynb');
    const me = await bench.person();
    const page = await me.open('side-panel.ipynb');
    await page.click('.side-panel-toggle');
    await page.waitForSelector('.recipe');
    const all = await page.locator('.recipe').count();
    await page.fill('[aria-label="Search recipes"]', 'rest air');
    await until('fewer', async () => (await page.locator('.recipe').count()) < all);
    await page.click('[data-recipe=equilibriumMoisture] summary');
    const detail = page.locator('[data-recipe=equilibriumMoisture]');
    // The typesetter is loaded when the first formula is opened.
    await until('typeset', async () => (await detail.locator('.katex').count()) > 0);
    assert.match(await detail.innerText(), /humidity[\s\S]*Sources[\s\S]*Wood handbook|Sources/i);
    await me.shot('drawer');
    const before = await page.locator('.jp-CodeCell').count();
    await page.click('[data-insert=equilibriumMoisture]');
    await until('one more cell', async () => (await page.locator('.jp-CodeCell').count()) === before + 1);
    await page.click('.cell-tools [aria-label="Run this cell"]');
    await page.waitForSelector('.chart-output svg');
  },

  async 'results go into the build notes, are put in order and remarked, and are saved as HTML and Markdown'(
    bench,
  ) {
    const me = await bench.person();
    const page = await me.open('07-notes.ipynb');
    await page.click('[aria-label="Run all cells"]');
    await until('two charts', async () => (await page.locator('.chart-output svg').count()) === 2);
    for (const n of [1, 2]) {
      await cell(page, n).locator('.cm-content').click();
      await page.click('.cell-tools [aria-label^="Add the result"]');
    }
    await page.locator('.notes-list textarea').nth(1).fill('measured on Tuesday');
    await page.click('[aria-label="Move note 2 up"]');
    assert.match(await page.locator('.notes-list li').first().innerText(), /Equilibrium moisture content/);
    assert.equal(await page.locator('.notes-list textarea').first().inputValue(), 'measured on Tuesday');
    await page.fill('.notes-title', 'Tea counter, day one');
    await me.shot('notes');
    const save = async (words) => {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.click(`button:has-text("${words}")`),
      ]);
      return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
    };
    const html = await save('Save as HTML');
    assert.equal(html.name, 'tea-counter-day-one.html');
    assert.ok(
      html.text.indexOf('Equilibrium moisture content (EMC)') <
        html.text.indexOf('Movement across the grain'),
      'in the order chosen',
    );
    assert.match(html.text, /measured on Tuesday/);
    assert.match(html.text, /id="sources"/, 'sources are gathered at the end');
    assert.match(html.text, /<svg|data:image\/svg/);
    assert.match(html.text, /@page/);
    const markdown = await save('Save as Markdown');
    assert.match(markdown.text, /^# Tea counter, day one/);
    assert.match(markdown.text, /measured on Tuesday/);
    await page.keyboard.press('ControlOrMeta+s');
    await until('the list is in the file', () =>
      bench.read('07-notes.ipynb').includes('measured on Tuesday'),
    );
    await me.open('07-notes.ipynb', { kernel: false });
    assert.equal(await page.locator('.badge').innerText(), '2');
    const sheet = await me.context.newPage();
    await sheet.setContent(html.text);
    assert.ok((await sheet.pdf({ format: 'A4' })).length > 10_000, 'it prints');
  },

  async 'light and dark: the choice is kept, the chart follows'(bench) {
    const me = await bench.person();
    const page = await me.open('01-a-first.ipynb');
    await page.click('[aria-label="Run all cells"]');
    await page.waitForSelector('.chart-output svg');
    const ink = () =>
      page
        .locator('.chart-output svg .role-axis-label text')
        .first()
        .evaluate((node) => getComputedStyle(node).fill);
    const light = await ink();
    await page.click('[aria-label="Light or dark"]');
    await until('the chart in other ink', async () => (await ink()) !== light);
    await me.shot('dark');
    await page.reload();
    await page.waitForSelector('body[data-opened]');
    assert.equal(await page.evaluate(() => document.documentElement.dataset.theme), 'dark');
  },

  async 'on a phone nothing is cut off and all can be reached'(bench) {
    const me = await bench.person({ viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true });
    await me.shot('phone-home');
    const wide = (page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok((await wide(me.page)) <= 0, 'the home page fits');
    const page = await me.open('01-a-first.ipynb');
    await page.tap('[aria-label="Run all cells"]');
    await page.waitForSelector('.chart-output svg');
    await until(
      'the chart fits',
      async () =>
        (await page
          .locator('.chart-output svg')
          .first()
          .evaluate((svg) => svg.getBoundingClientRect().right - innerWidth)) <= 0,
    );
    assert.ok((await wide(page)) <= 0, 'the notebook fits');
    const small = await page
      .locator('.chart-output svg .role-axis-label text')
      .first()
      .evaluate((node) => node.getBoundingClientRect().height);
    assert.ok(small > 10, `letters of the chart stay readable: ${small.toFixed(1)} px high`);
    await me.shot('phone');
    for (const label of [
      'Run the cell and go on',
      'Run all cells',
      'Stop what runs',
      'Restart the kernel',
      'New cell below',
      'Find and replace',
      'Recipes and build notes',
    ]) {
      const box = await page.locator(`.bar [aria-label="${label}"]`).boundingBox();
      assert.ok(
        box !== null && box.width >= 40 && box.height >= 40 && box.x >= 0 && box.x + box.width <= 390,
        `${label} can be hit: ${JSON.stringify(box)}`,
      );
    }
    await page.tap('.side-panel-toggle');
    await page.waitForSelector('.recipe');
    await me.shot('phone-side-panel');
    assert.ok((await wide(page)) <= 0, 'the side panel fits');
  },

  async 'text has the contrast WCAG AA asks for, light and dark'(bench) {
    const me = await bench.person();
    const page = await me.open('01-a-first.ipynb');
    await page.click('.side-panel-toggle');
    await page.waitForSelector('.recipe');
    for (const theme of ['light', 'dark']) {
      await page.evaluate((value) => (document.documentElement.dataset.theme = value), theme);
      await page.waitForTimeout(100);
      const poor = await page.evaluate(() => {
        const rgb = (text) => {
          const [r, g, b, a = 1] = text.match(/[\d.]+/g).map(Number);
          return { r, g, b, a };
        };
        const shine = ({ r, g, b }) =>
          [r, g, b]
            .map((v) => v / 255)
            .map((v) => (v <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4))
            .reduce((sum, v, n) => sum + v * [0.2126, 0.7152, 0.0722][n], 0);
        const behind = (node) => {
          for (let at = node; at; at = at.parentElement) {
            const colour = rgb(getComputedStyle(at).backgroundColor);
            if (colour.a > 0.9) return colour;
          }
          return { r: 255, g: 255, b: 255 };
        };
        const found = [];
        const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        while (walker.nextNode()) {
          const node = walker.currentNode.parentElement;
          if (
            !walker.currentNode.data.trim() ||
            !node ||
            node.closest('svg, noscript, .katex-mathml') ||
            node.offsetParent === null
          )
            continue;
          const [fore, back] = [shine(rgb(getComputedStyle(node).color)), shine(behind(node))];
          const ratio = (Math.max(fore, back) + 0.05) / (Math.min(fore, back) + 0.05);
          if (ratio < 4.5)
            found.push(
              `${ratio.toFixed(1)}: ${walker.currentNode.data.trim().slice(0, 30)} (${node.className || node.tagName})`,
            );
        }
        return [...new Set(found)];
      });
      assert.deepEqual(poor, [], theme);
    }
  },

  async 'a notebook from elsewhere runs nothing in the page, also when it calls itself trusted'(bench) {
    const me = await bench.person();
    const asked = [];
    me.page.on(
      'request',
      (request) =>
        !request.url().startsWith(new URL(bench.address).origin) &&
        !/^(data|blob|about):/.test(request.url()) &&
        asked.push(request.url()),
    );
    const page = await me.open('06-elsewhere.ipynb', { kernel: false });
    await page.waitForSelector('.jp-RenderedHTMLCommon h4');
    await page.waitForTimeout(800);
    await me.shot('elsewhere');
    assert.equal(await page.evaluate(() => window.hit), undefined);
    assert.deepEqual(asked, []);
    assert.equal(
      await page.locator('.jp-OutputArea script, .jp-OutputArea iframe, .jp-OutputArea form').count(),
      0,
    );
    assert.equal(await page.locator('a[href^="javascript:"]').count(), 0);
    assert.ok(await page.locator('.trust').isVisible(), 'the person is told');
    await page.click('.trust button');
    await page.waitForTimeout(500);
    assert.equal(await page.evaluate(() => window.hit), undefined, 'the policy holds even for trusted HTML');
    const said = (await output(page, 1).allInnerTexts()).join(' ');
    assert.match(said, /cannot be drawn: its data must be inside it, got the address http:\/\/evil\.example/);
    assert.match(said, /cannot be drawn: Illegal callee/);
  },

  async 'a notebook that is broken on disk is explained'(bench) {
    const me = await bench.person();
    const { writeFileSync } = await import('node:fs');
    writeFileSync(join(bench.folder, 'torn.ipynb'), '{"cells": [\n{"cell_type": "code"');
    await me.page.goto(new URL('/notebook/torn.ipynb', bench.address).href);
    await me.page.waitForSelector('.closed');
    assert.match(await me.page.locator('.closed').innerText(), /torn\.ipynb, line 2/);
    assert.equal(bench.read('torn.ipynb'), '{"cells": [\n{"cell_type": "code"');
  },

  async 'a cold load shows the notebook, a warm cell goes round: both are measured'(bench) {
    const loads = [];
    for (let n = 0; n < 5; n += 1) {
      const me = await bench.person();
      const began = Date.now();
      await me.page.goto(new URL('/notebook/01-a-first.ipynb', bench.address).href);
      await me.page.waitForSelector('.jp-RenderedHTMLCommon h1');
      loads.push(Date.now() - began);
      await me.context.close();
    }
    const me = await bench.person();
    bench.copyBook('02-edit.ipynb', 'quick.ipynb');
    const page = await me.open('quick.ipynb');
    await type(page, 1, '1 + 1');
    await page.keyboard.press('Control+Enter');
    await until('first run', async () => (await output(page, 1).allInnerTexts()).join('').includes('2'));
    const rounds = await page.evaluate(async () => {
      const times = [];
      const cell = document.querySelectorAll('.jp-Cell')[1];
      for (let n = 0; n < 30; n += 1) {
        await new Promise((resolve) => setTimeout(resolve, 60));
        const count = () => cell.querySelector('.jp-OutputPrompt')?.textContent;
        const before = count();
        const began = performance.now();
        cell.querySelector('.cell-tools [aria-label="Run this cell"]').click();
        await new Promise((resolve) => {
          const look = () => (count() && count() !== before ? resolve() : setTimeout(look, 1));
          look();
        });
        times.push(performance.now() - began);
      }
      return times;
    });
    console.log(
      `    cold load, ${loads.length} times: ${Math.min(...loads)} to ${Math.max(...loads)} ms, median ${median(loads)} ms; warm cell, median of ${rounds.length}: ${median(rounds).toFixed(0)} ms`,
    );
    // Wanted on a quiet machine: a load in under 2 s, a round in under 60 ms. A busy one is several times slower, so that only
    // what no load of the machine explains fails.
    assert.ok(Math.min(...loads) < 20_000, `cold loads: ${loads.join(', ')} ms`);
    assert.ok(median(rounds) < 600, `warm cells: ${rounds.map(Math.round).join(', ')} ms`);
  },

  async 'the page is at most 1.3 MB gzipped, all lazy parts counted, and the 66 recipes beside it 0.55 MB'() {
    const folder = join(root, 'dist', 'page');
    const files = readdirSync(folder).filter((name) => /\.(js|css)$/.test(name));
    const sizeOf = (names) =>
      names.reduce((sum, name) => sum + gzipSync(readFileSync(join(folder, name)), { level: 9 }).length, 0);
    const isRecipes = (name) => name.startsWith('recipe-worker-');
    const page = sizeOf(files.filter((name) => !isRecipes(name)));
    const recipes = sizeOf(files.filter(isRecipes));
    console.log(`    ${(page / 1e6).toFixed(2)} MB gzipped, recipes ${(recipes / 1e6).toFixed(2)} MB`);
    assert.ok(page <= 1.3e6, `${page} bytes`);
    assert.ok(recipes <= 0.55e6, `${recipes} bytes of recipes`);
  },
};
