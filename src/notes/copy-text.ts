import type { Working } from '../engine/trace.js';

/** A line of the workings as text to paste: plain for a message, LaTeX for a paper, Markdown for a post. */
export function copyTexts(w: Working): { text: string; LaTeX: string; Markdown: string } {
  if (w.kind === 'remark') return { text: w.text, LaTeX: w.text, Markdown: w.text };
  return {
    text: `${w.text}: ${w.plain}\n${w.numbersPlain}`,
    LaTeX: `\\begin{aligned}\n${aligned(w.latex)} \\\\\n${aligned(w.numbersLatex)}\n\\end{aligned}`,
    Markdown: `${w.text}:\n\n$$${w.latex}$$\n\n$$${w.numbersLatex}$$`,
  };
}

/** The first equals sign of a line is where aligned lines meet. */
function aligned(latex: string): string {
  return latex.replace('=', '&=');
}

/**
 * What the buttons of a saved page do. Kept as text: it runs in the reader's browser, from a file, without us. An older
 * browser or one that refuses the clipboard gets the words selected in a box to copy by hand.
 */
export const copyScript = `
document.addEventListener('click', function (event) {
  var button = event.target.closest && event.target.closest('button[data-copy]');
  if (!button) return;
  var words = button.getAttribute('data-copy');
  function done() { button.classList.add('done'); setTimeout(function () { button.classList.remove('done'); }, 1600); }
  function byHand() {
    var box = document.createElement('textarea');
    box.value = words; box.setAttribute('aria-label', 'copy this');
    box.style.cssText = 'position:fixed;left:5%;bottom:5%;width:90%;height:6em;z-index:9';
    document.body.appendChild(box); box.select();
    var ok = false; try { ok = document.execCommand('copy'); } catch (e) { ok = false; }
    if (ok) { box.remove(); done(); } else box.addEventListener('blur', function () { box.remove(); });
  }
  if (navigator.clipboard && navigator.clipboard.writeText) navigator.clipboard.writeText(words).then(done, byHand); else byHand();
});
`;
