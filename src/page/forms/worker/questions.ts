import { makingQuestions } from './making-questions.js';
import type { QuestionText } from './question-text.js';

/** By recipe. A recipe that is not here is asked for by its title. */
export const questions: Readonly<Record<string, QuestionText>> = {
  movementAcross: {
    question: 'How much will it move?',
    words:
      'shrink swell expand wood movement season gap width moisture MC heated damp tabletop panel top pine oak',
    noun: 'movement',
    main: 'change',
  },
  stripCount: {
    question: 'How many strips do I need?',
    words: 'battens staves laminate glue up top width rip slab planer jointer rafter',
    noun: 'strips',
  },
  clampPlan: {
    question: 'How many clamps do I need?',
    words: 'cramps sash pressure spacing glue up press enough buckle bow jump',
    noun: 'clamps',
  },
  glueQuantity: {
    question: 'How much glue do I need?',
    words: 'adhesive PVA bottle spread joint litres',
    noun: 'glue',
  },
  glueTiming: {
    question: 'Is the glue open long enough?',
    words: 'open time set skin batches assembly clock adhesive',
    noun: 'timing',
  },
  pieceWeight: {
    question: 'How heavy is it?',
    words: 'weight mass lift carry kilogram pounds heavy',
    noun: 'weight',
    main: 'mass',
  },
  topSag: {
    question: 'Will the top sag?',
    words: 'bend droop deflection shelf worktop counter strong span support deflect',
    noun: 'sag',
  },
  tipping: {
    question: 'Will it tip over?',
    words: 'topple fall stable stability overhang balance bar child climbs',
    noun: 'stability',
  },
  finishQuantity: {
    question: 'How much finish do I need?',
    words: 'oil varnish paint lacquer tin coats litre coverage spread',
    noun: 'finish',
  },
  bill: {
    question: 'What does it cost?',
    words: 'price money quote labour hours materials charge estimate total',
    noun: 'cost',
  },
  cuttingPlan: {
    question: 'How do I cut the parts from my boards?',
    words: 'cut list cutting list offcut waste optimise stock lengths enough wood nest',
    noun: 'cuts',
  },
  topFromPile: {
    question: 'Is my pile enough for the top?',
    words: 'salvaged reclaimed rafters boards enough wood stack survey',
    noun: 'top',
  },
  pileYield: {
    question: 'What does my pile yield?',
    words: 'salvaged reclaimed survey boards faults nails enough wood recover',
    noun: 'pile',
  },
  pileSampling: {
    question: 'How many more must I take apart?',
    words: 'pallets sample average salvaged dismantle enough wood',
    noun: 'sampling',
  },
  railSpan: {
    question: 'How far may a rail span?',
    words: 'bearer joist beam support distance legs deflection',
    noun: 'span',
  },
  beam: {
    question: 'Will the rail carry the load?',
    words: 'beam bend deflection strength stress shelf joist cantilever strong MOE MOR modulus stiffness',
    noun: 'rail',
  },
  rackingFrame: {
    question: 'Will the frame sway?',
    words: 'rack wobble brace stiff legs sideways wobbly',
    noun: 'sway',
  },
  fixingSlots: {
    question: 'How long must the slots be?',
    words: 'fixing top buttons screws slotted holes expansion plates movement',
    noun: 'slots',
  },
  seasonalMovement: {
    question: 'How does the top move over a year?',
    words: 'seasons summer winter climate humidity place month',
    noun: 'overTheYear',
  },
  equilibriumMoisture: {
    question: 'How dry will the wood get in this air?',
    words: 'EMC equilibrium moisture content humidity RH temperature room acclimatise',
    noun: 'emc',
    main: 'moisture',
  },
  humidityFor: {
    question: 'How humid may the room be?',
    words: 'RH relative humidity air keep moisture EMC',
    noun: 'air',
  },
  meterCorrection: {
    question: 'What does my moisture meter really say?',
    words: 'meter reading pin cold wood correction MC',
    noun: 'reading',
  },
  moistureByWeight: {
    question: 'How wet is it by weighing?',
    words: 'oven dry sample weigh MC kiln scales',
    noun: 'dried',
  },
  woodDensity: {
    question: 'How dense is this timber?',
    words: 'density specific gravity weight',
    noun: 'dense',
  },
  cupDepth: {
    question: 'How much will a board cup?',
    words: 'warp cupping flat-sawn hollow bow',
    noun: 'cup',
  },
  restraintStress: {
    question: 'What if the top cannot move?',
    words: 'crack split stress fixed restrained cramped buckle',
    noun: 'stress',
  },
  ...makingQuestions,
};

/** The ten that are asked most, in order. */
export const commonest: readonly string[] = [
  'movementAcross',
  'stripCount',
  'topFromPile',
  'pieceWeight',
  'topSag',
  'clampPlan',
  'glueQuantity',
  'finishQuantity',
  'tipping',
  'bill',
];
