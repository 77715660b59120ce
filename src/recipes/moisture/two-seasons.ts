// A year from the two figures that a person can measure anywhere: how humid the room is in winter and in summer.
import { field, makeParser } from '../../engine/field.js';
import { airLimits, equilibrium, inTable } from './sorption.js';

/** Twelve months of wood moisture, January first. */
interface SeasonYear {
  readonly name: string;
  readonly moisture: readonly number[];
  readonly outside: boolean;
}

/** As a person writes it: `{ winter: '35 %', summer: '65 %' }`; `coldest` is July south of the equator. */
export interface SeasonsWritten {
  readonly winter: string;
  readonly summer: string;
  readonly temperature?: string;
  readonly coldest?: 'January' | 'July';
}

/** What to measure, for messages. */
export const seasonsTake =
  'the humidity of the room in winter and in summer such as "winter 35 %, summer 65 %" (a hygrometer left in the room for a week of each season tells it)';

const parse = makeParser({
  winter: field.humidity({
    label: 'winter humidity',
    help: 'Relative humidity indoors in the coldest month.',
    min: '0 %',
    max: '100 %',
  }),
  summer: field.humidity({
    label: 'summer humidity',
    help: 'Relative humidity indoors in the warmest month.',
    min: '0 %',
    max: '100 %',
  }),
  temperature: field.temperature({
    label: 'temperature of the room',
    min: airLimits.coldest,
    max: airLimits.hottest,
    default: '20 degC',
  }),
  coldest: field.choice(['January', 'July'], {
    label: 'coldest month',
    help: 'January, or July south of the equator.',
    default: 'January',
  }),
});

/** The two figures in a line of text, undefined where the text is no such line. */
export function seasonsIn(text: string): SeasonsWritten | undefined {
  const found = /^\s*winter\s+([\d.]+\s*%)\s*[,;]\s*summer\s+([\d.]+\s*%)\s*$/i.exec(text);
  return found ? { winter: found[1] as string, summer: found[2] as string } : undefined;
}

/** A year whose humidity swings evenly between the two, as a cosine. @throws InputError */
export function yearOfSeasons(written: unknown): SeasonYear {
  const { winter, summer, temperature, coldest } = parse(written);
  const first = coldest === 'January' ? 0 : 6;
  const [middle, half] = [(winter + summer) / 2, (winter - summer) / 2];
  const humidities = Array.from(
    { length: 12 },
    (_, month) => middle + half * Math.cos((2 * Math.PI * (month - first)) / 12),
  );
  return {
    name: 'a year between winter and summer as measured',
    moisture: humidities.map((h) => equilibrium(temperature, h)),
    outside: humidities.some((h) => !inTable(temperature, h)),
  };
}
