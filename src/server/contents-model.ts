import type { Stats } from 'node:fs';
import { basename, extname } from 'node:path';

/** A file, notebook or folder as the Jupyter contents API describes it. */
export interface ContentsModel {
  name: string;
  path: string;
  type: 'file' | 'notebook' | 'directory';
  created: string;
  last_modified: string;
  size: number | null;
  writable: boolean;
  mimetype: string | null;
  format: 'json' | 'text' | 'base64' | null;
  content: unknown;
  hash?: string;
  hash_algorithm?: string;
}

const mimeTypes: Record<string, string> = {
  '.csv': 'text/csv',
  '.md': 'text/markdown',
  '.html': 'text/html',
  '.json': 'application/json',
  '.txt': 'text/plain',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.pdf': 'application/pdf',
};

export function contentsModel(path: string, stats: Stats, writable: boolean): ContentsModel {
  const name = path === '' ? '' : basename(path);
  const type = stats.isDirectory() ? 'directory' : name.endsWith('.ipynb') ? 'notebook' : 'file';
  return {
    name,
    path,
    type,
    created: stats.birthtime.toISOString(),
    last_modified: stats.mtime.toISOString(),
    size: type === 'directory' ? null : stats.size,
    writable,
    mimetype: type === 'file' ? (mimeTypes[extname(name).toLowerCase()] ?? 'application/octet-stream') : null,
    format: null,
    content: null,
  };
}
