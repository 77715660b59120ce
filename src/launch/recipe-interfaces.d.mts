/** Writes src/recipes/interfaces.ts. */
export function writeInterfaces(root: string): Promise<void>;
