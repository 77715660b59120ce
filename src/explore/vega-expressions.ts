import type { Dialect } from '../units/expression-code.js';

/** The expressions of Vega: functions without "Math.", and no cube root nor logarithm to base 10. */
export const vegaExpressions: Dialect = {
  pi: 'PI',
  call: (name, args) => {
    const [x] = args;
    // A power of 1/3 has no value below zero.
    if (name === 'cbrt') return `((${x}) < 0 ? -pow(-(${x}), 1 / 3) : pow(${x}, 1 / 3))`;
    if (name === 'log10') return `(log(${x}) / LN10)`;
    return `${name}(${args.join(', ')})`;
  },
};
