import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

const source = cite('hse-indg143', 'lifting and lowering risk filter');
const team = cite(
  'hse-l23',
  'handling by a team: two thirds of the sum for two, half for three; over four seldom works',
);

/** Load of the risk filter for one person at the height of the hands, kg; close to the body. */
export const filterLoads = {
  men: { waist: 25, shoulder: 20, floor: 10 },
  women: { waist: 16, shoulder: 13, floor: 7 },
} as const;

/** What a team carries: two people two thirds of what they would one by one, three or more half. */
export const teamLoad = formula({
  symbol: 'm_n',
  result: variable('mass', 'load within the guidance for the team'),
  expression: 'k n m_1',
  variables: {
    k: variable('ratio', '1 for one, two thirds for two, half for more'),
    n: variable('count', 'people'),
    m_1: variable('mass', 'load of the filter for one'),
  },
  source: team,
});

/** Share of the sum that a team of n carries. */
export const teamShare = (people: number): number => (people === 1 ? 1 : people === 2 ? 2 / 3 : 1 / 2);

/** Largest team: the guidance says that more than four seldom work together well. */
export const largestTeam = 4;

/** People within the guidance for a mass; undefined for more than a team can be. */
export function peopleFor(mass: number, one: number): number | undefined {
  for (let n = 1; n <= largestTeam; n++)
    if (teamLoad.evaluate({ k: teamShare(n), n, m_1: one }) >= mass - 1e-9) return n;
  return undefined;
}

export const liftingSource = source;
