import { server } from '../../server-api.js';

let kept: Promise<unknown> | undefined;

/** The person's own shop, read once a page; undefined where none is saved or the server has none. */
export function readShop(): Promise<unknown> {
  return (kept ??= server
    .get<{ shop: unknown }>('/reckoner/shop')
    .then(({ shop }) => shop ?? undefined)
    .catch(() => undefined));
}

/** The shop has been changed: it is read anew when it is next asked for. */
export function forgetShop(): void {
  kept = undefined;
}
