import { timberHtml, timberText } from './timber-text.js';
import {
  densityOf,
  gravityOf,
  isMeasured,
  type Condition,
  type Density,
  type Gravity,
} from './specific-gravity.js';
import { movementsOf, shrinkagesOf, type Movement, type Shrinkage } from './movement-data.js';
import { over, spreadOver, type Sourced, type PropertyRange } from './property-range.js';
import { elasticRatiosOf, mechanicalOf, type ElasticRatios, type Mechanical } from './strength.js';

/** Data that may be asked of a timber. */
export type Property =
  'movement' | 'shrinkage' | 'density' | 'stiffness' | 'strength' | 'gravity' | 'elasticRatios';

/** What a property is called in a sentence. */
export const propertyWords: Readonly<Record<Property, string>> = {
  movement: 'movement coefficients',
  shrinkage: 'green-to-oven-dry shrinkage',
  density: 'density',
  stiffness: 'modulus of elasticity',
  strength: 'bending strength',
  gravity: 'specific gravity',
  elasticRatios: 'elastic ratios across the grain',
};

export interface TimberFacts {
  readonly id: string;
  readonly name: string;
  readonly group: 'hardwood' | 'softwood' | 'mixed';
  readonly botanical?: string;
  readonly otherNames: readonly string[];
  /** Ids of the species of a group; empty for a species. */
  readonly memberIds: readonly string[];
  /** Set where a general name such as "ash" was read as one species: says which, and what else there is. */
  readonly readAs?: string;
  /** Of a trade name that covers several species: their ids. Strength is then the lowest of them. */
  readonly tradeIds?: readonly string[];
  /** The name that finds this timber again where its id does not: a trade name or a botanical one. */
  readonly readName?: string;
}

/**
 * A timber of data/: a species, or a group of species whose figures are ranges over its published members. Every figure
 * comes with its rows, and a row with its source, its locator, how it was read and what is doubtful about it.
 */
export class Timber implements TimberFacts {
  readonly id: string;
  readonly name: string;
  readonly group: 'hardwood' | 'softwood' | 'mixed';
  readonly botanical?: string;
  readonly otherNames: readonly string[];
  readonly memberIds: readonly string[];
  readonly readAs?: string;
  readonly tradeIds?: readonly string[];
  readonly readName?: string;

  constructor(facts: TimberFacts) {
    this.id = facts.id;
    this.name = facts.name;
    this.group = facts.group;
    if (facts.botanical) this.botanical = facts.botanical;
    this.otherNames = facts.otherNames;
    this.memberIds = facts.memberIds;
    if (facts.readAs) this.readAs = facts.readAs;
    if (facts.tradeIds) this.tradeIds = facts.tradeIds;
    if (facts.readName) this.readName = facts.readName;
  }

  /** The same timber with some facts changed. */
  with(changes: Partial<TimberFacts>): Timber {
    const { id, name, group, botanical, otherNames, memberIds, readAs, tradeIds, readName } = this;
    const own = { id, name, group, otherNames, memberIds };
    return new Timber({
      ...own,
      ...(botanical ? { botanical } : {}),
      ...(readAs ? { readAs } : {}),
      ...(tradeIds ? { tradeIds } : {}),
      ...(readName ? { readName } : {}),
      ...changes,
    });
  }

  /** The name by which every field reads it again. */
  toJSON(): string {
    return this.readName ?? this.id;
  }

  get isGroup(): boolean {
    return this.memberIds.length > 0;
  }

  /** Movement per fraction of moisture, for about 6 to 14 %; the preferred source. */
  movement(): Movement | undefined {
    return this.#once('movement', () => {
      if (!this.isGroup) return movementsOf(this.id)[0];
      const all = this.#readMembers((id) => movementsOf(id)[0]);
      const tangential = spreadOver(all.map((m) => m.tangential));
      const radial = spreadOver(all.map((m) => m.radial));
      return tangential || radial ? { tangential, radial, ...over(all) } : undefined;
    });
  }

  /** Every published movement, the preferred first: where two sources differ both stay. */
  movements(): readonly Movement[] {
    return this.isGroup ? [this.movement()].flatMap((m) => m ?? []) : movementsOf(this.id);
  }

  /** Green-to-oven-dry shrinkage as fractions of the green size; the preferred source. */
  shrinkage(): Shrinkage | undefined {
    return this.#once('shrinkage', () => {
      if (!this.isGroup) return shrinkagesOf(this.id)[0];
      const all = this.#readMembers((id) => shrinkagesOf(id)[0]);
      const tangential = spreadOver(all.map((m) => m.tangential));
      const radial = spreadOver(all.map((m) => m.radial));
      if (!tangential && !radial) return undefined;
      return {
        tangential,
        radial,
        volumetric: spreadOver(all.map((m) => m.volumetric)),
        fibreSaturation: 0.3,
        ...over(all),
      };
    });
  }

  /** Specific gravity on oven-dry mass and the volume in the condition. */
  specificGravity(condition: Condition): Gravity | undefined {
    return this.#once(`gravity ${condition}`, () => {
      if (!this.isGroup) return gravityOf(this.id, condition);
      const all = this.#readMembers((id) => gravityOf(id, condition)).filter(isMeasured);
      const gravity = spreadOver(all.map((g) => g.gravity));
      return gravity && { gravity, ...over(all) };
    });
  }

  /** Density at 12 % moisture, kg/m³. */
  density(): Density | undefined {
    return this.#once('density', () => {
      if (!this.isGroup) return densityOf(this.id);
      const all = this.#readMembers(densityOf).filter(isMeasured);
      const density = spreadOver(all.map((d) => d.density));
      return density && { density, derived: all.some((d) => d.derived), ...over(all) };
    });
  }

  /** Strength and stiffness of clear wood, Pa: means, for judging and comparing, not for design to a code. */
  mechanical(condition: Condition = '12%'): Mechanical | undefined {
    return this.#once(`mechanical ${condition}`, () => {
      if (!this.isGroup) return mechanicalOf(this.id, condition);
      const all = this.#readMembers((id) => mechanicalOf(id, condition));
      if (all.length === 0) return undefined;
      const take = (
        k: 'modulus' | 'bending' | 'hardness' | 'shear' | 'tensionAcross',
      ): PropertyRange | undefined => spreadOver(all.map((m) => m[k]));
      const modulus = take('modulus');
      const bending = take('bending');
      if (!modulus && !bending) return undefined;
      return {
        condition,
        basis: 'mean of clear wood, range over the species',
        modulus,
        bending,
        hardness: take('hardness'),
        shear: take('shear'),
        tensionAcross: take('tensionAcross'),
        ...over(all),
      };
    });
  }

  /** Moduli across the grain and in shear as shares of the modulus along it. */
  elasticRatios(): ElasticRatios | undefined {
    return this.#once('elastic', () => {
      if (!this.isGroup) return elasticRatiosOf(this.id);
      const all = this.#members(elasticRatiosOf);
      const [tangential, radial, shearRadial] = [
        spreadOver(all.map((e) => e.tangential)),
        spreadOver(all.map((e) => e.radial)),
        spreadOver(all.map((e) => e.shearRadial)),
      ];
      if (!tangential || !radial || !shearRadial) return undefined;
      return {
        tangential,
        radial,
        shearRadial,
        shearTangential: spreadOver(all.map((e) => e.shearTangential)),
        ...over(all),
      };
    });
  }

  /** Whether the data can answer. */
  has(property: Property): boolean {
    switch (property) {
      case 'movement':
        return this.movement() !== undefined;
      case 'shrinkage':
        return this.shrinkage() !== undefined;
      case 'density':
        return this.density() !== undefined;
      case 'stiffness':
        return this.mechanical()?.modulus !== undefined;
      case 'strength':
        return this.mechanical()?.bending !== undefined;
      case 'gravity':
        return this.specificGravity('green') !== undefined || this.specificGravity('12%') !== undefined;
      case 'elasticRatios':
        return this.elasticRatios() !== undefined;
    }
  }

  /** The properties that are published for it. */
  available(): Property[] {
    return (Object.keys(propertyWords) as Property[]).filter((p) => this.has(p));
  }

  toString(): string {
    return this.name;
  }

  /** Shown in a notebook as a table of its figures, each with source and doubts. */
  [Symbol.for('Jupyter.display')](): Record<string, string> {
    return { 'text/plain': timberText(this), 'text/html': timberHtml(this) };
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return timberText(this);
  }

  readonly #seen = new Map<string, unknown>();
  #once<T>(key: string, make: () => T): T {
    if (!this.#seen.has(key)) this.#seen.set(key, make());
    return this.#seen.get(key) as T;
  }
  #members<T>(of: (id: string) => T | undefined): T[] {
    return this.memberIds.flatMap((id) => of(id) ?? []);
  }
  /** Figures of the members as they were read; recalled ones only where no member has another. */
  #readMembers<T extends Sourced>(of: (id: string) => T | undefined): T[] {
    const all = this.#members(of);
    const read = all.filter((figures) => figures.rows.every((r) => r.read !== 'memory'));
    return read.length > 0 ? read : all;
  }
}
