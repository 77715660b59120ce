import { el } from '../../element.js';

/** On a phone: the sentence under the top edge while the card itself is out of sight. */
export function answerPeek(card: HTMLElement): { readonly node: HTMLElement; say(sentence: string): void } {
  const words = el('span', {});
  const node = el(
    'div',
    { class: 'answer-peek', hidden: true },
    words,
    el(
      'button',
      { type: 'button', class: 'door', onclick: () => card.scrollIntoView({ behavior: 'smooth' }) },
      'see all',
    ),
  );
  let isInView = true;
  const show = (): void => void (node.hidden = isInView || words.textContent === '');
  new IntersectionObserver(([entry]) => {
    isInView = entry?.isIntersecting ?? true;
    show();
  }).observe(card);
  return {
    node,
    say(sentence) {
      words.textContent = sentence;
      show();
    },
  };
}
