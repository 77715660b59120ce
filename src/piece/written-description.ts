import { toSerializable } from '../engine/to-serializable.js';

/** The description as plain data that a file can hold; quantities as a person writes them. */
export function writtenDescription(written: object): object {
  return toSerializable(written) as object;
}
