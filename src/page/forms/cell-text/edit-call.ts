import { argumentOf, plainValue, isPlainArgument } from '../model/argument.js';
import { CodeText, keyText, literalText } from './literal-text.js';
import type { Located } from './located.js';
import type { CellCall, Property } from './read-cell.js';

/** A change of a cell's text: what stands from `from` to `to` becomes `insert`. */
export interface TextEdit {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** The edits that give a field a value; every other character of the cell stays. Last place first, so that each can be made in turn. */
export function setField(text: string, call: CellCall, key: string, value: unknown): readonly TextEdit[] {
  const property = call.properties.findLast((p) => p.key === key);
  if (property?.value === undefined || hidden(call, property))
    return [insertion(text, call, `${keyText(key)}: ${literalText(value, indentOf(text, call))}`)];
  if (property.isShorthand)
    return [{ from: property.to, to: property.to, insert: `: ${literalText(value)}` }];
  return valueEdits(property.value, value, indentOf(text, call)).sort((a, b) => b.from - a.from);
}

/** A spread that comes later wins over the property. */
const hidden = (call: CellCall, property: Property): boolean =>
  call.properties.slice(call.properties.indexOf(property)).some(({ key }) => key === undefined);

/** Only the parts that differ are written where the shape stays the same. */
function valueEdits(located: Located, value: unknown, indent: string): TextEdit[] {
  const { argument, from, to, parts } = located;
  const whole = [{ from, to, insert: literalText(value, indent) }];
  if (value instanceof CodeText) return whole;
  if (isPlainArgument(argument) && JSON.stringify(plainValue(argument)) === JSON.stringify(tidy(value)))
    return [];
  const entries = partsOf(value);
  if (entries === undefined || parts.size === 0 || parts.size !== entries.length) return whole;
  if (Array.isArray(value) !== (argument.type === 'list')) return whole;
  if (entries.some(([key]) => !parts.has(key))) return whole;
  return entries.flatMap(([key, inner]) => valueEdits(parts.get(key) as Located, inner, `${indent}  `));
}

/** Plain data without the parts that are undefined. */
const tidy = (value: unknown): unknown => plainValue(argumentOf(value));

function partsOf(value: unknown): [string, unknown][] | undefined {
  return typeof value === 'object' && value !== null && !(value instanceof CodeText)
    ? Object.entries(value).filter(([, inner]) => inner !== undefined)
    : undefined;
}

/** Indent of the line that the call's closing bracket stands on. */
function indentOf(text: string, call: CellCall): string {
  const object = call.object;
  if (object === undefined || !text.slice(object.from, object.to).includes('\n')) return '';
  return '  ';
}

/** The new property goes after the last one, in the style of the call. */
function insertion(text: string, call: CellCall, property: string): TextEdit {
  const { object } = call;
  if (object === undefined) return { from: call.bracket, to: call.bracket, insert: `{ ${property} }` };
  const last = call.properties.at(-1);
  const from = last?.to ?? object.from + 1;
  const to = object.to - 1;
  const between = text.slice(from, to);
  const body = between.trimEnd();
  const gap: Gap = {
    body,
    tail: between.slice(body.length),
    isFirst: last === undefined,
    hasComma: commaIn(between) >= 0,
    indent: last === undefined ? '  ' : lineIndent(text, last.from),
  };
  const isLong = text.slice(object.from, object.to).includes('\n');
  return { from, to, insert: isLong ? onNewLine(gap, property) : onSameLine(gap, property) };
}

/** What stands between the last property and the closing brace. */
interface Gap {
  readonly body: string;
  readonly tail: string;
  readonly isFirst: boolean;
  readonly hasComma: boolean;
  readonly indent: string;
}

function onSameLine({ body, tail, isFirst, hasComma }: Gap, property: string): string {
  if (isFirst) return `${body} ${property}${tail || ' '}`;
  return hasComma ? `${body} ${property},${tail}` : `,${body} ${property}${tail}`;
}

function onNewLine({ body, tail, isFirst, hasComma, indent }: Gap, property: string): string {
  const hasEnd = isFirst || hasComma;
  const line = `\n${indent}${property}${hasEnd ? ',' : ''}`;
  return `${hasEnd ? '' : ','}${body}${line}${tail.includes('\n') ? tail : `\n${tail}`}`;
}

/** Place of the comma between a property and what follows, outside comments; -1 where there is none. */
function commaIn(between: string): number {
  return between
    .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, (comment) => ' '.repeat(comment.length))
    .indexOf(',');
}

const lineIndent = (text: string, at: number): string =>
  /^[ \t]*/.exec(text.slice(text.lastIndexOf('\n', at - 1) + 1, at))?.[0] ?? '';

/** The edit that takes a field out with its comma; comments stay. Empty where the field is not there. */
export function removeField(text: string, call: CellCall, key: string): readonly TextEdit[] {
  const property = call.properties.findLast((p) => p.key === key);
  if (property === undefined || call.object === undefined) return [];
  const at = call.properties.indexOf(property);
  const next = call.properties[at + 1];
  const before = call.properties[at - 1];
  const end = next?.from ?? call.object.to - 1;
  const comma = commaIn(text.slice(property.to, end));
  if (comma >= 0) return [lineWithout(text, property.from, property.to + comma + 1, call)];
  if (before === undefined) return [lineWithout(text, property.from, property.to, call)];
  // The last one without a comma of its own: the comma before it goes with it.
  const gap = text.slice(before.to, property.from);
  const earlier = commaIn(gap);
  const kept = gap.slice(0, earlier) + gap.slice(earlier + 1);
  return [{ from: before.to, to: property.to, insert: kept.trimEnd() }];
}

/** Takes out a stretch; a line that is empty then goes too, and so does the space that set it apart. */
function lineWithout(text: string, from: number, to: number, call: CellCall): TextEdit {
  const start = text.lastIndexOf('\n', from - 1);
  const end = text.indexOf('\n', to);
  const isWholeLine =
    start >= 0 && text.slice(start, from).trim() === '' && end >= 0 && text.slice(to, end).trim() === '';
  if (isWholeLine) return { from: start, to: end, insert: '' };
  const object = call.object;
  if (
    object !== undefined &&
    /^\{\s*$/.test(text.slice(object.from, from)) &&
    /^\s*\}$/.test(text.slice(to, object.to))
  )
    return { from: object.from, to: object.to, insert: '{}' };
  const space = /^ */.exec(text.slice(to))?.[0].length ?? 0;
  return { from, to: to + space, insert: '' };
}

/** Gives the result a name, or another one where it is declared. */
export function setName(text: string, call: CellCall, name: string): readonly TextEdit[] {
  if (call.name !== undefined)
    return [{ from: call.nameFrom, to: call.nameFrom + call.name.length, insert: name }];
  return [{ from: call.nameFrom, to: call.nameFrom, insert: `const ${name} = ` }];
}

/** The text once the edits are made. */
export function withEdits(text: string, edits: readonly TextEdit[]): string {
  return [...edits]
    .sort((a, b) => b.from - a.from)
    .reduce((made, { from, to, insert }) => made.slice(0, from) + insert + made.slice(to), text);
}
