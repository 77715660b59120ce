import { InputError } from '../../units/input-error.js';
import { longestIn, longestRoundCorner } from './corner.js';

/** A place on the way: metres. */
export interface Gate {
  readonly kind: 'corner' | 'door' | 'landing' | 'van';
  readonly first: number;
  readonly second?: number | undefined;
  readonly height: number;
}

/** A way to carry a piece through a place, and the longest that goes so; infinite where length does not matter. */
export interface Way {
  readonly name: string;
  readonly way: string;
  readonly longest: number;
}

const mm = (m: number): string => (m * 1000).toFixed(0);

/** Every way through a place for a piece of a width and a height. @throws InputError without the second size where it counts */
export function waysThrough(gate: Gate, width: number, height: number): readonly Way[] {
  const name = `${gate.kind} ${mm(gate.first)}${gate.second === undefined ? '' : ` x ${mm(gate.second)}`}, ${mm(gate.height)} mm high`;
  const ways = [
    { way: 'lying', across: width, up: height },
    { way: 'on edge', across: height, up: width },
  ];
  if (gate.kind === 'door')
    return ways.map(({ way, across, up }) => ({
      name,
      way,
      longest: across <= gate.first && up <= gate.height ? Infinity : 0,
    }));
  const { second } = gate;
  if (second === undefined)
    throw new InputError({
      field: 'gates.second',
      message: `missing for a ${gate.kind}; takes the other width, such as "1000 mm"`,
    });
  return ways.flatMap(({ way, across, up }) => {
    const plan =
      gate.kind === 'corner'
        ? longestRoundCorner(gate.first, second, across)
        : longestIn(Math.max(gate.first, second), Math.min(gate.first, second), across);
    const level = up <= gate.height ? plan : 0;
    return [
      { name, way, longest: level },
      // Tilted up it lies askew between floor and ceiling, as a plan lies askew in a floor.
      { name, way: `${way}, tilted up`, longest: plan === 0 ? 0 : longestIn(plan, gate.height, up) },
    ];
  });
}
