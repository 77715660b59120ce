import { escapeHtml } from '../engine/escape-html.js';
import { jsonForHtml } from './json-for-html.js';
import { mathCss } from './math-css.js';
import { pageStyle } from './page-style.js';

export interface Page {
  readonly title: string;
  /** HTML of the body, safe already. */
  readonly body: string;
  /** More style, after the common one. */
  readonly style?: string;
  /** JavaScript put at the end of the page. */
  readonly script?: string;
  /** The script makes functions from text (a chart's expressions), which a browser must be told to allow. */
  readonly evaluates?: boolean;
  /** Value kept in the page as JSON under an id, for a program that reads the page again. */
  readonly data?: { readonly id: string; readonly value: unknown };
  readonly language?: string;
}

/**
 * One self-contained HTML page: style, fonts, charts and script inside, nothing asked for from anywhere. A policy in its head
 * makes the browser refuse whatever might want to load all the same.
 */
export function pageHtml(page: Page): string {
  const data =
    page.data === undefined
      ? ''
      : `<script type="application/json" id="${escapeHtml(page.data.id)}">${jsonForHtml(page.data.value)}</script>\n`;
  const script =
    page.script === undefined
      ? ''
      : `<script>${page.script.replace(/<\/(script)/gi, '<\\/$1').replace(/<!--/g, '<\\!--')}</script>\n`;
  const scriptPolicy =
    page.script === undefined
      ? "'none'"
      : `'unsafe-inline'${page.evaluates === true ? " 'unsafe-eval'" : ''}`;
  return `<!doctype html>
<html lang="${escapeHtml(page.language ?? 'en')}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'; font-src data:; script-src ${scriptPolicy}; base-uri 'none'; form-action 'none'">
<meta name="generator" content="joiners-reckoner">
<title>${escapeHtml(page.title)}</title>
<style>${mathCss(page.body)}${pageStyle}${page.style ?? ''}</style>
</head>
<body>
${page.body}
${data}${script}</body>
</html>
`;
}
