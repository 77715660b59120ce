// Where a process that was started from a snapshot begins: a plain file of the package, so that what it imports is
// resolved from here.
import('../../../dist/kernel/main.js').catch((error) => {
  process.stderr.write(`reckoner kernel: ${error.stack ?? error}\n`);
  process.exit(1);
});
