/** A word of the trade as the search finds it and the page explains it. */
export interface GlossaryWord {
  readonly term: string;
  /** One plain sentence. */
  readonly meaning: string;
  /** What else it is called. */
  readonly also: readonly string[];
  /** Names of the recipes that use it. */
  readonly recipes: readonly string[];
}
