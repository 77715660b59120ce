import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../engine/data-folder.js';

/** KaTeX's style sheet with the fonts that `html` uses put inside, so that a page stands alone; empty when there is no math. */
export function mathCss(html: string): string {
  if (!html.includes('class="katex-html"')) return '';
  const { css, folder } = styleSheet();
  return css.replace(/@font-face\{[^}]*\}/g, (face) => {
    const font = /url\(fonts\/(KaTeX_[\w-]+)\.woff2\)/.exec(face)?.[1];
    if (font === undefined || !uses(html, font)) return '';
    const data = readFileSync(join(folder, 'fonts', `${font}.woff2`)).toString('base64');
    return face.replace(/src:[^}]*/, `src:url(data:font/woff2;base64,${data}) format("woff2")`);
  });
}

/** Which class in KaTeX's HTML calls for which font; a font with no entry here is always put in. */
const calledFor: readonly (readonly [font: RegExp, classes: RegExp])[] = [
  [/_AMS-/, /amsrm|mathbb|textbb/],
  [/_Caligraphic-/, /mathcal/],
  [/_Fraktur-/, /mathfrak|textfrak/],
  [/_Script-/, /mathscr|textscr/],
  [/_SansSerif-/, /mathsf|textsf/],
  [/_Typewriter-/, /mathtt|texttt/],
  [/_Main-(Bold|BoldItalic)$/, /mathbf|textbf|boldsymbol/],
  [/_Main-Italic$/, /mathit|textit/],
  [/_Math-BoldItalic$/, /boldsymbol/],
  [/_Size[1-4]-/, /delimsizing|op-symbol|delim-size|sqrt/],
];

function uses(html: string, font: string): boolean {
  const rule = calledFor.find(([name]) => name.test(font));
  return rule === undefined || rule[1].test(html);
}

let sheet: { css: string; folder: string } | undefined;
function styleSheet(): { css: string; folder: string } {
  if (sheet !== undefined) return sheet;
  const folder = join(packageFolder(), 'dist', 'katex');
  return (sheet = { css: readFileSync(join(folder, 'katex.min.css'), 'utf8'), folder });
}
