import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, isAbsolute, join } from 'node:path';
import { makeParser } from '../engine/field.js';
import { InputError } from '../units/input-error.js';
import type { UnitSystem } from '../units/unit-system.js';
import { shopFields, type ShopValues } from './shop-fields.js';

type Environment = Readonly<Record<string, string | undefined>>;

const program = 'joiners-reckoner';
const parse = makeParser(shopFields);

/** The file a person's shop stands in: XDG_CONFIG_HOME on Linux, the platform's own place elsewhere. */
export function shopPath(env: Environment = process.env, platform: string = process.platform): string {
  return join(configFolder(env, platform), program, 'shop.json');
}

function configFolder(env: Environment, platform: string): string {
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support');
  const own = platform === 'win32' ? env['APPDATA'] : env['XDG_CONFIG_HOME'];
  // By the XDG rules a relative path is ignored.
  if (own !== undefined && isAbsolute(own)) return own;
  return platform === 'win32' ? join(homedir(), 'AppData', 'Roaming') : join(homedir(), '.config');
}

/** The shop as it is saved; undefined where none is. @throws InputError where the file cannot be read as a shop */
export function savedShop(path: string = shopPath()): ShopValues | undefined {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR') return undefined;
    throw new InputError(`the shop's file ${path} cannot be read (${code ?? 'unknown'})`, 'shop');
  }
  return checkedShop(jsonOf(text, path));
}

function jsonOf(text: string, path: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    throw new InputError(`the shop's file ${path} is not JSON; mend it or delete it`, 'shop');
  }
}

/** The units chosen under My shop; undefined where none are, or where the file cannot be read. */
export function savedUnits(path: string = shopPath()): UnitSystem | undefined {
  try {
    return savedShop(path)?.units as UnitSystem | undefined;
  } catch {
    return undefined;
  }
}

/** The values, once each has been read by its field. @throws InputError naming every wrong one */
export function checkedShop(values: unknown): ShopValues {
  parse(values);
  return values as ShopValues;
}

/** Saves the shop, whole or not at all. @throws InputError naming every wrong value */
export function saveShop(values: unknown, path: string = shopPath()): ShopValues {
  const checked = checkedShop(values);
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const beside = `${path}.${process.pid}.part`;
  writeFileSync(beside, `${JSON.stringify(checked, null, 2)}\n`, { mode: 0o600 });
  renameSync(beside, path);
  return checked;
}
