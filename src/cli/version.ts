import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../engine/data-folder.js';

export function version(): string {
  return (JSON.parse(readFileSync(join(packageFolder(), 'package.json'), 'utf8')) as { version: string })
    .version;
}
