/**
 * Run by `node --build-snapshot`: does what every start of a kernel does (load the compiler, read the types of the
 * standard library and of one recipe, make the checker) and leaves it in the memory that Node then writes to a file. A
 * kernel started from that file begins where this ended. The other recipes' types are read when a cell names them: held by
 * every kernel, they would be a sixth of its memory. snapshot-builder.ts runs it.
 */
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { startupSnapshot } from 'node:v8';
import { compileCell } from '../compiler/compile-cell.js';
import { createNodeProgram } from '../compiler/node-host.js';
import { packageRoot } from '../dist-path.js';
import { setSnapshotState } from './snapshot-state.js';

const program = createNodeProgram('/');
// Typical cells, so that what checker and emitter do at their first use is done.
const firstCells = [
  '[1, 2, 3].map((x) => `${x}`)',
  "equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' })",
  'console.log(await 1)',
];
for (const cell of firstCells) {
  const compiled = compileCell(program, cell);
  if ('problems' in compiled)
    throw new Error(`no snapshot can be made: ${compiled.problems.map((p) => p.message).join('; ')}`);
}
program.reset();
setSnapshotState({ compiler: program.ts, program });

// Node 20 loses this one when it deserialises.
const { Console } = console;

startupSnapshot.setDeserializeMainFunction(() => {
  console.Console = Console;
  // And this one, without which an error has no stack.
  if (typeof Error.stackTraceLimit !== 'number') Error.stackTraceLimit = 10;
  // Loaded by its path at run time: the snapshot holds no module loader.
  createRequire(join(packageRoot, 'package.json'))('./src/kernel/snapshot/deserialize-main.cjs');
});
