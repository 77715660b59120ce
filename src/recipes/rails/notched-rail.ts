// A rail with a notch, or a lap cut into it: what is left carries less than the share of wood suggests.
import { danger, note, type Caution } from '../../engine/caution.js';
import { field, type Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import type { Trace } from '../../engine/trace.js';
import { InputError } from '../../units/input-error.js';
import {
  compressionNotch,
  netMoment,
  notchFactor,
  notchOutside,
  tensionNotch,
} from '../../materials/working-stress/notch.js';
import type { Material } from './design-values.js';
import type { Section } from './section.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const q = variable('lineLoad', 'load by length', { unit: 'N/mm' });

/** The input of every recipe of a loaded rail. */
export const notchField = field.group(
  {
    at: field.length({
      label: 'position',
      help: 'From the nearer support to the notch; 0 at the support itself.',
      min: '0 mm',
      max: '100 m',
      default: '0 mm',
    }),
    depth: field.length({ label: 'depth', help: 'How deep the notch is cut.', above: '0 mm', max: '3 m' }),
    side: field.choice(['bottom', 'top'], {
      label: 'side',
      help: 'Whether the notch is cut from below or above.',
      default: 'bottom',
    }),
    length: field.length({
      label: 'length',
      help: 'Length of the notch along the rail; taken as its depth where none is given.',
      above: '0 mm',
      max: '10 m',
      optional: true,
    }),
    taper: field.ratio({
      label: 'shoulder slope',
      help: 'Run of the sloping shoulder for each unit of rise; 0 is square.',
      min: 0,
      max: 20,
      default: 0,
    }),
  },
  {
    label: 'notch',
    help: 'Notch or lap cut into the rail, where there is one.',
    optional: true,
  },
);
export type Notch = NonNullable<Parsed<{ notch: typeof notchField }>['notch']>;

/** Shear force of EN 1995-1-1 Eq. 6.60 at a notched end, from a shear stress that has the cracks in it. */
const eurocodeNotch = formula({
  symbol: 'V_k',
  result: variable('force', 'shear force that the notched end carries by k_v'),
  expression: 'k_v f_v b d_n / 1.5',
  variables: {
    k_v: variable('ratio', 'what the notch leaves of the shear strength'),
    f_v: variable('stress', 'working shear stress', { unit: 'MPa' }),
    b: mm('width'),
    d_n: mm('depth left at the notch'),
  },
  basis: 'definition',
});
const spanByNotchShear = formula({
  symbol: 'L_n',
  result: mm('span at which the shear at the notch is the one it carries'),
  expression: '2 (V_n / q + x)',
  variables: {
    V_n: variable('force', 'shear force that the notch carries'),
    q,
    x: mm('from the support to the notch'),
  },
  basis: 'definition', // statics: V = q (L/2 - x)
});
const spanByNotchMoment = formula({
  symbol: 'L_m',
  result: mm('span at which the moment at the notch is the one it carries'),
  expression: '2 M_n / (q x) + x',
  variables: {
    M_n: variable('moment', 'moment that the net section carries', { unit: 'N mm' }),
    q,
    x: mm('from the support to the notch'),
  },
  basis: 'definition', // statics: M = q x (L - x)/2
});
export const notchFormulas = [tensionNotch, compressionNotch, netMoment, eurocodeNotch] as const;
export const spanByNotchFormulas = [spanByNotchShear, spanByNotchMoment] as const;

/** What a notch leaves: newtons and N·m; undefined where the stress is not known. */
export interface NotchStrength {
  readonly shear: number | undefined;
  /** Of a notch within the span. */
  readonly moment: number | undefined;
}

const solidOf = (section: Section): Extract<Section, { shape: 'solid' }> => {
  if (section.shape !== 'solid')
    throw new InputError({
      field: 'section',
      message:
        'got a section of several pieces or a bar beside a notch, takes a solid section such as "45 x 95 mm"',
    });
  return section;
};

/**
 * Shear force and moment that a rail carries at its notch: at an end the least of the NDS and EN 1995-1-1, within the
 * span the net section. @throws InputError for a notch through the rail, or one cut from below within the span
 */
export function notchStrength(
  notch: Notch,
  section: Section,
  material: Material,
  trace: Trace,
): NotchStrength {
  const { width: b, depth: d } = solidOf(section);
  const d_n = d - notch.depth;
  if (d_n <= 0)
    throw new InputError({
      field: 'notch.depth',
      message: `got ${(notch.depth * 1000).toFixed(1)} mm, takes less than the depth of the rail, ${(d * 1000).toFixed(1)} mm`,
    });
  const within = notch.at > d;
  if (within && notch.side === 'bottom')
    throw new InputError({
      field: 'notch.side',
      message:
        'got a cut from below within the span, where no standard gives it a strength: not for a loaded rail; takes "top", a notch at the support, or a rail that runs whole with the other one seated on it',
    });
  const f_v = material.shear;
  const moment =
    within && material.bending !== undefined
      ? trace.evaluate(netMoment, { f: material.bending, b, d_n })
      : undefined;
  if (f_v === undefined) return { shear: undefined, moment };
  if (notch.side === 'top')
    return { shear: trace.evaluate(compressionNotch, { F_v: f_v, b, d, d_n, x: notch.at }), moment };
  const k_v = notchFactor({ depth: d, left: d_n, toCorner: notch.at, taper: notch.taper });
  return {
    shear: Math.min(
      trace.evaluate(tensionNotch, { F_v: f_v, b, d, d_n }),
      trace.evaluate(eurocodeNotch, { k_v, f_v, b, d_n }),
    ),
    moment,
  };
}

/** Longest span under an even load for what the notch carries; undefined where nothing is known of it. */
export function spanByNotch(
  notch: Notch,
  strength: NotchStrength,
  load: number,
  trace: Trace,
): number | undefined {
  const spans = [
    strength.shear === undefined
      ? undefined
      : trace.evaluate(spanByNotchShear, { V_n: strength.shear, q: load, x: notch.at }),
    strength.moment === undefined
      ? undefined
      : trace.evaluate(spanByNotchMoment, { M_n: strength.moment, q: load, x: notch.at }),
  ].filter((x) => x !== undefined);
  return spans.length === 0 ? undefined : Math.min(...spans);
}

/** Cautions of a notch on a rail of a span. */
export function notchCautions(notch: Notch, section: Section, span: number): Caution[] {
  const { depth } = solidOf(section);
  const along = notch.at > depth ? Math.min(notch.at / span, 1) : 0;
  const outside = notchOutside({ depth, cut: notch.depth, length: notch.length ?? notch.depth, along });
  return [
    ...(outside === undefined
      ? []
      : [
          danger(
            `do not cut it so: outside the limits of the standard, ${outside}; the figure is a warning, not a permission`,
          ),
        ]),
    note(
      'a tight fit of the other piece does not bring the cut wood back: notch near the supports, a third rather than half, or on the flat',
    ),
  ];
}
