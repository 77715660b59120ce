import katex from 'katex';

/** `typeset`: KaTeX's own HTML with its fonts, the same in every browser. `mathml`: the browser typesets; a tenth of the size. */
export type MathForm = 'typeset' | 'mathml';

/**
 * LaTeX as HTML, with MathML inside for screen readers. A formula that KaTeX cannot read is shown as its source with the
 * reason in its tooltip; nothing in a formula may load or link anything.
 */
export function mathHtml(latex: string, display: boolean, form: MathForm = 'typeset'): string {
  return katex.renderToString(latex, {
    displayMode: display,
    throwOnError: false,
    trust: false,
    strict: 'ignore',
    maxSize: 20,
    maxExpand: 500,
    output: form === 'mathml' ? 'mathml' : 'htmlAndMathml',
  });
}
