import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { catalogue } from '../../src/recipes/catalogue.js';
import { stripCount } from '../../src/recipes/lamination/strip-count.js';
import { shopFields } from '../../src/shop/shop-fields.js';
import { savedShop, saveShop, shopPath } from '../../src/shop/shop-file.js';
import { shop } from '../../src/shop/shop.js';
import { shopKeys } from '../../src/page/forms/shop/shop-keys.js';

let folder: string;
let former: string | undefined;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'reckoner-shop-'));
  former = process.env['XDG_CONFIG_HOME'];
  process.env['XDG_CONFIG_HOME'] = folder;
});
afterEach(() => {
  if (former === undefined) delete process.env['XDG_CONFIG_HOME'];
  else process.env['XDG_CONFIG_HOME'] = former;
  rmSync(folder, { recursive: true, force: true });
});

describe('my shop', () => {
  it('is saved as plain JSON that this user alone reads, and fills a recipe', () => {
    expect(savedShop()).toBeUndefined();
    saveShop({ thicknesserWidth: '260 mm', clamps: [{ kind: 'sash clamp', count: 6 }] });
    expect(JSON.parse(readFileSync(shopPath(), 'utf8'))).toEqual(savedShop());
    if (process.platform !== 'win32') expect(statSync(shopPath()).mode & 0o777).toBe(0o600);
    const top = { topWidth: '640 mm', stripWidth: '48 mm' };
    const result = stripCount({ ...top, machineWidth: shop().thicknesserWidth });
    expect(result.toJSON().outputs).toEqual(stripCount({ ...top, machineWidth: '260 mm' }).toJSON().outputs);
    expect(shop().clamps[0]?.count).toBe(6);
  });

  it('says which value is missing when it is asked for, and the nearest name', () => {
    expect(() => shop().sawKerf).toThrow(/sawKerf: is not in your shop yet/);
    expect(() => (shop() as unknown as Record<string, string>)['sawKref']).toThrow(/did you mean sawKerf/);
  });

  it('refuses wrong values with the field, and keeps the file as it was', () => {
    saveShop({ sawKerf: '3 mm' });
    expect(() => saveShop({ sawKerf: '3 furlong', place: 7 })).toThrow(/sawKerf.*place/s);
    expect(savedShop()).toEqual({ sawKerf: '3 mm' });
  });

  it('tells a file that is no shop by its path, and reads one with a byte order mark', () => {
    mkdirSync(dirname(shopPath()), { recursive: true });
    writeFileSync(shopPath(), '{ half');
    expect(() => savedShop()).toThrow(/shop\.json is not JSON/);
    writeFileSync(shopPath(), '\uFEFF{"sawKerf":"3 mm"}');
    expect(savedShop()).toEqual({ sawKerf: '3 mm' });
  });

  it('stands where each platform keeps such files', () => {
    expect(shopPath({}, 'darwin')).toMatch(/Library\/Application Support\/joiners-reckoner\/shop\.json$/);
    expect(shopPath({ XDG_CONFIG_HOME: 'relative' }, 'linux')).toMatch(
      /\.config\/joiners-reckoner\/shop\.json$/,
    );
    expect(shopPath({ APPDATA: '/roaming' }, 'win32')).toContain('/roaming');
  });

  it('fills fields that there are, with values that they take', () => {
    for (const [name, keys] of Object.entries(shopKeys)) {
      const recipe = catalogue.find((r) => r.name === name);
      expect(recipe, name).toBeDefined();
      for (const [field, key] of Object.entries(keys)) {
        expect(recipe?.inputs[field], `${name}.${field}`).toBeDefined();
        expect(Object.keys(shopFields), `${name}.${field}`).toContain(key);
      }
    }
  });
});
