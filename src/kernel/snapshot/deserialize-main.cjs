// Where a process begins that was started from a frozen start: a plain file of the package, so that what it imports is
// looked for from here.
import('../../../dist/kernel/main.js').catch((error) => {
  process.stderr.write(`reckoner kernel: ${error.stack ?? error}\n`);
  process.exit(1);
});
