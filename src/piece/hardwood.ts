import { timberOrGrade } from '../materials/elastic-properties.js';

const known = new Map<string, boolean>();

/** Whether a timber or a grade is a hardwood. */
export function isHardwood(timber: string): boolean {
  let hard = known.get(timber);
  if (hard === undefined) {
    const chosen = timberOrGrade(timber);
    hard = chosen?.is === 'grade' ? /^D\d/i.test(chosen.grade.name) : chosen?.timber.group === 'hardwood';
    if (known.size > 500) known.clear();
    known.set(timber, hard);
  }
  return hard;
}
