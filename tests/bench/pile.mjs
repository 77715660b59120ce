// Lays up one pile and prints the plan, both plain JSON in whole millimetres, so that a checker from elsewhere can verify
// what topFromPile finds:  node tests/bench/pile.mjs --instance FILE.json [--seconds N]
// The seeded piles of the bench: node tests/bench/pile.bench.mjs
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { topFromPile } from '../../dist/index.js';
import { inputOf, planOf, refusal } from './pile-exchange.mjs';

function fail(message) {
  console.error(`pile: ${message}`);
  process.exit(2);
}

const { values } = parseArgs({
  options: { instance: { type: 'string' }, seconds: { type: 'string', default: '5' } },
});
if (values.instance === undefined) fail('takes --instance FILE.json, and --seconds N for a longer search');
const seconds = Number(values.seconds);
if (!(seconds > 0 && seconds <= 1800)) fail(`--seconds: got "${values.seconds}", takes 0.1 to 1800`);
let instance;
try {
  instance = JSON.parse(readFileSync(values.instance, 'utf8'));
} catch (error) {
  fail(`${values.instance}: ${error.message}`);
}
const wrong = refusal(instance);
if (wrong !== undefined) fail(wrong);
try {
  const result = await topFromPile(inputOf(instance, seconds));
  console.log(JSON.stringify(planOf(instance, result), null, 1));
} catch (error) {
  fail(error.message);
}
