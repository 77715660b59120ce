// What can burn, catch fire by itself or get under the skin, by the names people write on their jars. The figures are
// rows of data/safety-limits.various.csv, each with its source; the maker's own safety sheet always goes first.
import { danger, note, type Caution } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import { hazardCautions, hazardsOf, waterBorneNote } from './hazard-classes.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

/** A name that says little is taken for the commonest. */
const unclear = { names: /spirit|thinner|solvent/i, agent: 'mineral spirits' };
/** Names on jars, in the order they are tried: `mineral turpentine` is not turpentine. */
const liquids: readonly { readonly names: RegExp; readonly agent: string }[] = [
  {
    names: /white\s*spirit|mineral\s*(spirit|turp)|turp\w*\s*substitute|stoddard|odou?rless/i,
    agent: 'mineral spirits',
  },
  { names: /turp/i, agent: 'turpentine' },
  { names: /methanol|wood\s*alcohol/i, agent: 'methyl alcohol' },
  { names: /meths|methylated|denatured|ethanol|ethyl|alcohol|shellac/i, agent: 'ethyl alcohol' },
  { names: /acetone/i, agent: 'acetone' },
  { names: /kerosi|kerose|paraffin/i, agent: 'kerosine' },
  unclear,
];

const liquidOf = (name: string) => liquids.find((l) => l.names.test(name));

/** The agents of `data/safety-limits.various.csv` that these names stand for. */
export function agentsIn(names: readonly string[]): string[] {
  return [...new Set(names.flatMap((n) => liquidOf(n)?.agent ?? []))];
}

const celsius = (f: number): string => `${Math.round(((f - 32) * 5) / 9)} °C`;

function flashPoint(row: DataRow): Caution {
  const [low, high] = [row.number('low') as number, row.number('high') as number];
  const from = low === high ? celsius(low) : `${celsius(low)} to ${celsius(high)}`;
  const warm =
    low < 80
      ? ', so its vapour can catch fire in an ordinary room'
      : low <= 100
        ? ', so its vapour can catch fire in a warm room'
        : '';
  return danger(
    `keep flames, sparks and pilot lights away from ${row.text('agent')}, and its lid on: flash point ${from}${warm}`,
    row.citation,
  );
}

/**
 * Cautions for handling the liquids called `names`: flash points, ventilation and skin, rags that heat by themselves.
 * A mix of water-borne parts alone has none of them; a name that is not known keeps every general one. A name with
 * "spray" in it is taken as sprayed.
 */
export function finishHazards(
  names: readonly string[],
  more: { readonly food?: boolean; readonly sprayed?: boolean } = {},
): Caution[] {
  const agents = agentsIn(names);
  const flash = tableRows('safety-limits.various').filter(
    (r) => r.text('limit') === 'flash point' && agents.includes(r.text('agent')),
  );
  const sprayed = more.sprayed === true || names.some((n) => /spray|aerosol/i.test(n));
  const { hazards } = hazardsOf(names);
  const vapour = agents.length > 0 || hazards.has('vapour');
  const rags = hazards.has('rags');
  const vague = names.find((n) => liquidOf(n) === unclear);
  return [
    ...hazardCautions(names, sprayed),
    ...flash.map(flashPoint),
    ...(vague === undefined
      ? []
      : [
          danger(
            `read the tin: ${vague.slice(0, 40)} is taken for mineral spirits, while methylated spirit and lacquer thinner catch fire at room temperature`,
          ),
        ]),
    ...(rags
      ? [
          danger(
            'spread oily rags flat outdoors to dry, or put them under water in a lidded metal can: wet with a drying oil or an oil varnish they heat by themselves and can burn within a few hours',
            cite('harvard-fablab-oils', 'disposal of oily rags'),
          ),
        ]
      : []),
    ...(vapour
      ? [
          danger(
            'open windows and doors on two sides or exhaust outdoors, and wear gloves and eye protection: solvent dries and reddens skin, and its vapour brings headache and dizziness',
            cite('icsc-0361', 'inhalation, skin and eyes'),
          ),
        ]
      : []),
    ...(more.food
      ? [
          note(
            'for food contact use only a coating that its maker declares fit for it, cured in full as the label says; the finish then has to be a whole film, or an oil whose every part is allowed',
            cite('cfr-21-175-300', '(a) and (b)'),
          ),
        ]
      : []),
    ...waterBorneNote(names, sprayed),
    note('follow the maker’s safety data sheet and local rules first: they take precedence'),
  ];
}
