// Some libraries ask `process` where they are; in a browser there is none.
export const process = {
  env: { NODE_ENV: 'production' } as Record<string, string>,
  argv: [] as string[],
  platform: 'browser',
  cwd: (): string => '/',
  nextTick: (work: () => void): void => queueMicrotask(work),
};
