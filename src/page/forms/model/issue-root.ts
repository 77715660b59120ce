/** `pieces[2].length` belongs to the field `pieces`. */
export const rootOf = (path: string): string => /^[\w$]*/.exec(path)?.[0] ?? '';
