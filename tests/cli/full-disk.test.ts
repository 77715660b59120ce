import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const command = fileURLToPath(new URL('../../src/launch/reckoner.mjs', import.meta.url));

// Linux has a file that is always full; elsewhere there is nothing to write to that fails.
it.runIf(existsSync('/dev/full'))('output that cannot be written is an error, exit 1', () => {
  const full = openSync('/dev/full', 'w');
  const { status, stderr } = spawnSync(process.execPath, [command, 'list'], {
    stdio: ['ignore', full, 'pipe'],
    encoding: 'utf8',
  });
  closeSync(full);
  expect(status).toBe(1);
  expect(stderr).toMatch(/^reckoner: standard output could not be written: ENOSPC/);
});
