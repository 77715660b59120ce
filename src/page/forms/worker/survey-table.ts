import type { SurveyHeading } from '../model/survey-reading.js';

/** A survey's cells as they are written, without marks between thousands and with a decimal point. */
export interface SurveyTable {
  readonly headings: readonly SurveyHeading[];
  readonly rows: readonly (readonly string[])[];
}
