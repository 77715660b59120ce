// npm run bench -- forms: how long the form of each recipe takes from a changed value to its sentence and figures, and to its
// picture, in a real browser with the recipe's own example. Recipes that search wait to be asked and are left out.
import { existsSync } from 'node:fs';
import { openBench } from '../browser/bench.mjs';
import { catalogue } from '../../dist/index.js';
import { median } from './median.mjs';

const most = 100;
const program = process.env.CHROMIUM ?? '/usr/bin/chromium';
if (!existsSync(program)) {
  console.error(`no Chromium at ${program}: install Debian's package chromium, or set CHROMIUM`);
  process.exit(1);
}

/** In the page: writes the value into a box and gives the time until the answer and its picture are new. */
function timeChange([box, value]) {
  const input = document.querySelector(box);
  const body = document.querySelector('.answer-card .answer-body');
  const picture = document.querySelector('.answer-card .answer-picture');
  return new Promise((resolve) => {
    const began = performance.now();
    const taken = { answer: undefined, picture: undefined };
    const seen = (name) => {
      taken[name] ??= performance.now() - began;
      if (taken.answer === undefined || (taken.picture === undefined && !picture.hidden)) return;
      for (const observer of observers) observer.disconnect();
      resolve(taken);
    };
    const observers = [
      ['answer', body],
      ['picture', picture],
    ].map(([name, node]) => {
      const observer = new MutationObserver(() => seen(name));
      observer.observe(node, { childList: true });
      return observer;
    });
    setTimeout(() => resolve(taken), 3000);
    input.value = value;
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

async function timesOf(page, recipe) {
  await page.evaluate(
    ([name, given]) => {
      localStorage.setItem(`reckoner-question ${name}`, `const tried = ${name}(${JSON.stringify(given)});`);
      location.hash = `question=${name}`;
    },
    [recipe.name, recipe.example],
  );
  await page.waitForSelector(`[data-recipe=${recipe.name}] .answer-card[data-state=answer]`);
  const box = await page.evaluate(() => {
    const boxes = [...document.querySelectorAll('.recipe-form input.numeric')];
    const found = boxes.find((input) => /^\d+(\.\d+)?$/.test(input.value) && Number(input.value) > 0);
    return found && { id: found.id, value: Number(found.value) };
  });
  if (box === undefined) return undefined;
  const taken = { answer: [], picture: [] };
  for (let round = 0; round < 7; round++) {
    const value = String(Number((box.value * (1 - (round + 1) / 1000)).toPrecision(6)));
    const { answer, picture } = await page.evaluate(timeChange, [`#${box.id}`, value]);
    // The value may be one that the recipe refuses.
    if (answer === undefined) return undefined;
    taken.answer.push(answer);
    if (picture !== undefined) taken.picture.push(picture);
    await page.waitForTimeout(60);
  }
  return { answer: median(taken.answer), picture: median(taken.picture) };
}

const bench = await openBench('chromium');
const { page } = await bench.person();
await page.waitForSelector('[data-question=stripCount]');
const rows = [];
for (const recipe of catalogue.filter(({ isAsync }) => !isAsync))
  rows.push({ name: recipe.name, ...(await timesOf(page, recipe)) });
await bench.close();
const measured = rows.filter(({ answer }) => answer !== undefined);
const show = (part) => {
  // Some recipes have no picture.
  const times = measured.map((row) => row[part]).filter((time) => time !== undefined);
  const slow = measured.filter((row) => row[part] > most).map((row) => `${row.name} ${row[part].toFixed(0)}`);
  console.log(
    `  ${part}: median ${median(times).toFixed(0)} ms, worst ${Math.max(...times).toFixed(0)}; over ${most} ms: ${slow.join(', ') || 'none'}`,
  );
};
console.log(`A changed value in the forms of ${measured.length} recipes, median of 7 each:`);
show('answer');
show('picture');
const left = rows.filter(({ answer }) => answer === undefined).map(({ name }) => name);
if (left.length > 0) console.log(`  no number to change, or its change is refused: ${left.join(', ')}`);
