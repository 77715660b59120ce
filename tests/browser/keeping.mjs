// Saving, two tabs, crashes, files: nothing a person wrote is lost.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cell, output, type, until } from './bench.mjs';

const saved = (page) => page.waitForSelector('.saved.saved');

export default {
  async 'what is typed is saved by itself and there again after a reload'(bench) {
    bench.copyBook('02-edit.ipynb', 'saves.ipynb');
    const me = await bench.person();
    const page = await me.open('saves.ipynb');
    await type(page, 1, 'const plank = 1950; plank');
    await page.keyboard.press('Control+Enter');
    await until(
      'the file on disk',
      () =>
        bench.read('saves.ipynb').includes('plank = 1950') && bench.read('saves.ipynb').includes('"1950"'),
    );
    await me.open('saves.ipynb', { kernel: false });
    assert.match(await cell(page, 1).locator('.cm-content').innerText(), /plank = 1950/);
    assert.match((await output(page, 1).allInnerTexts()).join(''), /1950/);
  },

  async 'Ctrl + S saves at once'(bench) {
    bench.copyBook('02-edit.ipynb', 'now.ipynb');
    const me = await bench.person();
    const page = await me.open('now.ipynb', { kernel: false });
    await type(page, 1, "'saved now'");
    await page.keyboard.press('ControlOrMeta+s');
    await until('the file', () => bench.read('now.ipynb').includes('saved now'), 2000);
  },

  async 'opening and leaving a notebook does not change its file'(bench) {
    bench.copyBook('02-edit.ipynb', 'untouched.ipynb');
    const before = bench.read('untouched.ipynb');
    const me = await bench.person();
    const page = await me.open('untouched.ipynb');
    await page.goto(bench.address);
    await page.waitForSelector('.chapter');
    assert.equal(bench.read('untouched.ipynb'), before);
  },

  async 'two tabs on one notebook: the second save asks, and neither text is lost'(bench) {
    const me = await bench.person();
    const one = await me.open('04-tabs.ipynb');
    const two = await me.context.newPage();
    await me.open('04-tabs.ipynb', { on: two });
    await type(one, 1, "'from the first tab'");
    await one.keyboard.press('ControlOrMeta+s');
    await saved(one);
    await until('the first on disk', () => bench.read('04-tabs.ipynb').includes('first tab'));
    await type(two, 1, "'from the second tab'");
    await two.keyboard.press('ControlOrMeta+s');
    await two.waitForSelector('dialog.conflict');
    await me.shot('conflict', two);
    assert.ok(
      bench.read('04-tabs.ipynb').includes('first tab'),
      'nothing is overwritten while the question stands',
    );
    await two.click('dialog.conflict .first');
    await until('mine on disk', () => bench.read('04-tabs.ipynb').includes('second tab'));
    assert.ok(
      readdirSync(bench.folder).some(
        (name) => name.startsWith('04-tabs-copy') && bench.read(name).includes('first tab'),
      ),
      'the other text is kept as a copy',
    );
    await one.bringToFront();
    await one.evaluate(() => dispatchEvent(new Event('focus')));
    await until('the first tab reads the new text', async () =>
      (await cell(one, 1).locator('.cm-content').innerText()).includes('second tab'),
    );
  },

  async 'a file changed by an editor: theirs may be taken, mine is kept beside it'(bench) {
    bench.copyBook('02-edit.ipynb', 'editor.ipynb');
    const me = await bench.person();
    const page = await me.open('editor.ipynb', { kernel: false });
    await type(page, 1, "'typed in the page'");
    const changed = JSON.parse(bench.read('editor.ipynb'));
    changed.cells[1].source = "'written by an editor'";
    writeFileSync(join(bench.folder, 'editor.ipynb'), JSON.stringify(changed));
    await page.waitForSelector('dialog.conflict');
    await page.click('dialog.conflict button:has-text("The one on disk")');
    await until('the text from disk', async () =>
      (await cell(page, 1).locator('.cm-content').innerText()).includes('by an editor'),
    );
    assert.ok(
      readdirSync(bench.folder).some(
        (name) => name.startsWith('editor-mine') && bench.read(name).includes('typed in the page'),
      ),
    );
    assert.ok(bench.read('editor.ipynb').includes('by an editor'));
  },

  async 'two tabs share one kernel'(bench) {
    bench.copyBook('02-edit.ipynb', 'shared.ipynb');
    const me = await bench.person();
    const one = await me.open('shared.ipynb');
    await type(one, 1, 'let together = 77; together');
    await one.keyboard.press('Control+Enter');
    await until('77', async () => (await output(one, 1).allInnerTexts()).join('').includes('77'));
    const two = await me.context.newPage();
    await me.open('shared.ipynb', { on: two });
    await type(two, 2, 'together + 1');
    await two.keyboard.press('Control+Enter');
    await until('78', async () => (await output(two, 2).allInnerTexts()).join('').includes('78'));
  },

  async 'a kernel that dies is reported, the text is kept, a new one runs'(bench) {
    const me = await bench.person();
    const page = await me.open('05-crash.ipynb');
    await page.click('[aria-label="Run all cells"]');
    await page.waitForSelector('dialog.crash');
    await me.shot('crash');
    assert.match(await page.locator('dialog.crash').innerText(), /kept/);
    await page.click('dialog.crash .first');
    await page.waitForSelector('.kernel.ready');
    assert.match(await cell(page, 1).locator('.cm-content').innerText(), /before = 7/);
    await cell(page, 3).locator('.cm-content').click();
    await page.keyboard.press('Control+Enter');
    await until('a new kernel knows nothing', async () =>
      /undefined|before/.test((await output(page, 3).allInnerTexts()).join('')),
    );
  },

  async 'when the server is out of reach the page says so, keeps the text, and saves once it is back'(bench) {
    bench.copyBook('02-edit.ipynb', 'offline.ipynb');
    const me = await bench.person();
    const page = await me.open('offline.ipynb', { kernel: false });
    await page.route('**/api/contents/**', (route) => route.abort());
    await type(page, 1, "'typed while away'");
    await page.waitForSelector('.saved.failed');
    assert.ok(!bench.read('offline.ipynb').includes('typed while away'));
    await page.unroute('**/api/contents/**');
    await page.click('.saved.failed');
    await until('saved at last', () => bench.read('offline.ipynb').includes('typed while away'));
  },

  async 'new, copy, upload, download and delete from the home page'(bench) {
    const me = await bench.person();
    const { page } = me;
    await page.waitForSelector('#app:not([aria-busy])');
    await page.click('button:has-text("New notebook")');
    await page.fill('dialog input', 'my saw bench');
    await page.keyboard.press('Enter');
    await page.waitForURL(/notebook\/my-saw-bench\.ipynb/);
    await page.goto(bench.address);
    await page.click('[aria-label="Copy A first chapter"]');
    await page.waitForURL(/notebook\/01-a-first-copy\.ipynb/);
    await page.goto(bench.address);
    await page.setInputFiles('input[type=file]', {
      name: 'my survey.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from('board,length\nB,1.2 m\n'),
    });
    await until('the uploaded file', () => readdirSync(bench.folder).includes('my-survey.csv'));
    assert.equal(bench.read('my-survey.csv'), 'board,length\nB,1.2 m\n');
    await page.setInputFiles('input[type=file]', {
      name: 'my survey.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from('other'),
    });
    await page.waitForSelector('dialog.ask');
    await page.click('dialog .first');
    assert.equal(bench.read('my-survey.csv'), 'board,length\nB,1.2 m\n');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.click('[aria-label="Download A first chapter"]'),
    ]);
    assert.equal(readFileSync(await file.path(), 'utf8'), bench.read('01-a-first.ipynb'));
    await page.click('[aria-label="Delete My saw bench"]');
    await page.click('dialog .loses');
    await until('the file is gone', () => !readdirSync(bench.folder).includes('my-saw-bench.ipynb'));
  },

  async 'a renamed notebook keeps its kernel and its text'(bench) {
    bench.copyBook('02-edit.ipynb', 'old-name.ipynb');
    const me = await bench.person();
    const page = await me.open('old-name.ipynb');
    await page.click('.bar .title');
    await page.fill('dialog input', 'new name');
    await page.keyboard.press('Enter');
    await page.waitForURL(/notebook\/new%20name\.ipynb/);
    await page.waitForSelector('body[data-opened]');
    await until(
      'the file has moved',
      () =>
        readdirSync(bench.folder).includes('new name.ipynb') &&
        !readdirSync(bench.folder).includes('old-name.ipynb'),
    );
  },
};
