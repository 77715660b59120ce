import { escapeHtml } from '../engine/escape-html.js';
import hljs from 'highlight.js/lib/core';
import bash from 'highlight.js/lib/languages/bash';
import javascript from 'highlight.js/lib/languages/javascript';
import json from 'highlight.js/lib/languages/json';
import typescript from 'highlight.js/lib/languages/typescript';

hljs.registerLanguage('typescript', typescript);
hljs.registerLanguage('javascript', javascript);
hljs.registerLanguage('json', json);
hljs.registerLanguage('bash', bash);

/** Source code as HTML with its words marked up; in a language it does not know, as plain escaped text. */
export function highlighted(code: string, language = 'typescript'): string {
  const name = hljs.getLanguage(language) ? language : undefined;
  return name === undefined
    ? escapeHtml(code)
    : hljs.highlight(code, { language: name, ignoreIllegals: true }).value;
}
