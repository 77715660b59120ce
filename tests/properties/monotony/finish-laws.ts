import { filmBuild } from '../../../src/recipes/finish/film-build.js';
import { finishQuantity } from '../../../src/recipes/finish/finish-quantity.js';
import { gritSequence } from '../../../src/recipes/finish/grit-sequence.js';
import { nailHoles } from '../../../src/recipes/finish/nail-holes.js';
import { shellacCut } from '../../../src/recipes/finish/shellac-cut.js';
import { stainTrials } from '../../../src/recipes/finish/stain-trials.js';
import { thinToSolids } from '../../../src/recipes/finish/thin-to-solids.js';
import { thinnedVoc } from '../../../src/recipes/finish/thinned-voc.js';
import { thinningRatio } from '../../../src/recipes/finish/thinning-ratio.js';
import { lawsOf } from './monotony.js';

const grits = ['P80', 'P120', 'P180', 'P240', 'P320', 'P400'];

export const finishLaws = [
  lawsOf(filmBuild, {
    numbers: { solids: [15, 70], rate: [6, 18], coats: [1, 6, 'whole'] },
    write: (n) => ({ volumeSolids: `${n.solids} %`, spreadingRate: `${n.rate} m2/L`, coats: n.coats }),
    laws: [
      { raise: 'solids', rises: ['dryFilm', 'dryPerCoat'] },
      { raise: 'rate', falls: ['wetFilm', 'dryFilm', 'dryPerCoat', 'perArea'] },
      { raise: 'coats', rises: ['dryFilm', 'perArea'] },
    ],
  }),
  lawsOf(finishQuantity, {
    numbers: {
      area: [0.5, 20],
      coats: [1, 5, 'whole'],
      coverage: [6, 16],
      loss: [0, 80],
      thinner: [0, 2],
      tin: [0.25, 2],
    },
    write: (n) => ({
      surfaces: [`${n.area} m2`],
      coats: n.coats,
      coverage: `${n.coverage} m2/L`,
      loss: `${n.loss} %`,
      thinnerParts: n.thinner,
      tinSize: `${n.tin} L`,
      dryTime: '8 h',
    }),
    laws: [
      { raise: 'area', rises: ['volume', 'tins', 'finish', 'thinner'] },
      { raise: 'coats', rises: ['volume', 'tins', 'finish', 'elapsed'] },
      { raise: 'coverage', falls: ['volume', 'tins', 'finish'] },
      { raise: 'loss', rises: ['volume', 'tins', 'finish'] },
      { raise: 'thinner', rises: ['thinner'], falls: ['finish', 'tins'] },
      { raise: 'tin', falls: ['tins'] },
    ],
  }),
  lawsOf(gritSequence, {
    numbers: { to: [1, grits.length - 1, 'whole'], step: [1.4, 2.2] },
    write: (n) => ({ from: 'P80', to: grits[n.to], stepRatio: n.step }),
    laws: [
      { raise: 'to', rises: ['count'] },
      { raise: 'step', rises: ['largestStep'], falls: ['count'] },
    ],
  }),
  lawsOf(nailHoles, {
    numbers: {
      more: [0, 12, 'whole'],
      area: [0.5, 6],
      hole: [2, 10],
      depth: [3, 20],
      lost: [0, 80],
      sure: [60, 99],
    },
    write: (n) => ({
      counts: [7, 4, 9, 5, 6].map((c) => c + n.more),
      sampleArea: '0.2 m2',
      area: `${n.area} m2`,
      holeWidth: `${n.hole} mm`,
      depth: `${n.depth} mm`,
      leftOver: `${n.lost} %`,
      certainty: `${n.sure} %`,
    }),
    laws: [
      { raise: 'more', rises: ['expected', 'ready', 'filler', 'perArea'] },
      { raise: 'area', rises: ['expected', 'ready', 'filler'] },
      { raise: 'hole', rises: ['filler'] },
      { raise: 'depth', rises: ['filler'] },
      { raise: 'lost', rises: ['filler'] },
      { raise: 'sure', rises: ['ready'] },
    ],
  }),
  lawsOf(shellacCut, {
    numbers: { cut: [0.5, 4], volume: [100, 2000] },
    write: (n) => ({ cut: n.cut, volume: `${n.volume} mL` }),
    laws: [
      { raise: 'cut', rises: ['mass', 'made', 'solids'] },
      { raise: 'volume', rises: ['mass', 'made'] },
    ],
  }),
  lawsOf(stainTrials, {
    numbers: {
      strongest: [60, 100],
      weakest: [5, 30],
      strips: [3, 8, 'whole'],
      tool: [0.1, 1],
      error: [2, 15],
    },
    write: (n) => ({
      strongest: `${n.strongest} %`,
      weakest: `${n.weakest} %`,
      strips: n.strips,
      toolError: `${n.tool} mL`,
      strengthError: `${n.error} %`,
    }),
    laws: [
      { raise: 'strongest', rises: ['step'] },
      { raise: 'weakest', falls: ['step', 'batch'] },
      { raise: 'strips', rises: ['stain'], falls: ['step'] },
      { raise: 'tool', rises: ['batch'] },
      { raise: 'error', falls: ['batch'] },
    ],
  }),
  lawsOf(thinToSolids, {
    numbers: { solids: [25, 70], thinner: [0, 3] },
    write: (n) => ({ volumeSolids: `${n.solids} %`, thinnerParts: n.thinner }),
    laws: [
      { raise: 'solids', rises: ['solids'] },
      { raise: 'thinner', rises: ['thinnerShare', 'perLitre'], falls: ['solids'] },
    ],
  }),
  lawsOf(thinToSolids, {
    numbers: { solids: [45, 70], target: [10, 40] },
    write: (n) => ({ volumeSolids: `${n.solids} %`, target: `${n.target} %` }),
    laws: [
      { raise: 'target', falls: ['thinnerParts', 'thinnerShare'] },
      { raise: 'solids', rises: ['thinnerParts'] },
    ],
  }),
  lawsOf(thinnedVoc, {
    numbers: { voc: [100, 600], thinner: [0, 2], density: [700, 900] },
    write: (n) => ({ voc: `${n.voc} g/L`, thinnerParts: n.thinner, density: `${n.density} g/L` }),
    laws: [
      { raise: 'voc', rises: ['voc', 'vocAsIs'] },
      { raise: 'thinner', rises: ['voc', 'rise'] },
      { raise: 'density', rises: ['voc', 'rise'] },
    ],
  }),
  lawsOf(thinningRatio, {
    numbers: { oil: [1, 4], spirit: [0.5, 4], batch: [0.2, 5] },
    write: (n) => ({
      parts: { oil: n.oil, varnish: 1, spirit: n.spirit },
      batch: `${n.batch} L`,
      thinner: 'spirit',
    }),
    laws: [
      { raise: 'batch', rises: [partOf('oil'), partOf('spirit')] },
      { raise: 'spirit', rises: [partOf('spirit'), 'thinnerShare'], falls: [partOf('oil')] },
      { raise: 'oil', rises: [partOf('oil')], falls: [partOf('spirit'), 'thinnerShare'] },
    ],
  }),
];

function partOf(name: string) {
  return (answer: Readonly<Record<string, unknown>>): number => {
    const part = (answer['amounts'] as Readonly<Record<string, number | { readonly value: number }>>)[name];
    return typeof part === 'number' ? part : (part as { readonly value: number }).value;
  };
}
