/**
 * The worker in which a site runs its cells. What they may import is the package itself; what they may read are the demo's files and
 * the user's own, which the build's stand-in for Node's files looks up by this name.
 */
import { serveKernel } from '../kernel/browser-host/dispatcher-worker.js';

serveKernel(self, { 'joiners-reckoner': () => import('../index.js') }, (files) =>
  Object.assign(globalThis, { reckonerFiles: files }),
);
