// Hazard classes of finishes: by binder, solvent, hardener and way of applying, from the names on the tins. The classes
// are rows of data/finish-hazards.csv. A name that fits none keeps every warning: not known is not harmless.
import { danger, note, type Caution } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import { tableRows } from '../../materials/data-tables.js';

export type Hazard = 'rags' | 'vapour' | 'flammable' | 'formaldehyde' | 'isocyanate' | 'epoxy' | 'stripper';

/** A class of finish, solvent or hardener. */
export interface HazardClass {
  readonly name: string;
  readonly hazards: readonly Hazard[];
}

interface ClassRow extends HazardClass {
  readonly words: readonly RegExp[];
}

const list = (text: string): string[] => text.split('; ').filter(Boolean);

let rows: readonly ClassRow[] | undefined;
const classes = (): readonly ClassRow[] =>
  (rows ??= tableRows('finish-hazards').map((row) => ({
    name: row.text('class'),
    hazards: list(row.text('hazards')) as Hazard[],
    // A word begins where no letter stands before it, so that "spar" is not in "transparent".
    words: list(row.text('words')).map((w) => new RegExp(`(?<![a-z])${w.replace(/[ -]/g, '[\\s-]?')}`, 'i')),
  })));

/** The classes a name fits; none for a name that is not known. */
export function hazardClasses(name: string): readonly HazardClass[] {
  const found = classes().filter((c) => c.words.some((w) => w.test(name)));
  const waterBorne = /water[\s-]?(?:borne|based)/i.test(name);
  // "Water-based varnish" has no oil and little solvent; a drying oil or a hardener in it stays what it is.
  return waterBorne
    ? found.filter(
        (c) => c.name === 'water-borne' || c.name === 'drying oil' || c.hazards.some((h) => hardeners.has(h)),
      )
    : found;
}
const hardeners: ReadonlySet<Hazard> = new Set(['formaldehyde', 'isocyanate', 'epoxy', 'stripper']);

/** What the names bring; `unknown` names those that fit no class, and with one every general warning stands. */
export function hazardsOf(names: readonly string[]): {
  readonly hazards: ReadonlySet<Hazard>;
  readonly unknown: readonly string[];
} {
  const unknown = names.filter((n) => hazardClasses(n).length === 0);
  const found = names.flatMap((n) => hazardClasses(n).flatMap((c) => c.hazards));
  const general: readonly Hazard[] =
    names.length === 0 || unknown.length > 0 ? ['rags', 'vapour', 'flammable'] : [];
  return { hazards: new Set([...found, ...general]), unknown };
}

const isocyanateText = {
  sprayed:
    'Isocyanate hardener, sprayed: the mist causes asthma for life. No filter mask is enough: only air-fed breathing apparatus in an extracted booth. Not at home and not in a shared workshop.',
  brushed:
    'Isocyanate hardener: it causes asthma and skin allergy. Wear gloves and goggles, work outdoors or with extraction, keep everybody else away until it has cured, and leave it if you ever had asthma.',
};

/** A mask that this names must not be read as enough where another warning, or the tin, says that it is not. */
function sprayText(has: ReadonlySet<Hazard>, known: boolean): string {
  const mask =
    has.has('isocyanate') || has.has('formaldehyde')
      ? 'and eye protection'
      : `eye protection, and a respirator with gas, vapour and particle filters (A2P3)${known ? '' : ', which is not enough against an isocyanate or acid hardener: read the tin'}`;
  return `Sprayed finish hangs in the air as mist: exhaust it with a fan that makes no spark, no flame or heater near, ${mask}. Solvent-borne finish is not sprayed at home.`;
}

/** Warnings of the hazards in the names, those that harm most first. `sprayed` tells how it is put on. */
export function hazardCautions(names: readonly string[], sprayed: boolean): Caution[] {
  const { hazards: has, unknown } = hazardsOf(names);
  const all: Caution[] = [];
  if (has.has('isocyanate'))
    all.push(
      danger(
        sprayed ? isocyanateText.sprayed : isocyanateText.brushed,
        sprayed
          ? cite('hse-isocyanate-mask', 'only air-fed breathing apparatus is suitable', {
              also: cite('hse-isocyanate-spraying', 'keep others away until the area has cleared'),
            })
          : cite('hse-isocyanate-spraying', 'general precautions'),
      ),
    );
  if (has.has('formaldehyde'))
    all.push(
      danger(
        'Wear gloves and goggles and exhaust outdoors: an acid-catalysed finish gives off formaldehyde while it cures, and its hardener is an acid. A solvent mask (A2) does not hold formaldehyde back: use filters approved for it by name, or air fed from outside. Do not cure it in rooms where people live.',
        // A gas at -19 °C; filters of type A are for boiling points over 65 °C.
        cite('niosh-npg', 'formaldehyde'),
      ),
    );
  if (has.has('epoxy'))
    all.push(
      danger(
        'Wear nitrile gloves, changed often, and long sleeves: epoxy resin and hardener cause a skin allergy that stays for life. Put no solvent on the skin, and do not sand before it has cured in full.',
        cite('hse-epoxy', 'skin sensitisation', { read: 'memory' }),
      ),
    );
  if (has.has('stripper'))
    all.push(
      danger(
        'Use a stripper without dichloromethane, outdoors: its vapour has killed people in small rooms, and its sale to the public is banned in the European Union.',
        cite('reach-annex-xvii-59', 'entry 59', { read: 'memory' }),
      ),
    );
  if (sprayed)
    all.push(
      danger(
        sprayText(has, names.length > 0 && unknown.length === 0),
        cite('icsc-0361', 'inhalation, skin and eyes', {
          also: cite('hse-isocyanate-spraying', 'spray mist'),
        }),
      ),
    );
  if (has.has('flammable') && names.length > 0 && unknown.length === 0)
    all.push(
      danger(
        'Keep flames, sparks and pilot lights out of the room and the lid on: its vapour catches fire at room temperature and creeps along the floor.',
        cite('flash-point-table', 'flash points under 21 °C'),
      ),
    );
  if (unknown.length > 0)
    all.push(
      danger(
        `Read the tin and the safety data sheet of ${unknown.map((n) => n.slice(0, 40)).join(', ')} for flash point, hardener and respirator: the name is not known here, so every warning is kept.`,
      ),
    );
  return all;
}

/** A note for a mix of water-borne parts alone, so that its lack of warnings is not read as none being needed. */
export function waterBorneNote(names: readonly string[], sprayed: boolean): Caution[] {
  const plain = names.length > 0 && names.every((n) => hazardClasses(n).every((c) => c.hazards.length === 0));
  return plain && hazardsOf(names).unknown.length === 0 && !sprayed
    ? [note('water-borne: little solvent, but keep it off the skin and open a window')]
    : [];
}
