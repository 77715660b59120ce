/**
 * For esbuild: what stands in for src/engine/data-folder.ts where there is no data/ to read. `tables` is an expression that
 * gives the object of the tables' texts by name whenever one is read, `own` what it needs to be declared before, `place`
 * what an error calls the page, and `files` an expression of a function that reads a file of the user's, where there are any.
 */
export const dataStandIn = (place, tables, own = '', files = 'undefined') => ({
  name: 'data-stand-in',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/]engine[\\/]data-folder\.ts$/ }, () => ({
      loader: 'js',
      contents: `
        ${own}
        const missing = (name) => Object.assign(new Error('no file ' + name + ' in ${place}'), { code: 'ENOENT' });
        export function packageFolder() { throw missing('package.json'); }
        export function dataFileNames() { return Object.keys(${tables}); }
        export const dataRevision = () => 0;
        export function readDataFile(name) { if (!Object.hasOwn(${tables}, name)) throw missing(name); return ${tables}[name]; }
        const readFile = ${files};
        export function readOwnFile(name) { const text = readFile?.(name); if (text === undefined) throw missing(name); return text; }`,
    }));
  },
});
