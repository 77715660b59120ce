import { note } from '../../engine/caution.js';
import { field, type Parsed } from '../../engine/field.js';
import type { Trace } from '../../engine/trace.js';
import { tableRows } from '../../materials/data-tables.js';
import type { TimberOrGrade } from '../../materials/elastic-properties.js';
import type { Duration, LoadCase, LoadMix, ServiceClass } from '../../materials/working-stress/load-case.js';
import {
  placeFigures,
  servicePlaces,
  useCategories,
  useFigures,
} from '../../materials/working-stress/use-category.js';
import { routeOf } from '../../materials/working-stress/strength-class.js';
import { creepField } from './sag-limit.js';

/** How a piece is used, and where it stands: they set the duration of the load, the service class and the creep. */
export const situationFields = {
  category: field.choice(useCategories, {
    label: 'category of use',
    help: 'Home or office, hall or shop, workshop, shelf or store, permanent, or short; leave it out to take the whole load as long term.',
    optional: true,
  }),
  place: field.choice(servicePlaces, {
    label: 'place',
    help: 'Service class 1, 2 or 3 of EN 1995-1-1.',
    default: 'heated room',
  }),
  long: creepField({
    label: 'creep factor',
    help: 'For a load that stays; give it in place of that of the place.',
    optional: true,
  }),
  longShare: field.share({
    label: 'share that stays',
    help: 'Share of the imposed load that stays on for months; give it in place of that of the category.',
    min: '0 %',
    max: '100 %',
    optional: true,
  }),
} as const;
export type SituationGiven = Parsed<typeof situationFields>;

/** What a use and a place mean for stresses and sag. */
export interface Situation {
  readonly duration: Duration;
  readonly serviceClass: ServiceClass;
  /** Creep factor of a load that stays. */
  readonly creep: number;
  /** Share of the imposed load that stays, 0 to 1; the permanent load stays whole. */
  readonly stays: number;
  /** Duration and place in words. */
  readonly words: string;
}

/** The situation of a piece. Without a category everything stays and the load is long term: the safe side. */
export function situationOf(
  given: SituationGiven,
  chosen: TimberOrGrade | undefined,
  trace: Trace,
): Situation {
  const place = placeFigures(given.place);
  const use = given.category === undefined ? undefined : useFigures(given.category);
  const duration = use?.duration ?? 'long';
  const creep = creepOf(given, chosen, place, trace);
  const stays = given.longShare ?? use?.stays ?? 1;
  if (!trace.silent) {
    trace.note(
      use
        ? `Category of use: ${use.label}; ${Math.round(stays * 100)} % of the imposed load stays, load of ${duration} duration.`
        : `No category of use was given: ${given.longShare === undefined ? 'the whole load is taken to stay' : `${Math.round(stays * 100)} % of the load stays`}, load of long duration.`,
      use?.citation,
    );
    if (given.long?.name === 'no creep')
      trace.warn(note('no creep was chosen: the sag in the long run is the first sag alone'));
  }
  return {
    duration,
    serviceClass: place.serviceClass,
    creep,
    stays,
    words: `${duration} duration, ${given.place}`,
  };
}

/** The creep factor given, or else that of the place; of an Australian grade at least j_2 of its own standard. */
function creepOf(
  given: SituationGiven,
  chosen: TimberOrGrade | undefined,
  place: ReturnType<typeof placeFigures>,
  trace: Trace,
): number {
  if (given.long !== undefined) {
    if (given.long.source) trace.source(given.long.source);
    return given.long.factor;
  }
  const row = (choice: string) => tableRows('creep-factors').find((r) => r.text('choice') === choice);
  const [american, australian] = [row('seasoned'), row('seasoned AS')];
  const j2 = australian?.number('factor') ?? 0;
  const factor =
    chosen?.is === 'grade' && routeOf(chosen.grade) === 'as' ? Math.max(j2, place.creep) : place.creep;
  trace.note(
    `Creep of a load that stays: ${factor}, ${given.place}. Standards differ: EN 1995-1-1 ${place.creep}, NDS ${american?.number('factor')} seasoned, AS 1720.1 ${j2} seasoned.`,
    place.citation,
  );
  return factor;
}

/** The load case of a mix of permanent and imposed load. */
export const loadCaseOf = (situation: Situation, mix: LoadMix): LoadCase => ({
  mix,
  duration: situation.duration,
  serviceClass: situation.serviceClass,
});
