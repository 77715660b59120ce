import { escapeHtml as e } from '../engine/escape-html.js';
import { pageHtml } from './html-page.js';

/** A card with its picture drawn. */
export interface PrintedCard {
  readonly title: string;
  readonly numbers: readonly { readonly label: string; readonly value: string }[];
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
  readonly svg?: string;
}

const margins = '10mm';
const a4 = { page: 'A4 portrait', width: '190mm', high: '88mm' };
const sizes: Readonly<Record<string, typeof a4>> = {
  A5: { page: 'A5 portrait', width: '128mm', high: '52mm' },
  A4: a4,
  Letter: { page: 'letter portrait', width: '196mm', high: '80mm' },
};

/**
 * Every text is 20 pt or larger, which is read at a metre. Pictures carry small letters of their own, so the numbers
 * that matter stand beside them in the list.
 */
function styleOf(paper: string): string {
  const { page, width, high } = sizes[paper] ?? a4;
  return `
@page{size:${page};margin:${margins};@bottom-right{content:none}}
body{max-width:${width};padding:0;font:20pt/1.3 "DejaVu Sans",Verdana,system-ui,sans-serif}
.card{break-after:page;break-inside:avoid;padding:0 0 1rem}.card:last-child{break-after:auto}
.card h1{font-size:28pt;margin:0 0 .2em}.card .of{font-size:20pt;color:var(--soft);margin:0 0 .3em}
.card .unsafe{font-size:20pt;border:3px solid var(--mark);padding:.2em .4em;margin:0 0 .4em;font-weight:700}
.card dl{display:grid;grid-template-columns:1fr auto;gap:.05em .8em;margin:0 0 .4em}.card dt{font-size:20pt}.card dd{margin:0;font-size:26pt;font-weight:700;text-align:right;font-variant-numeric:tabular-nums}
.card ul{list-style:none;padding:0;margin:0 0 .4em}.card li{font-size:20pt;padding-left:1.5em;text-indent:-1.5em;margin:.12em 0}.card li::before{content:"☐ ";display:inline-block;width:1.5em;text-indent:0}
.card .caution{font-size:20pt;border-left:6px solid var(--mark);padding-left:.4em;margin:.3em 0}
.card figure{margin:0 0 .4em}.card figure svg{max-height:${high};width:auto;max-width:100%}
@media print{body{font-size:20pt;line-height:1.3}.card h1{font-size:28pt}.card figure svg{max-height:${high}}}
@media screen{.card{border-bottom:2px dashed var(--line);padding-bottom:2rem;margin-bottom:2rem}}
`;
}

/** The cards as one page. */
export function benchCardsHtml(
  title: string,
  cards: readonly PrintedCard[],
  warnings: readonly string[],
  paper: string,
): string {
  const body = cards.map((c, i) => cardHtml(title, c, `${i + 1} of ${cards.length}`, warnings)).join('\n');
  return pageHtml({ title: `${title}: bench cards`, body, style: styleOf(paper) });
}

function cardHtml(title: string, card: PrintedCard, number: string, warnings: readonly string[]): string {
  const unsafe = warnings.map((w) => `<p class="unsafe">NOT SAFE AS DESCRIBED: ${e(w)}</p>`).join('');
  const numbers = card.numbers.map((n) => `<dt>${e(n.label)}</dt><dd>${e(n.value)}</dd>`).join('');
  const steps = card.steps.map((s) => `<li>${e(s)}</li>`).join('');
  const cautions = card.cautions.map((c) => `<p class="caution">${e(c)}</p>`).join('');
  return `<section class="card"><p class="of">${e(title)} · card ${number}</p><h1>${e(card.title)}</h1>${unsafe}${card.svg === undefined ? '' : `<figure>${card.svg}</figure>`}${numbers === '' ? '' : `<dl>${numbers}</dl>`}${steps === '' ? '' : `<ul>${steps}</ul>`}${cautions}</section>`;
}
