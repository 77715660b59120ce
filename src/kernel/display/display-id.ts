/** A new identifier of a display. `crypto.randomUUID` would not be there on a page without HTTPS. */
export function newDisplayId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
