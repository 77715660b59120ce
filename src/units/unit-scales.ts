import type { Kind } from './kind.js';

const inch = 0.0254; // exact, international inch (1959)
const foot = 0.3048;
const pound = 0.45359237; // exact, avoirdupois pound
const gravity = 9.80665; // exact, standard gravity
const lbf = pound * gravity;
const usGallon = 231 * inch ** 3;
const imperialGallon = 4.54609e-3;
const boardFoot = 144 * inch ** 3;

/** Scale to the base unit, by name: the units a workshop writes. Anything else goes through mathjs. */
const length = {
  mm: 1e-3,
  cm: 1e-2,
  m: 1,
  km: 1e3,
  um: 1e-6,
  micron: 1e-6,
  mil: inch / 1000,
  thou: inch / 1000,
  in: inch,
  ft: foot,
  yd: 0.9144,
};
const area = { mm2: 1e-6, cm2: 1e-4, m2: 1, in2: inch ** 2, ft2: foot ** 2 };
const solid = {
  mm3: 1e-9,
  cm3: 1e-6,
  m3: 1,
  in3: inch ** 3,
  ft3: foot ** 3,
  bf: boardFoot,
  'super ft': boardFoot,
};
const fluid = {
  uL: 1e-9,
  mL: 1e-6,
  cL: 1e-5,
  dL: 1e-4,
  L: 1e-3,
  gal: usGallon,
  qt: usGallon / 4,
  pt: usGallon / 8,
  floz: usGallon / 128,
  'imp gal': imperialGallon,
  'imp qt': imperialGallon / 4,
  'imp pt': imperialGallon / 8,
  'imp floz': imperialGallon / 160,
};
const mass = { mg: 1e-6, g: 1e-3, kg: 1, t: 1000, oz: pound / 16, lb: pound };
const perVolume = {
  'kg/m3': 1,
  'g/cm3': 1000,
  'g/mL': 1000,
  'g/L': 1,
  'kg/L': 1000,
  'lb/ft3': pound / foot ** 3,
  'lb/gal': pound / usGallon,
  'lb/imp gal': pound / imperialGallon,
};
const pressure = {
  Pa: 1,
  kPa: 1e3,
  MPa: 1e6,
  GPa: 1e9,
  bar: 1e5,
  psi: lbf / inch ** 2,
  ksi: (1000 * lbf) / inch ** 2,
  psf: lbf / foot ** 2,
  'N/mm2': 1e6,
  'N/m2': 1,
  'kN/m2': 1e3,
  'lbf/ft2': lbf / foot ** 2,
  'lb/ft2': lbf / foot ** 2,
  'kgf/m2': gravity,
  'kgf/cm2': gravity * 1e4,
};
const perLength = {
  'N/m': 1,
  'N/mm': 1e3,
  'kN/m': 1e3,
  'kgf/m': gravity,
  'lbf/ft': lbf / foot,
  'lb/ft': lbf / foot,
  plf: lbf / foot,
  'lbf/in': lbf / inch,
  'lb/in': lbf / inch,
};
const percent = { '%': 0.01, fraction: 1 };

const scales = {
  length,
  thickness: length,
  area,
  volume: { ...solid, ...fluid },
  liquid: { ...fluid, ...solid },
  boardFeet: solid,
  superFeet: solid,
  secondMoment: { mm4: 1e-12, cm4: 1e-8, m4: 1, in4: inch ** 4 },
  sectionModulus: solid,
  mass,
  density: perVolume,
  concentration: perVolume,
  applicationRate: {
    'g/m2': 1e-3,
    'kg/m2': 1,
    'lb/1000ft2': pound / (1000 * foot ** 2),
    'lb/ft2': pound / foot ** 2,
  },
  coverage: {
    'm2/L': 1000,
    'm2/m3': 1,
    'ft2/gal': foot ** 2 / usGallon,
    'ft2/imp gal': foot ** 2 / imperialGallon,
  },
  force: { N: 1, kN: 1e3, kgf: gravity, lbf, lb: lbf, kip: 1000 * lbf },
  pressure,
  stress: pressure,
  modulus: pressure,
  areaLoad: pressure,
  lineLoad: perLength,
  springRate: perLength,
  moment: {
    'N m': 1,
    Nm: 1,
    'N mm': 1e-3,
    'kN m': 1e3,
    kNm: 1e3,
    'lbf in': lbf * inch,
    'lbf ft': lbf * foot,
  },
  rotationalStiffness: {
    'N m/rad': 1,
    'Nm/rad': 1,
    'kN m/rad': 1e3,
    'kNm/rad': 1e3,
    'lbf in/rad': lbf * inch,
  },
  moisture: percent,
  humidity: percent,
  share: percent,
  temperature: { degC: 1, degF: 5 / 9, K: 1 },
  time: { ms: 1e-3, s: 1, min: 60, h: 3600, day: 86400, week: 604800 },
  speed: { 'm/s': 1, 'm/min': 1 / 60, 'mm/s': 1e-3, 'mm/min': 1e-3 / 60, 'ft/min': foot / 60, 'ft/s': foot },
  acceleration: { 'm/s2': 1, 'ft/s2': foot },
  rotation: { rpm: 1 / 60, '1/min': 1 / 60, '1/s': 1, Hz: 1 },
  angle: { deg: Math.PI / 180, rad: 1, mrad: 1e-3 },
  slope: { 'mm/m': 1e-3, 'in/ft': 1 / 12, '%': 0.01 },
  marks: { '1/m': 1, '1/mm': 1e3, '1/in': 1 / inch },
  money: { money: 1 },
  pricePerLength: { 'money/m': 1, 'money/mm': 1e3, 'money/ft': 1 / foot },
  pricePerArea: { 'money/m2': 1, 'money/ft2': 1 / foot ** 2 },
  pricePerVolume: {
    'money/m3': 1,
    'money/L': 1e3,
    'money/bf': 1 / boardFoot,
    'money/super ft': 1 / boardFoot,
    'money/ft3': 1 / foot ** 3,
    'money/gal': 1 / usGallon,
  },
  pricePerMass: { 'money/kg': 1, 'money/g': 1e3, 'money/lb': 1 / pound },
  pricePerTime: { 'money/h': 1 / 3600, 'money/min': 1 / 60, 'money/day': 1 / 86400 },
  ratio: { '': 1, '%': 0.01 },
  count: { '': 1 },
} as const satisfies Record<Kind, Readonly<Record<string, number>>>;

/** Scale of every unit of a kind to the kind's base unit. */
export const unitScales: Readonly<Record<Kind, Readonly<Record<string, number>>>> = scales;

/** Names of the units of a kind, as they are written in definitions: a wrong one does not compile. */
export type UnitName<K extends Kind = Kind> = K extends Kind ? keyof (typeof scales)[K] & string : never;

/** An amount of a kind as text with its unit, such as `900 mm`; for kinds without a unit a number. */
export type Amount<K extends Kind> = K extends Kind
  ? K extends 'ratio' | 'count'
    ? number | `${number}`
    : K extends 'money' | `price${string}`
      ? number | `${number}` | `${number}/${string}`
      : `${number} ${UnitName<K>}`
  : never;
