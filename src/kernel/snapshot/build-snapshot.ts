/**
 * Run by `node --build-snapshot`: does what every start of a kernel does alike (load the compiler, read the types of the
 * standard library and of the package, make the checker, load the package) and leaves it in the memory that Node then
 * writes to a file. A kernel started from that file begins where this ended. freezer.ts has it made.
 */
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { startupSnapshot } from 'node:v8';
import { compileCell } from '../compiler/compile-cell.js';
import { IncrementalProgram } from '../compiler/incremental-program.js';
import { packageRoot } from '../dist-path.js';
import { setSnapshotState } from './snapshot-state.js';

const room = new IncrementalProgram('/');
room.loadWholePackage();
// Cells as people write them, so that what checker and emitter do at their first use is done.
const firstCells = [
  '[1, 2, 3].map((x) => `${x}`)',
  "equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' })",
  'console.log(await 1)',
];
for (const cell of firstCells) {
  const compiled = compileCell(room, cell);
  if ('problems' in compiled)
    throw new Error(`a start cannot be frozen: ${compiled.problems.map((p) => p.message).join('; ')}`);
}
room.reset();
setSnapshotState({ compiler: room.ts, program: room });

// Node 20 loses this one when it thaws.
const { Console } = console;

startupSnapshot.setDeserializeMainFunction(() => {
  console.Console = Console;
  // And this one, without which an error does not tell where it arose.
  if (typeof Error.stackTraceLimit !== 'number') Error.stackTraceLimit = 10;
  // Found by its path at run time: the frozen memory holds no loader of files.
  createRequire(join(packageRoot, 'package.json'))('./src/kernel/snapshot/deserialize-main.cjs');
});
