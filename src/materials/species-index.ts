import Papa from 'papaparse';
import { readDataFile } from '../engine/data-folder.js';
import { tableRows } from './data-tables.js';
import { timberAliases } from './timber-aliases.js';
import { Timber } from './timber.js';

/** Species and groups by id, and every name that finds one. */
export interface SpeciesIndex {
  readonly species: ReadonlyMap<string, Timber>;
  readonly groups: ReadonlyMap<string, Timber>;
  /** Plain form of every name to the id. */
  readonly byName: ReadonlyMap<string, string>;
  /** Plain form of a trade name to the timber it stands for, with the species it covers. */
  readonly trades: ReadonlyMap<string, Timber>;
  /** Plain form of a botanical name that one species alone has. */
  readonly botanical: ReadonlyMap<string, Timber>;
  /** Every name as it is printed. */
  readonly names: readonly string[];
  /** Plain form of a name that other timbers go by too, with what to mind. */
  readonly cautions: ReadonlyMap<string, string>;
}

/** British and American spellings, hyphens, spaces and capitals are one. */
export const plain = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/grey/g, 'gray')
    .replace(/[^a-z0-9]/g, '');

let index: SpeciesIndex | undefined;

/** The index, built at first use. */
export const speciesIndex = (): SpeciesIndex => (index ??= buildIndex());

const list = (cell: string | undefined): string[] => (cell ?? '').split('; ').filter(Boolean);

/** The table of species, read into species, groups and names. */
function buildIndex(): SpeciesIndex {
  const { data } = Papa.parse<Record<string, string>>(readDataFile('species.csv'), {
    header: true,
    skipEmptyLines: true,
  });
  const names: string[] = [];
  const byName = new Map<string, string>();
  const addName = (name: string, id: string): void => {
    if (!byName.has(plain(name))) byName.set(plain(name), id);
  };
  const species = new Map<string, Timber>();
  for (const row of data) {
    const timber = speciesOf(row);
    species.set(timber.id, timber);
    for (const name of [timber.name, ...timber.otherNames]) {
      names.push(name);
      // "White oak (Quercus alba)" is found without its brackets too.
      for (const form of [name, name.replace(/ \(.*\)$/, '')]) addName(form, timber.id);
    }
    byName.set(plain(timber.id), timber.id);
  }
  const groups = new Map<string, Timber>();
  for (const group of groupsOf([...species.values()], familiesOf(data))) {
    groups.set(group.id, group);
    for (const name of [group.id, group.name, ...group.otherNames]) addName(name, group.id);
    names.push(group.name);
  }
  const trades = tradeNames(species);
  names.push(...[...trades.values()].flatMap((t) => t.readName ?? []));
  const cautions = aliasesInto(byName, names);
  return {
    species,
    groups,
    byName,
    names,
    trades,
    botanical: botanicalNames([...species.values()]),
    cautions,
  };
}

const speciesOf = (row: Readonly<Record<string, string>>): Timber =>
  new Timber({
    id: row.id as string,
    name: row.name as string,
    group: row.group as 'hardwood' | 'softwood',
    ...(row.botanical ? { botanical: row.botanical } : {}),
    otherNames: list(row.other_names),
    memberIds: [],
  });

/** Ids of the species of each family, such as the eucalypts. */
function familiesOf(rows: readonly Readonly<Record<string, string>>[]): Map<string, string[]> {
  const families = new Map<string, string[]>();
  for (const row of rows)
    for (const family of list(row.families))
      families.set(family, [...(families.get(family) ?? []), row.id as string]);
  return families;
}

/** Unknown hardwood, softwood and timber, then the families. */
function groupsOf(all: readonly Timber[], families: ReadonlyMap<string, readonly string[]>): Timber[] {
  const ids = (group?: Timber['group']): string[] =>
    all.filter((t) => group === undefined || t.group === group).map((t) => t.id);
  const unknown = (['hardwood', 'softwood'] as const).map(
    (group) =>
      new Timber({
        id: `unknown-${group}`,
        name: `unknown ${group}`,
        group,
        memberIds: ids(group),
        otherNames: [`any ${group}`, `mixed ${group}`],
      }),
  );
  const any = { id: 'unknown-timber', name: 'unknown timber', group: 'mixed' } as const;
  return [
    ...unknown,
    new Timber({ ...any, memberIds: ids(), otherNames: ['unknown'] }),
    ...[...families].map(
      ([family, memberIds]) =>
        new Timber({
          id: family,
          name: family,
          group: all.find((t) => t.id === memberIds[0])?.group ?? 'mixed',
          memberIds,
          // The singular: pines, cherries, beeches.
          otherNames: [family.replace(/s$/, ''), family.replace(/ies$/, 'y'), family.replace(/es$/, '')],
        }),
    ),
  ];
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
      return [plain(name), taken.with({ tradeIds, readAs, readName: name })] as const;
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
        ? [[name, list[0].with({ readName: list[0].botanical ?? '' })] as const]
        : [],
    ),
  );
}
