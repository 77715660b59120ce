/** A figure of a named result that another form may take. */
export interface Figure {
  /** Name of the result in the notebook. */
  readonly name: string;
  /** Path in it, such as `stripFinished`. */
  readonly path: readonly (string | number)[];
  readonly label: string;
  readonly kind: string;
  /** What it is now, in words. */
  readonly text: string;
  /** Names of the columns, of a table. */
  readonly columns: readonly string[];
}
