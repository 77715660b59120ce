/**
 * The kinds of quantity, each with the coherent unit its number is kept in ("base"), the unit it is shown in,
 * and the unit beside it for those who work in inches. A kind is more than a dimension: moisture, humidity and a
 * share of waste are all per cent, and adding one to another is a mistake the types should catch.
 */
export interface KindFacts {
  /** Unit of the number inside, as mathjs writes it; '' for a pure number. */
  readonly base: string;
  /** Metric units to show in, smallest first. */
  readonly metric: readonly string[];
  /** Inch-system units to show in, smallest first; empty where the trade uses one unit everywhere. */
  readonly inch: readonly string[];
  /** How the kind is called in an error message, with an article. */
  readonly called: string;
  /** A right example for an error message. */
  readonly example: string;
  /** True where a plain number, without unit, is taken. */
  readonly plain?: boolean;
}

const facts = {
  length: { base: 'm', metric: ['mm', 'm'], inch: ['in', 'ft'], called: 'a length', example: '900 mm' },
  thickness: { base: 'm', metric: ['um'], inch: ['mil'], called: 'a film thickness', example: '50 um' },
  area: { base: 'm^2', metric: ['mm2', 'm2'], inch: ['in2', 'ft2'], called: 'an area', example: '1.2 m2' },
  volume: { base: 'm^3', metric: ['m3'], inch: ['ft3'], called: 'a volume', example: '0.02 m3' },
  liquid: {
    base: 'm^3',
    metric: ['mL', 'L'],
    inch: ['floz', 'gal'],
    called: 'an amount of liquid',
    example: '2 L',
  },
  secondMoment: {
    base: 'm^4',
    metric: ['mm4'],
    inch: ['in4'],
    called: 'a second moment of area',
    example: '6.7e7 mm4',
  },
  sectionModulus: {
    base: 'm^3',
    metric: ['mm3'],
    inch: ['in3'],
    called: 'a section modulus',
    example: '768000 mm3',
  },
  mass: { base: 'kg', metric: ['g', 'kg'], inch: ['oz', 'lb'], called: 'a mass', example: '12 kg' },
  density: {
    base: 'kg / m^3',
    metric: ['kg/m3'],
    inch: ['lb/ft3'],
    called: 'a density',
    example: '520 kg/m3',
  },
  concentration: {
    base: 'kg / m^3',
    metric: ['g/L'],
    inch: ['lb/gal'],
    called: 'a mass per volume',
    example: '350 g/L',
  },
  applicationRate: {
    base: 'kg / m^2',
    metric: ['g/m2'],
    inch: ['lb/1000ft2'],
    called: 'an application rate',
    example: '180 g/m2',
  },
  coverage: {
    base: 'm^2 / m^3',
    metric: ['m2/L'],
    inch: ['ft2/gal'],
    called: 'a coverage',
    example: '12 m2/L',
  },
  force: { base: 'N', metric: ['N', 'kN'], inch: ['lbf'], called: 'a force', example: '2 kN' },
  pressure: { base: 'Pa', metric: ['kPa', 'MPa'], inch: ['psi'], called: 'a pressure', example: '700 kPa' },
  stress: { base: 'Pa', metric: ['MPa'], inch: ['psi'], called: 'a stress', example: '10 MPa' },
  modulus: {
    base: 'Pa',
    metric: ['MPa', 'GPa'],
    inch: ['psi'],
    called: 'a modulus of elasticity',
    example: '9.5 GPa',
  },
  areaLoad: { base: 'N / m^2', metric: ['kPa'], inch: ['psf'], called: 'a load by area', example: '1.5 kPa' },
  lineLoad: {
    base: 'N / m',
    metric: ['N/m', 'kN/m'],
    inch: ['lbf/ft'],
    called: 'a load by length',
    example: '450 N/m',
  },
  springRate: {
    base: 'N / m',
    metric: ['N/mm'],
    inch: ['lbf/in'],
    called: 'a spring rate',
    example: '200 N/mm',
  },
  moment: {
    base: 'N m',
    metric: ['N m', 'kN m'],
    inch: ['lbf in', 'lbf ft'],
    called: 'a moment',
    example: '120 N m',
  },
  rotationalStiffness: {
    base: 'N m / rad',
    metric: ['N m/rad', 'kN m/rad'],
    inch: ['lbf in/rad'],
    called: 'a rotational stiffness',
    example: '8 kN m/rad',
  },
  moisture: { base: '', metric: ['%'], inch: [], called: 'a moisture content', example: '8 %' },
  humidity: { base: '', metric: ['%'], inch: [], called: 'a relative humidity', example: '50 %' },
  share: { base: '', metric: ['%'], inch: [], called: 'a share', example: '15 %' },
  temperature: {
    base: 'degC',
    metric: ['degC'],
    inch: ['degF'],
    called: 'a temperature',
    example: '21 degC',
  },
  time: { base: 's', metric: ['s', 'min', 'h', 'day'], inch: [], called: 'a time', example: '15 min' },
  speed: { base: 'm / s', metric: ['m/min'], inch: ['ft/min'], called: 'a speed', example: '6 m/min' },
  acceleration: {
    base: 'm / s^2',
    metric: ['m/s2'],
    inch: [],
    called: 'an acceleration',
    example: '9.80665 m/s2',
  },
  rotation: { base: 's^-1', metric: ['rpm'], inch: [], called: 'a speed of rotation', example: '6000 rpm' },
  angle: { base: 'rad', metric: ['deg'], inch: [], called: 'an angle', example: '45 deg' },
  slope: { base: '', metric: ['mm/m'], inch: ['in/ft'], called: 'a slope', example: '2 mm/m' },
  marks: { base: 'm^-1', metric: ['1/in'], inch: [], called: 'marks by length', example: '20 1/in' },
  money: {
    base: '',
    metric: ['money'],
    inch: [],
    called: 'an amount of money',
    example: '12.50',
    plain: true,
  },
  pricePerLength: {
    base: 'm^-1',
    metric: ['money/m'],
    inch: ['money/ft'],
    called: 'a price by length',
    example: '4.20/m',
  },
  pricePerArea: {
    base: 'm^-2',
    metric: ['money/m2'],
    inch: ['money/ft2'],
    called: 'a price by area',
    example: '38/m2',
  },
  pricePerVolume: {
    base: 'm^-3',
    metric: ['money/m3'],
    inch: ['money/bf'],
    called: 'a price by volume',
    example: '950/m3',
  },
  pricePerMass: {
    base: 'kg^-1',
    metric: ['money/kg'],
    inch: ['money/lb'],
    called: 'a price by mass',
    example: '9/kg',
  },
  pricePerTime: { base: 's^-1', metric: ['money/h'], inch: [], called: 'a price by time', example: '40/h' },
  boardFeet: { base: 'm^3', metric: ['bf'], inch: [], called: 'a board measure', example: '12 bf' },
  superFeet: {
    base: 'm^3',
    metric: ['super ft'],
    inch: [],
    called: 'a measure in super feet',
    example: '12 super ft',
  },
  ratio: { base: '', metric: [''], inch: [], called: 'a number', example: '1.5', plain: true },
  count: { base: '', metric: [''], inch: [], called: 'a whole number', example: '4', plain: true },
} as const satisfies Record<string, KindFacts>;

export type Kind = keyof typeof facts;

/** Kinds whose values are plain JavaScript numbers in a result, and may be given as one. */
export type PlainKind = 'ratio' | 'count';

/** Facts about every kind. */
export const kinds: Readonly<Record<Kind, KindFacts>> = facts;

export const kindNames = Object.keys(facts) as Kind[];

/** A maker for each kind, by the kind's name: the makers of fields and of outputs come from this one list. */
export const makersByKind = (make: (kind: Kind) => unknown): { readonly [K in Kind]: unknown } =>
  Object.fromEntries(kindNames.map((kind) => [kind, make(kind)])) as Record<Kind, unknown>;
