/** Makes the frozen start for the kernels to come: run once by a kernel that had to start without one. */
import { freezeStart } from './start/freezer.ts';

process.exitCode = (await freezeStart()) ? 0 : 1;
