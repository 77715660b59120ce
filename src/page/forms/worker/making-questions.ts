import type { QuestionText } from './question-text.js';

/** Questions of preparing, gluing, joining, finishing and machining, by recipe. */
export const makingQuestions: Readonly<Record<string, QuestionText>> = {
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
    words: 'fit loose tight tolerance mortise tenon dado housing rabbet rebate groove slot',
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
  slabStack: {
    question: 'Can I glue several slabs at once?',
    words: 'stack release paper panel both ways cauls press clamps packing glue up',
    noun: 'stack',
  },
  mitreGap: {
    question: 'Why does my mitre gape?',
    words: 'gap mitre miter open outside inside bevel tilt saw fence waterfall spline',
    noun: 'gap',
  },
  postCasing: {
    question: 'How do I box in a post?',
    words: 'casing post leg column cover wrap boards mitred corner boxing',
    noun: 'casing',
  },
  chamfer: {
    question: 'How deep do I set a chamfer?',
    words: 'bevel edge router cutter arris face flat passes',
    noun: 'chamfer',
  },
  nailHoles: {
    question: 'How much filler for the nail holes?',
    words: 'filler plug putty holes knots resin stain salvaged reclaimed',
    noun: 'holes',
  },
  stainTrials: {
    question: 'How do I test a stain in steps?',
    words: 'stain dye sample strip colour shade trial ladder dilute',
    noun: 'stain',
  },
  prepTime: {
    question: 'How long does preparing the pile take?',
    words: 'denail de-nail dock plane hours time reclaimed labour samples',
    noun: 'preparing',
  },
  palletBoards: {
    question: 'What does a pallet give?',
    words: 'pallet boards reclaimed heat treated ISPM stamp mark deck free wood',
    noun: 'pallet',
  },
  passage: {
    question: 'Will it go through the door?',
    words: 'corridor corner stairs landing van delivery carry move lift people fit door',
    noun: 'delivery',
  },
  heightsForPeople: {
    question: 'How high should it be?',
    words: 'height counter bench stool table seat ergonomics wheelchair child school elbow reach',
    noun: 'height',
  },
};
