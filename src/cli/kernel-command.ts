import { installKernel, uninstallKernel } from '../kernel/install.js';
import { UsageError, type Words } from './usage.js';

/** `reckoner kernel install|uninstall [--prefix DIR]`. */
export async function kernel({ plain, values }: Words): Promise<number> {
  const prefix = values.get('prefix');
  const place = prefix === undefined ? {} : { prefix };
  if (plain[0] === 'install' && plain.length === 1) {
    process.stdout.write(`The kernel "reckoner" is installed in ${await installKernel(place)}\n`);
    return 0;
  }
  if (plain[0] === 'uninstall' && plain.length === 1) {
    const from = await uninstallKernel(place);
    process.stdout.write(
      from === undefined
        ? 'No kernel "reckoner" was installed there.\n'
        : `The kernel "reckoner" is removed from ${from}\n`,
    );
    return 0;
  }
  throw new UsageError(`kernel: got ${JSON.stringify(plain.join(' '))}, takes install or uninstall`);
}
