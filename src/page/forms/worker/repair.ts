import { kinds, type Kind } from '../../../units/kind.js';
import { nearest } from '../../../units/input-error.js';
import type { Field } from '../../../engine/field.js';

/** A text that the field takes and that was likely meant: the number with another unit, or the nearest word. Undefined where none passes. */
export function repairOf(field: Field, value: unknown): string | undefined {
  const text = String(value).trim();
  const number = /^[-+]?\d+(?:[.,]\d+)?(?:\s+\d+\/\d+)?/.exec(text)?.[0];
  const candidates = [
    ...(number === undefined ? [] : unitsOf(field).map((unit) => `${number.replace(',', '.')} ${unit}`)),
    ...nearestWord(field, text),
  ];
  return candidates.find((candidate) => candidate !== text && passes(field, candidate));
}

function unitsOf(field: Field): readonly string[] {
  const facts = Object.hasOwn(kinds, field.kind) ? kinds[field.kind as Kind] : undefined;
  return facts === undefined || facts.plain === true ? [] : [...facts.metric, ...facts.inch];
}

function nearestWord(field: Field, text: string): string[] {
  const word = nearest(text, field.choices ?? []);
  return word === undefined ? [] : [word];
}

function passes(field: Field, text: string): boolean {
  try {
    field.read(text);
    return true;
  } catch {
    return false;
  }
}
