import { barChart } from '../../charts/bar-chart.js';
import { estimate, dataCaution, danger } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { withoutResidue } from '../../units/clean-number.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber, timberField } from '../../materials/timber-field.js';
import { findSpecies } from '../../materials/species.js';
import type { Timber } from '../../materials/timber.js';
import { moveAcross, movementFormulas } from './movement-model.js';
import { cutField, moistureOf, stateField, type Cut } from './wood-state.js';

const crushSource = cite('hoadley-1998', 'p. 18, compression across the grain');
/** Strain across the grain at which crushing begins and at which it has surely begun. */
const crush = { begins: 0.005, sure: 0.01 } as const;

const strainRule = formula({
  symbol: 'epsilon',
  result: variable('share', 'strain of a width that is not let move', { unit: '%' }),
  basis: 'geometry',
  expression: 'abs(Delta) / w',
  variables: {
    Delta: variable('length', 'movement it would make if free', { unit: 'mm' }),
    w: variable('length', 'width', { unit: 'mm' }),
  },
});
const acrossRule = formula({
  symbol: 'E_x',
  result: variable('modulus', 'modulus of elasticity across the grain', { unit: 'GPa' }),
  basis: 'published',
  source: cite('fpl-gtr-190', 'Table 5-1, elastic ratios'),
  expression: 'r E_L',
  variables: {
    r: variable('ratio', 'share of the modulus along the grain'),
    E_L: variable('modulus', 'modulus of elasticity along the grain', { unit: 'GPa' }),
  },
});
const stressRule = formula({
  symbol: 'sigma',
  result: variable('stress', 'stress across the grain', { unit: 'MPa' }),
  basis: 'estimate',
  expression: 'E_x epsilon',
  variables: {
    E_x: variable('modulus', 'modulus across the grain', { unit: 'MPa' }),
    epsilon: variable('share', 'strain'),
  },
});

/** Stiffness and strength across the grain: the timber's own, or the middle of its kind. */
function acrossOf(
  trace: Trace,
  timber: Timber,
  cut: Cut,
): { readonly modulus: number; readonly tension: number } {
  const kind = findSpecies(timber.group === 'softwood' ? 'unknown softwood' : 'unknown hardwood');
  const pick = <T>(what: string, own: T | undefined, other: T | undefined): T => {
    if (own !== undefined) return own;
    trace.warn(
      dataCaution(`${timber.name} has no ${what} in the data: the middle of the ${kind.group}s was taken`),
    );
    return other as T;
  };
  const mechanical = timber.mechanical('12%');
  const ofKind = kind.mechanical('12%');
  const E = pick('modulus of elasticity', mechanical?.modulus, ofKind?.modulus);
  const ratios = pick('elastic ratios', timber.elasticRatios(), kind.elasticRatios());
  const tension = pick('tension strength across the grain', mechanical?.tensionAcross, ofKind?.tensionAcross);
  citeTimber(trace, timber, mechanical);
  for (const row of ratios.rows) trace.source({ ...row.citation });
  const [c, s] = [Math.cos(cut.angle) ** 2, Math.sin(cut.angle) ** 2];
  const share = c * ratios.tangential.middle + s * ratios.radial.middle;
  return { modulus: trace.evaluate(acrossRule, { r: share, E_L: E.middle }), tension: tension.middle };
}

/** What is to be expected of a top that would change its width so, strained so far and at that share of its strength. */
export function verdictOn(change: number, strain: number, used: number): string {
  if (change > 0) {
    if (strain <= crush.begins) return 'holds: within the elastic range';
    if (strain <= crush.sure) return 'at risk: may begin to crush';
    return 'crushes: it will stay narrower, and gaps open when it dries';
  }
  if (change < 0) {
    if (used < 0.5) return 'holds: under half of its strength';
    if (used < 1) return 'at risk: a weak place or a nail hole may start a split';
    return 'likely to split';
  }
  return 'nothing: the moisture does not change its width';
}

/**
 * What a top suffers that is fixed hard along its width: the strain, the stress across the grain and whether it is likely to split
 * or crush. Elastic and therefore on the high side: slow changes let wood creep and ease. To show why slots are cut, not to do without them.
 */
export const restraintStress = recipe({
  name: 'restraintStress',
  title: 'Stress in a top held rigid',
  topic: 'moisture',
  about:
    'Strain and stress across the grain of a top held hard along its width while its moisture changes, against the strength of the timber: why a top splits when it is screwed down tight. An estimate that leaves creep out.',
  sources: [crushSource],
  inputs: {
    width: field.length({ label: 'width across the grain', above: '0 mm', max: '100 m' }),
    timber: timberField({
      needs: ['movement', 'shrinkage'],
      label: 'timber',
      help: 'A species, or a group for the middle of its range.',
    }),
    cut: cutField({
      label: 'cut',
      help: 'How it was sawn, or the angle of the rings to the face.',
      default: 'flat-sawn',
    }),
    from: stateField('moisture when fixed'),
    to: stateField('final moisture content'),
  },
  outputs: {
    strain: out.share({
      label: 'prevented movement',
      help: 'Movement that is prevented, as a share of the width.',
    }),
    stress: out.stress({ label: 'stress across the grain' }),
    strength: out.stress({
      label: 'stress at failure',
      help: 'Stress at which it splits, or in swelling begins to crush.',
    }),
    used: out.share({ label: 'share of that strength' }),
    sense: out.text({ label: 'type of stress', help: 'Tension as it dries, compression as it swells.' }),
    verdict: out.text({ label: 'verdict', help: 'What to expect.' }),
  },
  formulas: [strainRule, acrossRule, stressRule, ...movementFormulas],
  solve: (given, trace) => {
    const from = moistureOf(trace, given.from, 'from');
    const to = moistureOf(trace, given.to, 'to');
    const moved = moveAcross(trace, { width: given.width, timber: given.timber, cut: given.cut }, from, to);
    const strain = trace.evaluate(strainRule, { Delta: moved.change, w: given.width });
    const { modulus, tension } = acrossOf(trace, given.timber, given.cut);
    const stress = trace.evaluate(stressRule, { E_x: modulus, epsilon: strain });
    const swells = moved.change > 0;
    if (swells)
      trace.note(
        'In swelling the wood is pressed: it begins to crush at about 0.5 % of strain and surely has at 1 %; crushed wood stays narrower and opens gaps when it dries.',
        crushSource,
      );
    const strength = swells ? modulus * crush.begins : tension;
    const used = stress / strength;
    const verdict = verdictOn(moved.change, strain, used);
    return {
      strain,
      stress,
      strength,
      used,
      // The movement as it is given: what rounding leaves of none is none.
      sense: ['tension', 'none', 'compression'][
        Math.sign(withoutResidue('length', moved.change)) + 1
      ] as string,
      verdict,
    };
  },
  cautions: [
    estimate(
      'creep is left out: over months wood eases by a third or more, so the true stress is lower; knots, shakes and nail holes take more than that off the strength',
    ),
    danger(
      'let tops move in slots: a wide top that splits or pushes its frame apart can drop what stands on it',
    ),
  ],
  chart: (_given, answer) =>
    barChart({
      title: answer.sense === 'compression' ? 'Compression across the grain' : 'Tension across the grain',
      subtitle: answer.verdict,
      of: '',
      value: { title: 'Stress', unit: 'MPa' },
      bars: [
        {
          name: 'if held hard',
          value: answer.stress / 1e6,
          label: `${(answer.stress / 1e6).toFixed(2)} MPa`,
          chosen: true,
        },
        {
          name: answer.sense === 'compression' ? 'begins to crush' : 'splits',
          value: answer.strength / 1e6,
          label: `${(answer.strength / 1e6).toFixed(2)} MPa`,
        },
      ],
    }),
  sentence: (_given, out) =>
    `Held rigid, the stress is {used} of its strength across the grain: {verdict}.${out.used > 1 ? ' Let it move.' : ''}`,
  mending: {
    fails: (_given, out) => out.used > 1,
    remedies: (['down', 'up'] as const).flatMap((direction) =>
      (['from', 'to'] as const).map((input) => ({
        input,
        direction,
        step: 0.005,
        kind: 'moisture' as const,
        say: input === 'from' ? 'fix it only once the wood is at {value}' : 'keep the wood at {value}',
      })),
    ),
    then: 'the stress is {used} of its strength',
  },
  example: { width: '640 mm', timber: 'white oak', from: '12 %', to: '8 %' },
});
