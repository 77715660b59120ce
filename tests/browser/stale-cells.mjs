// Results made from values that have changed since: marked at once, run by one button, or always.
import assert from 'node:assert/strict';
import { cell, output, type, until } from './bench.mjs';

const textOf = async (page, n) => (await output(page, n).allInnerTexts()).join('').trim();
const prompt = (page, n) => cell(page, n).locator('.jp-InputPrompt').innerText();
const staleOnes = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('.jp-Cell')].flatMap((node, n) =>
      node.classList.contains('stale') ? [n] : [],
    ),
  );
const comes = (page, wanted) =>
  until(`stale: ${wanted.join(', ')}`, async () => (await staleOnes(page)).join() === wanted.join());

async function openChain(bench, name) {
  bench.copyBook('09-chain.ipynb', name);
  const me = await bench.person();
  const page = await me.open(name);
  await page.click('[aria-label="Run all cells"]');
  await until('150', async () => (await textOf(page, 3)).includes('150'));
  return { me, page };
}

export default {
  async 'a changed value marks what depends on it at once, and one button runs it in order'(bench) {
    const { me, page } = await openChain(bench, 'chain.ipynb');
    assert.deepEqual(await staleOnes(page), []);
    assert.equal(await page.locator('.stale-line').isVisible(), false);
    await type(page, 1, 'width = 800;');
    await page.keyboard.press('Control+Enter');
    await comes(page, [2, 3]);
    assert.match(
      await page.locator('.stale-line').innerText(),
      /2 results were made from values that have changed/,
    );
    await me.shot('stale');
    await page.click('.stale-line button');
    await until('200', async () => (await textOf(page, 3)).includes('200'));
    assert.match(await textOf(page, 2), /400/);
    await comes(page, []);
    assert.equal(await page.locator('.stale-line').isVisible(), false);
  },

  async 'the switch runs what has become stale after every change, also after a reload of the page'(bench) {
    const { me, page } = await openChain(bench, 'always.ipynb');
    await type(page, 1, 'width = 800;');
    await page.keyboard.press('Control+Enter');
    await comes(page, [2, 3]);
    await page.check('.stale-line input');
    await type(page, 1, 'width = 1000;');
    await page.keyboard.press('Control+Enter');
    await until('250', async () => (await textOf(page, 3)).includes('250'));
    await comes(page, []);
    await page.keyboard.press('ControlOrMeta+s');
    await until('saved', () => bench.read('always.ipynb').includes('width = 1000'));
    await me.open('always.ipynb');
    await type(page, 1, 'width = 1200;');
    await page.keyboard.press('Control+Enter');
    await until('300', async () => (await textOf(page, 3)).includes('300'));
  },

  async 'what is typed while stale cells run by themselves stays typed, and a value changed meanwhile is followed too'(
    bench,
  ) {
    const { page } = await openChain(bench, 'meanwhile.ipynb');
    // Slow enough that the next change comes in the middle of the run.
    await type(page, 2, 'await new Promise((go) => setTimeout(go, 3000)); const half = width / 2; half');
    await page.keyboard.press('Control+Enter');
    await until('the slow cell has run', async () => /\[\d+\]/.test(await prompt(page, 2)));
    await type(page, 1, 'width = 800;');
    await page.keyboard.press('Control+Enter');
    await comes(page, [2, 3]);
    await type(page, 4, "'being typed'");
    await page.evaluate(() => document.querySelector('.stale-line input').click());
    await until('the slow cell runs by itself', async () => /\*/.test(await prompt(page, 2)));
    await page.keyboard.type("; 'dd and more'");
    assert.equal(await cell(page, 4).locator('.cm-content').innerText(), "'being typed'; 'dd and more'");
    await type(page, 1, 'width = 1000;');
    await page.keyboard.press('Control+Enter');
    await until('250', async () => (await textOf(page, 3)).includes('250'));
    await comes(page, []);
  },

  async 'deleting a cell that others use says so, and Ctrl + Z brings it back'(bench) {
    const { page } = await openChain(bench, 'deleted.ipynb');
    await cell(page, 2).locator('.cm-content').click();
    await page.click('.cell-tools [aria-label="Delete this cell"]');
    await until('the words', async () =>
      /The deleted cell sets half, which another cell uses/.test(
        (await page.locator('.notices').allInnerTexts()).join(' '),
      ),
    );
    await page.keyboard.press('ControlOrMeta+z');
    await until('the cell is back', async () => (await page.locator('.jp-Cell').count()) === 5);
    // The editor of a cell that is put back is filled after its frame.
    await until('its text is back', async () =>
      /half = width/.test(await cell(page, 2).locator('.cm-content').innerText()),
    );
  },

  async 'after Run all the view stays, and the line below the last cell adds one that is typed into'(bench) {
    const { page } = await openChain(bench, 'view.ipynb');
    assert.ok(
      await cell(page, 0).evaluate((node) => node.classList.contains('jp-mod-active')),
      'the active cell is the one it was',
    );
    assert.equal(await page.locator('.jp-WindowedPanel-outer').evaluate((node) => node.scrollTop), 0);
    await page.click('.jp-Notebook-footer');
    await page.keyboard.type('6 * 7');
    await until('typed', async () => /6 \* 7/.test(await cell(page, 5).locator('.cm-content').innerText()));
  },
};
