/** A field of a form as plain data: made in the worker from the recipe's own field, shown by the page. */
export interface FieldModel {
  readonly name: string;
  /** One to four words. */
  readonly label: string;
  /** One sentence; may be empty. */
  readonly help: string;
  readonly kind: string;
  /** What it takes, in words. */
  readonly expects: string;
  readonly optional: boolean;
  /** The default as text; undefined where there is none. */
  readonly assumed: string | undefined;
  /** A value of the field's own size. */
  readonly example: unknown;
  /** True where the recipe's own example gives it: a maker is likely to know it. */
  readonly inExample: boolean;
  readonly choices: readonly string[];
  /** Units to choose from, the usual one first; empty where a plain number or words are taken. */
  readonly units: readonly string[];
  /** True where a number without a unit is taken. */
  readonly isPlain: boolean;
  /** Columns of a table, parts of a group. */
  readonly fields: readonly FieldModel[];
  /** Item of a list or record, alternatives of an either. */
  readonly items: readonly FieldModel[];
  /** True where the page can ask the worker for names to choose from. */
  readonly hasNames: boolean;
}

export interface OutputModel {
  readonly name: string;
  readonly label: string;
  readonly kind: string;
  readonly columns: readonly OutputModel[];
}

/** The lettered sketch of a recipe. */
export interface SketchModel {
  /** SVG in the colour of the text around it; what belongs to a letter stands in a group with `data-measures`. */
  readonly svg: string;
  readonly letters: readonly {
    readonly letter: string;
    /** Name of a field or answer, or the path to a part of it. */
    readonly field: string;
    readonly isOutput: boolean;
    readonly label: string;
    readonly meaning: string;
  }[];
}

/** A recipe as a maker sees it: a question, its fields and its figures. */
export interface RecipeModel {
  readonly name: string;
  readonly title: string;
  readonly topic: string;
  readonly about: string;
  readonly isAsync: boolean;
  /** The recipe as a question a maker would ask. */
  readonly question: string;
  /** Other words for it, for the search. */
  readonly words: string;
  /** What its results are called unless a person names them. */
  readonly noun: string;
  /** Output that a chart of tried values shows. */
  readonly main: string | undefined;
  readonly inputs: readonly FieldModel[];
  readonly outputs: readonly OutputModel[];
  readonly sketch: SketchModel | undefined;
}
