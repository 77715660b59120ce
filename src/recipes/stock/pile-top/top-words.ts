// The answer in words: enough or not, with its margin, and what is missing as the workshop would say it.
import type { TopAt, TopJob } from './top-job.js';
import type { WhatIf } from './what-ifs.js';

interface Asked {
  readonly width: number;
}

const mm = (m: number): string => `${Math.round(m * 1000)} mm`;
const tenths = (um: number): string => `${Number((um / 1000).toFixed(1))} mm`;

export type TopVerdict = 'enough' | 'not enough' | 'not proved';

/** A lay-up proves enough, a bound not enough; between them neither is proved. */
export const verdictOf = (job: TopJob, top: TopAt): TopVerdict =>
  top.width >= job.wanted ? 'enough' : top.bound < job.wanted ? 'not enough' : 'not proved';

/** The answer in one sentence, with its margin. */
export function sentenceOf(given: Asked, job: TopJob, top: TopAt): string {
  const n = job.layers;
  const [width, bound] = [top.width / n / 1e6, top.bound / n / 1e6];
  const thick = `${tenths(top.thickness * n)}${n > 1 ? ` in ${n} layers` : ''}`;
  switch (verdictOf(job, top)) {
    case 'enough':
      return `Enough: a top ${thick} thick and ${mm(width)} wide, ${mm(width - given.width)} to spare${top.lay === 'on edge' ? ', strips on edge' : ''}.`;
    case 'not enough':
      return `Not enough: at ${thick} no lay-up of this pile is wider than ${mm(bound)}; ${mm(given.width)} is asked. ${shortOf(job, top)}`;
    case 'not proved':
      return `Not proved either way: at ${thick} the widest found is ${mm(width)}, ${mm(given.width)} is asked, and none can exceed ${mm(bound)}. More rounds may settle it. ${shortOf(job, top)}`;
  }
}

/** Length of boards like those used that would make up the width. */
function shortOf(job: TopJob, top: TopAt): string {
  const each = top.width > 0 ? top.width / top.rows.length : 50_000;
  const rows = Math.ceil((job.wanted - top.width) / each);
  const metres = Math.ceil((rows * job.rules.rowLength) / 1e5) / 10;
  return `About ${metres.toFixed(1)} m more of boards that give ${mm(each / 1e6)} across would make it up.`;
}

/** What is missing in boards of this pile: how many more of which kind; undefined where nothing is. */
export function missingWords(job: TopJob, top: TopAt, whatIfs: readonly WhatIf[]): string | undefined {
  if (top.width >= job.wanted) return undefined;
  const short = job.wanted - top.width;
  const needed = top.thickness + 2 * job.shop.plane;
  const clear = `clear lengths of ${tenths(job.rules.leastInner)} and more, ${tenths(needed)} ${top.lay === 'flat' ? 'thick after cup and bow' : 'and more wide'}`;
  const boards = whatIfs.flatMap((w) => {
    const like = /^one more board like (.*)$/.exec(w.change)?.[1];
    const gain = w.top.width - top.width;
    return like !== undefined && gain > 0 ? [{ like, count: Math.ceil(short / gain) }] : [];
  });
  const fewest = boards.sort((a, b) => a.count - b.count)[0];
  const suggestion = fewest
    ? ` About ${fewest.count} more board${fewest.count === 1 ? '' : 's'} like ${fewest.like} would do.`
    : '';
  return `${tenths(short / job.layers)} of width${job.layers > 1 ? ` in each of ${job.layers} layers` : ''}: ${clear}.${suggestion}`;
}
