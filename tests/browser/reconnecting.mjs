// A server that dies and comes back, a tab that goes, a kernel that ends: the page says what happened and what was typed is there.
import assert from 'node:assert/strict';
import { cell, output, patience, pause, startServer, type, until } from './bench.mjs';

const textOf = async (page, n) => (await output(page, n).allInnerTexts()).join('');
const codeOf = (page, n) => cell(page, n).locator('.cm-content').innerText();
const draftOf = (page) =>
  page.evaluate(() => {
    const key = Object.keys(localStorage).find((name) => name.startsWith('reckoner-draft'));
    return key === undefined ? undefined : localStorage.getItem(key);
  });

/** Does the work with a server of its own, which may be ended, and a profile whose tabs get their key as a person's do. */
async function withServer(bench, work, env = {}) {
  const first = await startServer({ ...bench, env });
  const servers = [first];
  const context = await bench.browser.newContext({ viewport: { width: 1280, height: 900 } });
  context.setDefaultTimeout(patience);
  try {
    await work({
      first,
      context,
      async open(server, name) {
        const page = await context.newPage();
        await page.goto(server.address);
        await page.waitForSelector('.chapter');
        if (name === undefined) return page;
        await page.goto(`${server.origin}/notebook/${name}`);
        await page.waitForSelector('body[data-opened]');
        await page.waitForSelector('.kernel.ready', { state: 'attached' });
        return page;
      },
      async startAgain() {
        const next = await startServer({ ...bench, port: first.port });
        servers.push(next);
        return next;
      },
    });
  } finally {
    await context.close();
    for (const server of servers) await server.end('SIGKILL');
  }
}

const run = async (page, n, code, wanted) => {
  await type(page, n, code);
  await page.keyboard.press('Control+Enter');
  await until(`${wanted} from ${code}`, async () => (await textOf(page, n)).includes(wanted), 60_000);
};

export default {
  async 'a server process that is killed comes back, and the page joins its kernel again by itself'(bench) {
    bench.copyBook('02-edit.ipynb', 'joins.ipynb');
    await withServer(bench, async ({ first, open }) => {
      const page = await open(first, 'joins.ipynb');
      await run(page, 1, 'const kept = 41; kept', '41');
      const before = first.serverPid();
      process.kill(before, 'SIGKILL');
      await type(page, 2, 'kept + 1');
      await until('another server process', () => ![before, undefined].includes(first.serverPid()), 60_000);
      await page.waitForSelector('.kernel.ready', { state: 'attached' });
      await until(
        'no line about the connection',
        async () => (await page.locator('.connection').count()) === 0,
      );
      await cell(page, 2).locator('.cm-content').click();
      await page.keyboard.press('Control+Enter');
      await until('42', async () => (await textOf(page, 2)).includes('42'), 60_000);
      assert.equal(await page.locator('dialog').count(), 0, 'nothing is asked');
      await until('it is saved', () => bench.read('joins.ipynb').includes('kept + 1'));
    });
  },

  async 'a dead server: the page says what to do, keeps what is typed, and goes on once it is started and opened again'(
    bench,
  ) {
    bench.copyBook('02-edit.ipynb', 'dead.ipynb');
    await withServer(bench, async ({ first, open, startAgain }) => {
      const page = await open(first, 'dead.ipynb');
      await run(page, 1, '40 + 1', '41');
      await first.end('SIGKILL');
      await page.waitForSelector('.connection.away');
      assert.match(
        await page.locator('.connection').innerText(),
        /does not answer.*npm start.*kept in this browser/,
      );
      await type(page, 2, "'typed while the server was dead'");
      await until('the draft', async () => (await draftOf(page))?.includes('while the server was dead'));
      assert.ok(!bench.read('dead.ipynb').includes('while the server was dead'));
      const second = await startAgain();
      await page.waitForSelector('.connection.locked');
      assert.match(
        await page.locator('.connection').innerText(),
        /needs a new key: press Enter in its terminal and open/,
      );
      await open(second);
      await until(
        'the text is saved',
        () => bench.read('dead.ipynb').includes('while the server was dead'),
        30_000,
      );
      await until('the line is gone', async () => (await page.locator('.connection').count()) === 0);
      await page.waitForSelector('.kernel.ready', { state: 'attached' });
      // The browser opened the new key in a tab of its own; Firefox draws the tab in front alone.
      await page.bringToFront();
      await run(page, 2, "'after ' + 'all'", 'after all');
    });
  },

  async 'text typed while the server was dead, in a tab that was closed, is offered when the notebook is opened again'(
    bench,
  ) {
    bench.copyBook('02-edit.ipynb', 'offered.ipynb');
    await withServer(bench, async ({ first, open, startAgain }) => {
      const page = await open(first, 'offered.ipynb');
      await first.end('SIGKILL');
      await type(page, 1, "'never reached the disk'");
      await until('the draft', async () => (await draftOf(page))?.includes('never reached'));
      await page.close();
      const again = await open(await startAgain(), 'offered.ipynb');
      await again.waitForSelector('dialog.draft');
      await again.click('dialog.draft .first');
      await until('the text', async () => (await codeOf(again, 1)).includes('never reached the disk'));
      await until('it is saved', () => bench.read('offered.ipynb').includes('never reached the disk'));
      await until('no draft is left', async () => (await draftOf(again)) === undefined);
    });
  },

  async 'every keystroke is in the draft within 300 ms, and the storage is not written more often than that'(
    bench,
  ) {
    bench.copyBook('02-edit.ipynb', 'keystrokes.ipynb');
    const me = await bench.person();
    const page = await me.open('keystrokes.ipynb', { kernel: false });
    await page.route('**/api/contents/**', (route) => route.abort());
    await page.evaluate(() => {
      window.writes = [];
      const write = Storage.prototype.setItem;
      Storage.prototype.setItem = function (name, value) {
        if (name.startsWith('reckoner-draft')) window.writes.push(performance.now());
        write.call(this, name, value);
      };
    });
    await cell(page, 2).locator('.cm-content').click();
    for (const letter of 'every letter that is typed counts') {
      await page.keyboard.type(letter);
      await pause(30);
    }
    await pause(700);
    assert.match((await draftOf(page)) ?? '', /every letter that is typed counts/);
    const writes = await page.evaluate(() => window.writes);
    const gaps = writes.slice(1).map((time, at) => time - writes[at]);
    assert.ok(writes.length >= 3, `written while typing, ${writes.length} times`);
    assert.ok(Math.min(...gaps) >= 290, `gaps: ${gaps.map(Math.round).join(', ')} ms`);
  },

  async 'after a reload the draft is offered; the file on disk may be taken instead'(bench) {
    bench.copyBook('02-edit.ipynb', 'reloaded.ipynb');
    const onDisk = JSON.parse(bench.read('reloaded.ipynb')).cells[1].source;
    const me = await bench.person();
    const page = await me.open('reloaded.ipynb', { kernel: false });
    await page.route('**/api/contents/**', (route) =>
      route.request().method() === 'PUT' ? route.abort() : route.continue(),
    );
    await type(page, 1, "'only in the browser'");
    await until('the draft', async () => (await draftOf(page))?.includes('only in the browser'));
    page.on('dialog', (dialog) => void dialog.accept().catch(() => undefined));
    await page.reload();
    await page.waitForSelector('dialog.draft');
    assert.match(await page.locator('dialog.draft').innerText(), /did not reach the disk/);
    await me.shot('draft');
    await page.click('dialog.draft .loses');
    await until('no draft is left', async () => (await draftOf(page)) === undefined);
    assert.equal((await codeOf(page, 1)).trim(), [onDisk].flat().join(''));
    assert.ok(!bench.read('reloaded.ipynb').includes('only in the browser'));
  },

  async 'a tab that crashes loses nothing: its draft is offered in the next one'(bench) {
    bench.copyBook('02-edit.ipynb', 'crashed.ipynb');
    const me = await bench.person();
    const page = await me.open('crashed.ipynb', { kernel: false });
    await page.route('**/api/contents/**', (route) => route.abort());
    await type(page, 1, "'before the crash'");
    await until('the draft', async () => (await draftOf(page))?.includes('before the crash'));
    const crashed = page.waitForEvent('crash');
    void page.goto('chrome://crash').catch(() => undefined);
    await crashed;
    const next = await me.context.newPage();
    await me.open('crashed.ipynb', { kernel: false, on: next });
    await next.waitForSelector('dialog.draft');
    await next.click('dialog.draft .first');
    await until('it is saved', () => bench.read('crashed.ipynb').includes('before the crash'));
  },

  async 'a kernel that is killed is not said to have run out of memory; one that did is'(bench) {
    bench.copyBook('05-crash.ipynb', 'memory.ipynb');
    const fill =
      'const all: number[][] = [];\nfor (;;) all.push(new Array(100_000).fill(0).map(Math.random));';
    const work = async ({ first, open }) => {
      const page = await open(first, 'memory.ipynb');
      await cell(page, 2).locator('.cm-content').click();
      await page.keyboard.press('Control+Enter');
      await page.waitForSelector('dialog.crash');
      const killed = await page.locator('dialog.crash').innerText();
      assert.match(killed, /ended by the signal SIGKILL/);
      assert.doesNotMatch(killed, /memory/);
      await page.click('dialog.crash .first');
      await page.waitForSelector('.kernel.ready');
      await type(page, 3, fill);
      await page.keyboard.press('Control+Enter');
      await page.waitForSelector('dialog.crash', { timeout: 150_000 });
      assert.match(await page.locator('dialog.crash').innerText(), /ran out of memory/);
    };
    await withServer(bench, work, { NODE_OPTIONS: '--max-old-space-size=300' });
  },

  async 'trusted results never leave the page: no refresh, form, frame, target or address of their own'(
    bench,
  ) {
    bench.copyBook('02-edit.ipynb', 'trusted.ipynb');
    const me = await bench.person();
    const asked = [];
    me.context.on(
      'request',
      (request) => request.url().includes('evil.example') && asked.push(request.url()),
    );
    const page = await me.open('trusted.ipynb');
    const html = [
      '<h4>Trusted</h4>',
      '<meta http-equiv="refresh" content="0;url=http://evil.example/refresh">',
      '<base href="http://evil.example/">',
      '<form action="http://evil.example/form"><button id="send" formaction="http://evil.example/send">Send</button></form>',
      '<iframe src="http://evil.example/frame"></iframe><iframe srcdoc="<script>parent.hit=1</script>"></iframe>',
      '<object data="http://evil.example/object"></object><embed src="http://evil.example/embed">',
      '<a id="away" href="#here" target="_top" ping="http://evil.example/ping">a link</a>',
      '<svg><foreignObject><meta http-equiv="refresh" content="0;url=http://evil.example/svg"></foreignObject></svg>',
    ].join('');
    const shown = JSON.stringify({ 'text/html': html });
    await run(page, 1, `({ [Symbol.for('Jupyter.display')]: () => (${shown}) })`, 'Trusted');
    const result = cell(page, 1).locator('.jp-OutputArea-output');
    assert.equal(await result.locator('meta, base, form, iframe, object, embed').count(), 0);
    assert.equal(await result.locator('[formaction], [ping], [target=_top], [srcdoc]').count(), 0);
    await result.locator('#send').click();
    await result.locator('#away').click();
    await pause(1500);
    assert.equal(new URL(page.url()).pathname, '/notebook/trusted.ipynb');
    assert.equal(await page.evaluate(() => window.hit), undefined);
    assert.deepEqual(asked, []);
    // The same HTML does leave a page that does not hold it back: otherwise nothing was tried.
    const open = await me.context.newPage();
    await open.setContent(html).catch(() => undefined);
    await until('the request of an unguarded page', () => asked.length > 0);
  },
};
