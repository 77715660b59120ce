// The one place that loads danfojs, only when a frame is asked for (about a second). Where it is not installed beside this
// package the error says how to add it.
import { createRequire } from 'node:module';
import { InputError } from '../units/input-error.js';

interface Danfo {
  DataFrame: new (rows: readonly object[]) => object;
}
let library: Danfo | undefined;

/** Loads danfojs once. @throws InputError where it is not installed */
export function danfo(): Danfo {
  if (library) return library;
  const require = createRequire(import.meta.url);
  try {
    const tf = require('@tensorflow/tfjs-core') as Record<string, unknown> & {
      enableProdMode(): void;
      Tensor: { prototype: Record<string, unknown> };
    };
    // Production mode keeps the tensor library from printing advice into a cell.
    tf.enableProdMode();
    require('@tensorflow/tfjs-backend-cpu');
    // danfojs calls operations as methods of a tensor; without the native binary nobody defines them.
    for (const [name, operation] of Object.entries(tf)) {
      if (typeof operation !== 'function' || !/^[a-z]/.test(name) || name in tf.Tensor.prototype) continue;
      tf.Tensor.prototype[name] = function (this: unknown, ...rest: unknown[]): unknown {
        return (operation as (...all: unknown[]) => unknown)(this, ...rest);
      };
    }
    return (library = require('danfojs-node') as Danfo);
  } catch (error) {
    if ((error as { code?: string }).code !== 'MODULE_NOT_FOUND') throw error;
    throw new InputError(
      'frame: danfojs-node is not installed here; add danfojs-node, @tensorflow/tfjs-core and @tensorflow/tfjs-backend-cpu with the overrides named in DEVELOPERS.md',
    );
  }
}
