/** Tags without attributes that only set words apart. */
const harmless = /^<\/?(?:b|br|em|i|kbd|s|small|strong|sub|sup|u) ?\/?>$/i;
/** A tag, a comment or an address in brackets, as CommonMark knows them; `a<b` in a formula is none. */
const rawHtml = /<(?:[A-Za-z][A-Za-z0-9-]*(?=[\s/>]|$)|[A-Za-z][\w+.-]*:|\/[A-Za-z]|[!?])[^>]*>?/g;
const addressInBrackets = /^<(?:https?:\/\/|mailto:)[^\s<>]+>$/i;

/**
 * Markdown from a notebook as a saved note may carry it: programs that show Markdown run or load what stands in it, so raw HTML becomes
 * its own text, pictures from elsewhere become links, and links lead to web and mail addresses or files only. Code stays as it is.
 */
export function safeMarkdown(markdown: string): string {
  let fence: string | undefined;
  return markdown
    .split('\n')
    .map((line) => {
      const mark = /^ {0,3}(`{3,}|~{3,})/.exec(line)?.[1];
      if (fence === undefined) {
        fence = mark;
        return mark === undefined ? safeLine(line) : line;
      }
      if (mark?.startsWith(fence) && line.trim() === mark) fence = undefined;
      return line;
    })
    .join('\n');
}

/** Text in a fence that nothing in it can close. */
export function fencedText(text: string): string {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}\n${text}\n${fence}`;
}

/** Everything outside `code` between back quotes. */
const safeLine = (line: string): string =>
  line
    .split(/(`+[^`]+`+)/)
    .map((part, at) => (at % 2 === 1 ? part : safeWords(part)))
    .join('');

function safeWords(words: string): string {
  return words
    .replace(rawHtml, (tag) =>
      harmless.test(tag) || addressInBrackets.test(tag) ? tag : tag.replaceAll('<', '&lt;'),
    )
    .replace(/!\[([^\]]*)\]\(\s*<?(?:[a-z][a-z+.-]*:)?\/\//gi, (whole) => whole.slice(1))
    .replace(/!\[([^\]]*)\]\[/g, '[$1][')
    .replace(
      /(\]\(\s*<?|^ {0,3}\[[^\]]+\]:\s*<?)([a-z][a-z+.-]*):/gim,
      (whole, before: string, scheme: string) =>
        /^(?:https?|mailto)$/i.test(scheme) || /^data$/i.test(scheme) ? whole : `${before}#${scheme}-`,
    );
}
