import { timberOrGrade } from '../materials/elastic-properties.js';

const known = new Map<string, string>();

/** A species for weight and movement: that of the timber, or the range over softwoods or hardwoods for a grade. */
export function speciesOf(timber: string): string {
  let species = known.get(timber);
  if (species === undefined) {
    const chosen = timberOrGrade(timber);
    // Grades whose names begin with D are those of hardwoods in EN 338.
    species =
      chosen?.is === 'grade'
        ? /^D\d/i.test(chosen.grade.name)
          ? 'unknown hardwood'
          : 'unknown softwood'
        : timber;
    if (known.size > 500) known.clear();
    known.set(timber, species);
  }
  return species;
}
