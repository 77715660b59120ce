/** Makes the frozen start for the kernels to come: run once by a kernel that had to start without one. */
import { buildSnapshot } from './snapshot/snapshot-builder.js';

process.exitCode = (await buildSnapshot()) ? 0 : 1;
