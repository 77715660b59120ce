/** What a maker would ask, other words for it, a name for its results and the figure a chart of tried values shows. */
export interface QuestionText {
  readonly question: string;
  readonly words: string;
  readonly noun: string;
  readonly main?: string;
}

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
    words: 'cramps sash pressure spacing glue up press enough',
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
    words: 'beam bend deflection strength stress shelf joist cantilever strong',
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
  boardMeasure: {
    question: 'How much timber is it?',
    words: 'board feet volume cubic price super feet bdft',
    noun: 'timber',
  },
  flatteningLoss: {
    question: 'How thick is it once flat?',
    words: 'plane cup bow twist wind warp dress thickness loss flatten',
    noun: 'flat',
  },
  gradeYield: {
    question: 'How much clear wood is in a graded board?',
    words: 'NHLA FAS common grade clear yield hardwood',
    noun: 'clear',
  },
  partsCost: {
    question: 'What do the parts cost?',
    words: 'price parts list timber waste money',
    noun: 'parts',
  },
  roughToDressed: {
    question: 'What size is it once planed?',
    words: 'nominal dressed rough sawn planed PAR S4S 2x4 allowance',
    noun: 'dressed',
  },
  layerCount: {
    question: 'How many layers make the thickness?',
    words: 'laminate thick top glue layers lamination',
    noun: 'layers',
  },
  stripLayout: {
    question: 'How do I stagger the joints in a top?',
    words: 'butt joints rows random lengths butcher block finger pattern layout',
    noun: 'layout',
  },
  matchSlabs: {
    question: 'How thick is the top from uneven slabs?',
    words: 'thickness plane match slabs step level',
    noun: 'slabs',
  },
  stackUp: {
    question: 'How far off may the whole be?',
    words: 'tolerance error add up accuracy stack fit',
    noun: 'tolerance',
  },
  caulCamber: {
    question: 'How much crown does a caul need?',
    words: 'camber bowed clamp batten pressure caul',
    noun: 'caul',
  },
  halfLap: {
    question: 'How do I mark a half lap?',
    words: 'halving cross lap tee corner joint housing saw',
    noun: 'lap',
  },
  jointFit: {
    question: 'Will the joint go together?',
    words: 'fit loose tight tolerance mortise tenon dado',
    noun: 'fit',
  },
  splineSlot: {
    question: 'How deep is the slot for a spline?',
    words: 'mitre miter spline groove key',
    noun: 'spline',
  },
  angledRail: {
    question: 'How do I mark a rail at an angle?',
    words: 'brace diagonal knee slope mark out angle',
    noun: 'brace',
  },
  mitredEnd: {
    question: 'How do I fold down the ends?',
    words: 'waterfall mitre miter grain match leg side',
    noun: 'fold',
  },
  splayedCorner: {
    question: 'What angles does a sloping box need?',
    words: 'compound mitre miter bevel tray splay hopper saw angle',
    noun: 'corner',
  },
  squareness: { question: 'Is it square?', words: 'diagonals out of square corner measure', noun: 'square' },
  screwHold: {
    question: 'What do screws hold?',
    words: 'fastener withdrawal pull out shear strength',
    noun: 'screws',
  },
  biscuitSpacing: {
    question: 'How many biscuits along a joint?',
    words: 'plate joiner biscuit spacing',
    noun: 'biscuits',
  },
  filmBuild: {
    question: 'How thick is the finish?',
    words: 'film mil coat wet dry build solids',
    noun: 'film',
  },
  gritSequence: {
    question: 'Which grits do I sand with?',
    words: 'sandpaper abrasive sanding steps grit',
    noun: 'grits',
  },
  shellacCut: {
    question: 'How do I mix shellac?',
    words: 'cut flakes alcohol spirit pound french polish',
    noun: 'shellac',
  },
  thinningRatio: {
    question: 'How do I mix a finish by parts?',
    words: 'ratio oil varnish spirit blend thin wipe',
    noun: 'mix',
  },
  thinToSolids: {
    question: 'How far do I thin a finish?',
    words: 'solids strength thinner wiping dilute',
    noun: 'thinning',
  },
  thinnedVoc: {
    question: 'How much solvent does it give off?',
    words: 'VOC fumes thinner solvent emissions',
    noun: 'voc',
  },
  cutterMarks: {
    question: 'How smooth will the planer cut?',
    words: 'knife marks ripples feed finish thicknesser jointer',
    noun: 'marks',
  },
  planingTime: {
    question: 'How long does planing take?',
    words: 'thicknesser time passes feed hours',
    noun: 'planing',
  },
  chipVolume: {
    question: 'How many bags of shavings?',
    words: 'dust chips bags extraction waste sawdust',
    noun: 'shavings',
  },
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
