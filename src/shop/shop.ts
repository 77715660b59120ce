import { InputError, nearest } from '../units/input-error.js';
import { shopFields, type ShopKey } from './shop-fields.js';
import { savedUnitsFrom, type UnitSystem } from '../units/unit-system.js';
import { savedShop, savedUnits } from './shop-file.js';

// Results in a notebook are shown in the units of the shop.
savedUnitsFrom(() => savedUnits());

/** One kind of clamp in the shop. */
export interface ShopClamp {
  readonly kind: string;
  readonly opens?: string;
  readonly count: number;
}

/** A person's own shop as recipes take it: text with units, and the clamps as rows. */
export type Shop = { readonly [K in Exclude<ShopKey, 'clamps' | 'units'>]: string } & {
  readonly clamps: readonly ShopClamp[];
  readonly units: UnitSystem;
};

/**
 * What is saved under My shop: `stripCount({ topWidth: '640 mm', stripWidth: '48 mm', machineWidth: shop().thicknesserWidth })`.
 * @throws InputError on a value that is not saved there, when it is asked for
 */
export function shop(): Shop {
  const values = (savedShop() ?? {}) as Record<string, unknown>;
  return new Proxy(values, {
    get(target, name) {
      if (typeof name !== 'string' || Object.hasOwn(target, name) || name in Object.prototype)
        return Reflect.get(target, name) as unknown;
      if (name === 'then' || name === 'toJSON') return undefined;
      throw missing(name);
    },
  }) as unknown as Shop;
}

function missing(name: string): InputError {
  const names = Object.keys(shopFields);
  const known = shopFields[name as ShopKey] as { readonly label: string } | undefined;
  if (known !== undefined)
    return new InputError(
      { field: name, message: `is not in your shop yet; give it under My shop (${known.label})` },
      'shop',
    );
  const near = nearest(name, names);
  return new InputError(
    {
      field: name,
      message: `is nothing a shop holds${near === undefined ? `; takes ${names.slice(0, 8).join(', ')} …` : `; did you mean ${near}?`}`,
    },
    'shop',
  );
}
