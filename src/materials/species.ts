import Papa from 'papaparse';
import { nearest, InputError, inspectValue } from '../units/input-error.js';
import { readDataFile } from '../engine/data-folder.js';
import { tableRows } from './data-tables.js';
import { timberAliases } from './timber-aliases.js';
import { Timber, type Property } from './timber.js';

interface Index {
  readonly species: ReadonlyMap<string, Timber>;
  readonly groups: ReadonlyMap<string, Timber>;
  /** Plain form of every name to the id. */
  readonly byName: ReadonlyMap<string, string>;
  /** Plain form of a trade name to the timber it stands for, with the species it covers. */
  readonly trades: ReadonlyMap<string, Timber>;
  /** Plain form of a botanical name that one species alone has. */
  readonly botanical: ReadonlyMap<string, Timber>;
  /** Every name as a person would write it. */
  readonly names: readonly string[];
  /** Plain form of a name that other timbers go by too, with what to mind. */
  readonly cautions: ReadonlyMap<string, string>;
}

/** British and American spellings, hyphens, spaces and capitals are one. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/grey/g, 'gray')
    .replace(/[^a-z0-9]/g, '');

let index: Index | undefined;
function indexed(): Index {
  if (index) return index;
  const { data } = Papa.parse<Record<string, string>>(readDataFile('species.csv'), {
    header: true,
    skipEmptyLines: true,
  });
  const species = new Map<string, Timber>();
  const byName = new Map<string, string>();
  const families = new Map<string, string[]>();
  const names: string[] = [];
  for (const row of data) {
    const id = row.id as string;
    const others = (row.other_names as string).split('; ').filter(Boolean);
    const timber = new Timber({
      id,
      name: row.name as string,
      group: row.group as 'hardwood' | 'softwood',
      ...(row.botanical ? { botanical: row.botanical } : {}),
      otherNames: others,
      memberIds: [],
    });
    species.set(id, timber);
    for (const family of (row.families as string).split('; ').filter(Boolean))
      families.set(family, [...(families.get(family) ?? []), id]);
    for (const name of [timber.name, ...others]) {
      names.push(name);
      // "White oak (Quercus alba)" is found without its brackets too.
      for (const form of [name, name.replace(/ \(.*\)$/, '')])
        if (!byName.has(plain(form))) byName.set(plain(form), id);
    }
    byName.set(plain(id), id);
  }
  const groups = new Map<string, Timber>();
  const add = (
    id: string,
    name: string,
    group: Timber['group'],
    memberIds: readonly string[],
    otherNames: readonly string[],
  ): void => {
    groups.set(id, new Timber({ id, name, group, memberIds, otherNames }));
    for (const n of [id, name, ...otherNames]) if (!byName.has(plain(n))) byName.set(plain(n), id);
    names.push(name);
  };
  const all = [...species.values()];
  for (const kind of ['hardwood', 'softwood'] as const) {
    add(
      `unknown-${kind}`,
      `unknown ${kind}`,
      kind,
      all.filter((t) => t.group === kind).map((t) => t.id),
      [`any ${kind}`, `mixed ${kind}`],
    );
  }
  add(
    'unknown-timber',
    'unknown timber',
    'mixed',
    all.map((t) => t.id),
    ['unknown'],
  );
  for (const [family, ids] of families)
    add(family, family, species.get(ids[0] as string)?.group ?? 'mixed', ids, [
      family.replace(/s$/, ''),
      family.replace(/ies$/, 'y'),
      family.replace(/es$/, ''),
    ]);
  const trades = tradeNames(species);
  names.push(...[...trades.values()].flatMap((t) => t.readName ?? []));
  const cautions = aliasesInto(byName, names);
  return (index = { species, groups, byName, names, trades, botanical: botanicalNames(all), cautions });
}

/** Adds the aliases, and gives what to mind with those that other timbers go by too. */
function aliasesInto(byName: Map<string, string>, names: string[]): Map<string, string> {
  const cautions = new Map<string, string>();
  for (const { alias, species: id, caution } of timberAliases()) {
    const key = plain(alias);
    if (!byName.has(key)) byName.set(key, id);
    if (caution !== '' && byName.get(key) === id) cautions.set(key, caution);
    names.push(alias);
  }
  return cautions;
}

/** Names of the trade that cover several species: the one taken is said, and the others go with it. */
function tradeNames(species: ReadonlyMap<string, Timber>): Map<string, Timber> {
  return new Map(
    tableRows('trade-names').map((row) => {
      const name = row.text('trade_name');
      const taken = species.get(row.species) as Timber;
      const tradeIds = row.text('members').split('; ');
      const others = tradeIds.filter((id) => id !== taken.id).map((id) => species.get(id)?.name ?? id);
      const few =
        others.length > 4
          ? `${others.slice(0, 4).join(', ')} and ${others.length - 4} more`
          : others.join(', ');
      const botanical = taken.botanical && !/[,.]/.test(taken.botanical) ? ` (${taken.botanical})` : '';
      const readAs = `"${name}" is a trade name that also covers ${few}: figures are those of ${taken.name}${botanical}, strength the lowest of all`;
      return [plain(name), new Timber({ ...taken, tradeIds, readAs, readName: name })] as const;
    }),
  );
}

/** Botanical names that one species alone has. */
function botanicalNames(all: readonly Timber[]): Map<string, Timber> {
  const found = new Map<string, Timber[]>();
  for (const t of all)
    if (t.botanical && !/[,.]/.test(t.botanical))
      found.set(plain(t.botanical), [...(found.get(plain(t.botanical)) ?? []), t]);
  return new Map(
    [...found].flatMap(([name, list]) =>
      list.length === 1 && list[0]
        ? [[name, new Timber({ ...list[0], readName: list[0].botanical ?? '' })] as const]
        : [],
    ),
  );
}

/**
 * A timber by its id or any printed name, in British or American spelling: `white oak`, `Oak, white`, `spotted gum`,
 * `unknown hardwood`, `eucalypts`. @throws InputError with the nearest name
 */
export function findSpecies(text: string): Timber {
  const { species, groups, byName, names, trades, botanical, cautions } = indexed();
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
  if (caution !== undefined) return new Timber({ ...found, readAs: caution });
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
  return new Timber({ ...found, readAs: `"${word}" was read as ${found.name}; the data also hold ${few}` });
}

/** Every species' own name, then the groups'. */
export function speciesNames(): string[] {
  const { species, groups } = indexed();
  return [
    ...[...species.values()].map((t) => t.name).sort((a, b) => a.localeCompare(b)),
    ...[...groups.values()].map((t) => t.name),
  ];
}

/** Every species, without the groups. */
export function allSpecies(): readonly Timber[] {
  return [...indexed().species.values()];
}

/** The groups: unknown hardwood, unknown softwood, eucalypts, pines and the like. */
export function allGroups(): readonly Timber[] {
  return [...indexed().groups.values()];
}

/** Species that have a property published. */
export function speciesWith(property: Property): Timber[] {
  return allSpecies().filter((t) => t.has(property));
}
