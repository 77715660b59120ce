// Figures of long runs are kept in tests/proof/figures/, with date and machine, for the table of `npm run proof`.
import { renameSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';

/** Keeps the figures of one long run under its name. */
export function storeFigures(name: string, figures: Readonly<Record<string, unknown>>): void {
  const file = new URL(`figures/${name}.json`, import.meta.url);
  const from = new URL(`figures/${name}.json.new`, import.meta.url);
  const kept = {
    date: new Date().toISOString().slice(0, 10),
    machine: `${cpus().length} cores, ${cpus()[0]?.model.trim() ?? 'unknown'}, Node ${process.versions.node}`,
    ...figures,
  };
  writeFileSync(from, `${JSON.stringify(kept, null, 2)}\n`);
  renameSync(from, file);
}
