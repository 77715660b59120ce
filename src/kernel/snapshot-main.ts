/** Makes the snapshot for later kernels: run once by a kernel that had to start without one. */
import { buildSnapshot } from './snapshot/snapshot-builder.js';

process.exitCode = (await buildSnapshot()) ? 0 : 1;
