#!/usr/bin/env node
// The command. In a checkout it builds first; an installed package has dist/ already.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './prepare.mjs';

if (!existsSync(join(root, 'dist', 'cli.js'))) {
  const { buildIfNeeded, install } = await import('./prepare.mjs');
  install();
  await buildIfNeeded();
}
await import('../../dist/cli.js');
