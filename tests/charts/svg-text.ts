import { textWidth } from '../../src/charts/text-width.js';

/** A word of an SVG document with the box it stands in, in px of the document. For looking at charts in tests. */
export interface Word {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly fontSize: number;
  readonly font: string;
}

/** Walks the groups of an SVG, adding up their transforms, and boxes each text by the font's advance widths (checked against a browser's in textWidth.test.ts). */
export function wordsIn(svg: string): Word[] {
  const stack: [number, number][] = [[0, 0]];
  const words: Word[] = [];
  const tag = /<(\/?)(svg|g|text|path|rect|line)\b([^>]*?)(\/?)>(?:([^<]*)<\/text>)?/g;
  for (const [, closing, name, attributes = '', selfClosed, content] of svg.matchAll(tag)) {
    if (name === 'g' && closing === '/') stack.pop();
    else if (name === 'g' && selfClosed === '') {
      const [x, y] = stack.at(-1) as [number, number];
      const [dx, dy] = translate(attributes);
      stack.push([x + dx, y + dy]);
    } else if (name === 'text' && content)
      words.push(wordOf(content, attributes, stack.at(-1) as [number, number]));
  }
  return words;
}

/** The box of a text that stands in a group at `gx`, `gy`. */
function wordOf(content: string, attributes: string, [gx, gy]: readonly [number, number]): Word {
  const [tx, ty] = translate(attributes);
  const fontSize = Number(/font-size="([\d.]+)px"/.exec(attributes)?.[1] ?? 11);
  const anchor = /text-anchor="(\w+)"/.exec(attributes)?.[1] ?? 'start';
  const turn = (Number(/rotate\((-?[\d.]+)/.exec(attributes)?.[1] ?? 0) * Math.PI) / 180;
  const long = textWidth(content.replace(/&\w+;/g, '&'), fontSize, attributes.includes('font-weight="bold"'));
  const from = anchor === 'start' ? 0 : anchor === 'end' ? -long : -long / 2;
  const corners = [
    [from, -0.8 * fontSize],
    [from + long, -0.8 * fontSize],
    [from, 0.2 * fontSize],
    [from + long, 0.2 * fontSize],
  ].map(
    ([x = 0, y = 0]) =>
      [
        gx + tx + x * Math.cos(turn) - y * Math.sin(turn),
        gy + ty + x * Math.sin(turn) + y * Math.cos(turn),
      ] as const,
  );
  return {
    text: content,
    left: Math.min(...corners.map((c) => c[0])),
    right: Math.max(...corners.map((c) => c[0])),
    top: Math.min(...corners.map((c) => c[1])),
    bottom: Math.max(...corners.map((c) => c[1])),
    fontSize,
    font: /font-family="([^"]*)"/.exec(attributes)?.[1] ?? '',
  };
}

function translate(attributes: string): [number, number] {
  const at = /translate\((-?[\d.e-]+)[, ](-?[\d.e-]+)\)/.exec(attributes);
  return [Number(at?.[1] ?? 0), Number(at?.[2] ?? 0)];
}

export function sizeOf(svg: string): { width: number; height: number } {
  return {
    width: Number(/ width="([\d.]+)"/.exec(svg)?.[1]),
    height: Number(/ height="([\d.]+)"/.exec(svg)?.[1]),
  };
}

/** How many marks of a kind (`line`, `symbol`, `rect`, `text`, `rule`, `area`) the drawing holds, axes and legends left out. */
export function marksIn(svg: string, kind: string): number {
  let count = 0;
  for (const [, inner = ''] of svg.matchAll(
    new RegExp(`<g class="mark-${kind} role-mark[^"]*"[^>]*>(.*?)</g>`, 'gs'),
  ))
    count += inner.match(/<(path|rect|line|text)\b/g)?.length ?? 0;
  return count;
}
