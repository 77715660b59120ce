// Writes dist/kernel/names.json: for each name the package offers, the declaration file it comes from, its name there, and
// 'type' where it is no value. With it a cell loads the types of the few names it mentions instead of all of them.
import { createRequire } from 'node:module';
import { existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';

export function writeCellNames(root) {
  const dist = join(root, 'dist');
  const face = join(dist, 'index.d.ts');
  const out = join(dist, 'kernel/names.json');
  rmSync(out, { force: true });
  if (!existsSync(face)) return;
  const ts = createRequire(join(root, 'package.json'))('typescript');
  const program = ts.createProgram([face], {
    noLib: true,
    types: [],
    skipLibCheck: true,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
  });
  const checker = program.getTypeChecker();
  const names = {};
  for (const exported of checker.getExportsOfModule(
    checker.getSymbolAtLocation(program.getSourceFile(face)),
  )) {
    const meant = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    const file = meant.declarations?.[0]?.getSourceFile();
    if (file && file.isDeclarationFile && checker.getSymbolAtLocation(file)?.exports?.has(meant.name)) {
      const place = [relative(dist, file.fileName).replaceAll('\\', '/'), meant.name];
      names[exported.name] = meant.flags & ts.SymbolFlags.Value ? place : [...place, 'type'];
    }
  }
  writeFileSync(out, JSON.stringify(names));
  nameOwnFiles(dist, names);
}

/**
 * The compiler likes to name a type by way of the public face, `import("../../index.js").Quantity`, which would pull in
 * all declarations with each. It is pointed at the file the type comes from.
 */
function nameOwnFiles(dist, names) {
  for (const entry of readdirSync(dist, { recursive: true })) {
    if (!entry.endsWith('.d.ts') || entry === 'index.d.ts') continue;
    const path = join(dist, entry);
    const text = readFileSync(path, 'utf8');
    const direct = text.replace(/import\("(?:\.\.?\/)+(?:index|browser)\.js"\)\.([\w$]+)/g, (whole, name) => {
      if (!Object.hasOwn(names, name) || names[name][1] !== name) return whole;
      const to = relative(dirname(path), join(dist, names[name][0]))
        .replaceAll('\\', '/')
        .replace(/d\.ts$/, 'js');
      return `import("${to.startsWith('.') ? to : `./${to}`}").${name}`;
    });
    if (direct !== text) writeFileSync(path, direct);
  }
}
