/** What a maker would ask, other words for it, a name for its results and the figure a chart of tried values shows. */
export interface QuestionText {
  readonly question: string;
  readonly words: string;
  readonly noun: string;
  readonly main?: string;
}
