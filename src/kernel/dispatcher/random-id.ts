/** An id of 32 hexadecimal digits. `crypto.randomUUID` is missing in a page that came over plain http. */
export const randomId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join(
    '',
  );
