import type { ChartSpec } from '../../charts/chart-spec.js';
import type { ExerciseData } from '../../engine/exercise.js';

/** What a handout page carries for its script: which parts of it come alive, and with what. Ids are those of elements of the page. */
export interface HandoutData {
  /** Under which the browser keeps what a pupil wrote. */
  readonly key: string;
  readonly results: readonly {
    readonly id: string;
    readonly recipe: string;
    readonly inputs: Readonly<Record<string, unknown>>;
  }[];
  readonly exercises: readonly { readonly id: string; readonly exercise: ExerciseData }[];
  /** Charts with sliders of their own. */
  readonly charts: readonly { readonly id: string; readonly spec: ChartSpec }[];
}

export const handoutDataId = 'handout-data';
