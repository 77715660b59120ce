// The few path functions that the widgets' own library uses, for paths with '/'; Node's module is not there in a browser.
export function normalize(path: string): string {
  const up: string[] = [];
  for (const name of path.split('/')) {
    if (name === '' || name === '.') continue;
    if (name === '..' && up.length > 0 && up.at(-1) !== '..') up.pop();
    else if (name !== '..' || !path.startsWith('/')) up.push(name);
  }
  const joined =
    (path.startsWith('/') ? '/' : '') + up.join('/') + (path.endsWith('/') && up.length > 0 ? '/' : '');
  return joined === '' ? '.' : joined;
}
export const join = (...parts: string[]): string => normalize(parts.filter((part) => part !== '').join('/'));
export const isAbsolute = (path: string): boolean => path.startsWith('/');
export function resolve(...parts: string[]): string {
  let path = '';
  for (const part of parts) path = part.startsWith('/') ? part : `${path}/${part}`;
  const full = normalize(`/${path}`);
  return full.length > 1 && full.endsWith('/') ? full.slice(0, -1) : full;
}
export function basename(path: string, ending = ''): string {
  const name = path.replace(/\/+$/, '').split('/').at(-1) ?? '';
  return ending !== '' && name !== ending && name.endsWith(ending) ? name.slice(0, -ending.length) : name;
}
export function dirname(path: string): string {
  const trimmed = path.replace(/\/+$/, '');
  const at = trimmed.lastIndexOf('/');
  return at < 0 ? '.' : at === 0 ? '/' : trimmed.slice(0, at);
}
export function extname(path: string): string {
  const name = basename(path);
  const at = name.lastIndexOf('.');
  return at <= 0 ? '' : name.slice(at);
}
export function relative(from: string, to: string): string {
  const [a, b] = [resolve(from).split('/').filter(Boolean), resolve(to).split('/').filter(Boolean)];
  let same = 0;
  while (same < a.length && same < b.length && a[same] === b[same]) same += 1;
  return [...a.slice(same).map(() => '..'), ...b.slice(same)].join('/');
}
export const sep = '/';
export const posix = { normalize, join, isAbsolute, resolve, basename, dirname, extname, relative, sep };
export default posix;
