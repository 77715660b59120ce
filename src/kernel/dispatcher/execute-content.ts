/** The content of an execute_request, with the protocol's defaults. */

export interface ExecuteContent {
  code: string;
  silent: boolean;
  storeHistory: boolean;
  stopOnError: boolean;
  /** Expressions to evaluate after the cell, by the client's names for them. */
  expressions: [name: string, expression: string][];
}

/** The id of the cell, as clients of current notebooks send it in a request's metadata. */
export function cellIdOf({ cellId }: Record<string, unknown>): string | undefined {
  return typeof cellId === 'string' && cellId !== '' ? cellId : undefined;
}

/** The ids of cells deleted since the last request, as clients of current notebooks send them in a request's metadata. */
export function deletedCellsOf({ deletedCells }: Record<string, unknown>): string[] {
  return Array.isArray(deletedCells) ? deletedCells.filter((id) => typeof id === 'string') : [];
}

export function readExecuteContent(content: Record<string, unknown>): ExecuteContent {
  const { code, user_expressions: expressions } = content;
  const silent = content['silent'] === true;
  return {
    code: typeof code === 'string' ? code : '',
    silent,
    storeHistory: !silent && content['store_history'] !== false,
    stopOnError: content['stop_on_error'] !== false,
    expressions:
      typeof expressions === 'object' && expressions !== null
        ? Object.entries(expressions).map(([name, expression]) => [name, String(expression)])
        : [],
  };
}

const inspectPattern = /^\s*([\p{ID_Start}$_][\p{ID_Continue}$.]*)\s*\?\s*$/u;

/** The name that a cell asks about, such as `Math.hypot` in `Math.hypot?`; undefined for any other cell. */
export const inspectedName = (code: string): string | undefined => inspectPattern.exec(code)?.[1];

export const isInspectRequest = (code: string): boolean => inspectedName(code) !== undefined;
