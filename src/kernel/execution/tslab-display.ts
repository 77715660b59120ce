/** tslab's display API for cells that `import 'tslab'`: its outputs become those of the cell. Loaded only when asked for. */
import Module, { createRequire } from 'node:module';
import { loadCompiler } from '../compiler/compiler-loader.js';
import type { MimeBundle, NbOutput } from '../message.js';
import { requirePackages } from '../optional-packages.js';

interface TslabOutput {
  data: MimeBundle;
  metadata: Record<string, unknown>;
  transient?: { display_id?: string };
}
interface TslabJupyter {
  lastWriteDisplayData?: (output: TslabOutput, update?: boolean) => void;
}

/** Loads tslab and directs what it displays to `emit`. `require` finds the package. */
export function loadTslab(
  require: NodeJS.Require,
  emit: (output: NbOutput) => void,
): Record<string, unknown> {
  requirePackages("import 'tslab'", ['tslab']);
  shareCompiler(require);
  const api = require('tslab') as Record<string, unknown>;
  const jupyter = require('tslab/dist/jupyter.js') as TslabJupyter;
  jupyter.lastWriteDisplayData = ({ data, metadata, transient }, update) => {
    const id = transient?.display_id;
    if (update && id !== undefined)
      emit({ output_type: 'update_display_data', data, metadata, transient: { display_id: id } });
    else
      emit({
        output_type: 'display_data',
        data,
        metadata,
        ...(id === undefined ? {} : { transient: { display_id: id } }),
      });
  };
  return api;
}

/** tslab requires a TypeScript of its own: it gets the kernel's, which saves the time and memory of a second one. */
function shareCompiler(require: NodeJS.Require): void {
  const file = createRequire(require.resolve('tslab')).resolve('@tslab/typescript-for-tslab');
  require.cache[file] ??= Object.assign(new Module(file), { exports: loadCompiler(), loaded: true });
}
