import { nearest, InputError, inspectValue } from '../units/input-error.js';
import { plain, speciesIndex } from './species-index.js';
import type { Timber, Property } from './timber.js';

/**
 * A timber by its id or any printed name, in British or American spelling: `white oak`, `Oak, white`, `spotted gum`,
 * `unknown hardwood`, `eucalypts`. @throws InputError with the nearest name
 */
export function findSpecies(text: string): Timber {
  const { species, groups, byName, names, trades, botanical, cautions } = speciesIndex();
  const wanted = plain(text.slice(0, 120));
  const trade = trades.get(wanted);
  if (trade) return trade;
  const id = byName.get(wanted);
  const found =
    id === undefined ? botanical.get(wanted) : (species.get(id) ?? groups.get(id) ?? botanical.get(wanted));
  if (!found) {
    const near = nearest(text.trim(), names);
    const hint = near
      ? `; did you mean ${inspectValue(near)}?`
      : '; takes a species such as "white oak" or "spotted gum", or "unknown hardwood" or "unknown softwood" for a range';
    throw new InputError(`no species ${inspectValue(text)}${hint}`);
  }
  const caution = cautions.get(wanted);
  if (caution !== undefined) return found.with({ readAs: caution });
  return generalName(text, found, species) ?? found;
}

/** A bare genus name fits many species: the one taken is said, with the others. */
function generalName(text: string, found: Timber, species: ReadonlyMap<string, Timber>): Timber | undefined {
  const word = text.trim().toLowerCase();
  if (found.isGroup || !/^[a-z]+$/.test(word) || plain(found.name) === word) return undefined;
  const others = [...species.values()]
    .filter((t) => t !== found && t.name.toLowerCase().endsWith(` ${word}`) && t.has('movement'))
    .map((t) => t.name);
  if (others.length === 0) return undefined;
  const few =
    others.length > 6 ? `${others.slice(0, 6).join(', ')} and ${others.length - 6} more` : others.join(', ');
  return found.with({ readAs: `"${word}" was read as ${found.name}; the data also hold ${few}` });
}

/** Every species' own name, then the groups'. */
export function speciesNames(): string[] {
  const { species, groups } = speciesIndex();
  return [
    ...[...species.values()].map((t) => t.name).sort((a, b) => a.localeCompare(b)),
    ...[...groups.values()].map((t) => t.name),
  ];
}

/** Every species, without the groups. */
export function allSpecies(): readonly Timber[] {
  return [...speciesIndex().species.values()];
}

/** The groups: unknown hardwood, unknown softwood, eucalypts, pines and the like. */
export function allGroups(): readonly Timber[] {
  return [...speciesIndex().groups.values()];
}

/** Species that have a property published. */
export function speciesWith(property: Property): Timber[] {
  return allSpecies().filter((t) => t.has(property));
}
