import katex from 'katex';
import 'katex/dist/katex.min.css';

/** Typesets `\(..\)`, `\[..\]`, `$..$` and `$$..$$` in the text of an element, code left alone. A formula that cannot be read stays as text. */
export function typeset(element: HTMLElement): void {
  const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT, {
    acceptNode: (node) =>
      node.parentElement?.closest('code, pre, .katex, script, style, textarea')
        ? NodeFilter.FILTER_REJECT
        : NodeFilter.FILTER_ACCEPT,
  });
  const texts: Text[] = [];
  while (walker.nextNode())
    if (/\$|\\[([]/.test(walker.currentNode.textContent ?? '')) texts.push(walker.currentNode as Text);
  for (const text of texts) text.replaceWith(...pieces(text.data));
}

const formula = /\$\$([\s\S]+?)\$\$|\\\[([\s\S]+?)\\\]|\\\(([\s\S]+?)\\\)|\$((?:[^$\\\n]|\\.)+?)\$(?!\d)/g;

function pieces(text: string): (Node | string)[] {
  const out: (Node | string)[] = [];
  let from = 0;
  for (const match of text.matchAll(formula)) {
    out.push(text.slice(from, match.index));
    const display = match[1] ?? match[2];
    out.push(formulaNode(display ?? match[3] ?? match[4] ?? '', display !== undefined));
    from = match.index + match[0].length;
  }
  out.push(text.slice(from));
  return out;
}

export function formulaNode(latex: string, display: boolean): HTMLElement {
  const node = document.createElement('span');
  katex.render(latex, node, {
    displayMode: display,
    throwOnError: false,
    output: 'htmlAndMathml',
    strict: 'ignore',
    trust: false,
    maxExpand: 200,
    maxSize: 20,
  });
  return node;
}
