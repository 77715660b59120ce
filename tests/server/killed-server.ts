// Bundled and started by killed.test.ts: the server itself on a folder, to be killed at any moment.
import { startServer } from '../../src/server/server.js';
import { spawnFakeKernel } from './fake-kernel.js';

const [notebooks = '', page = ''] = process.argv.slice(2);
const server = await startServer({
  notebooks,
  page,
  port: 0,
  sessionKey: 'abc',
  version: '0',
  spawnKernel: spawnFakeKernel,
});
process.send?.(server.port);
process.on('disconnect', () => process.exit(0));
