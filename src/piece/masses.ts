// What the piece weighs, part by part, and where each weight acts.
import { pieceWeight } from '../recipes/moisture/piece-weight.js';
import { membersNode, middleOf, sidesOf } from './member.js';
import { need } from './open-question.js';
import type { PieceNode } from './piece-graph.js';
import { ask, placed, type Ask } from './recipe-ask.js';
import { speciesOf } from './species-of.js';

/** A weight and the place of its middle; `least` is what a light timber would weigh. */
export interface Mass {
  readonly name: string;
  readonly mass: number;
  readonly least: number;
  readonly most: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface Masses {
  readonly top: Mass;
  readonly parts: readonly Mass[];
  readonly total: number;
  readonly least: number;
  readonly most: number;
  readonly asks: readonly Ask[];
}

const topMass: PieceNode<{ readonly mass: Mass; readonly ask: Ask }> = {
  name: 'mass of the top',
  compute: (m) => {
    const asked = ask(
      m,
      pieceWeight,
      {
        length: () =>
          m.get('top', 'ends') === 'square'
            ? m.get('top', 'length')
            : m.get('top', 'length') + 2 * need(m.get('top', 'endHeight'), 'top.endHeight'),
        width: () => m.get('top', 'width'),
        thickness: () => m.get('top', 'thickness'),
        timber: () => speciesOf(m.get('top', 'timber')),
        moisture: () => m.get('use', 'moisture'),
      },
      'top',
    );
    const weighed = m.get('top', 'mass');
    const { mass, low, high } = asked.out;
    return {
      ask: asked.ask,
      mass: {
        name: 'top',
        mass: weighed ?? mass,
        least: weighed ?? low ?? mass,
        most: weighed ?? high ?? mass,
        x: m.get('top', 'length') / 2,
        y: m.get('top', 'width') / 2,
        z: m.all('height') - m.get('top', 'thickness') / 2,
      },
    };
  },
};

const frameMass: PieceNode<{ readonly masses: readonly Mass[]; readonly asks: readonly Ask[] }> = {
  name: 'mass of the frame',
  compute: (m) => {
    const parts = m.all('parts');
    const members = m.of(membersNode);
    const asks: Ask[] = [];
    const masses = Object.entries(parts).flatMap(([name, part]): Mass[] => {
      const own = members.filter((x) => x.part === name);
      const first = own[0];
      if (!first) return [];
      const { upright, level } = sidesOf(part);
      const { ask: made, out } = ask(
        m,
        pieceWeight,
        {
          length: () => placed('(parts in place)', first.length),
          width: () => placed(`parts.${name}.section`, upright),
          thickness: () => placed(`parts.${name}.section`, level),
          timber: () => placed(`parts.${name}.timber`, speciesOf(part.timber)),
          moisture: () => m.get('use', 'moisture'),
        },
        name,
      );
      asks.push(made);
      const of = (mass: number) => part.mass ?? mass;
      return own.map((x) => ({
        name,
        mass: of(out.mass),
        least: of(out.low ?? out.mass),
        most: of(out.high ?? out.mass),
        ...middleOf(x),
      }));
    });
    return { masses, asks };
  },
};

/** The piece as a whole. */
export const massesNode: PieceNode<Masses> = {
  name: 'masses',
  compute: (m) => {
    const top = m.of(topMass);
    const frame = m.of(frameMass);
    const all = [top.mass, ...frame.masses];
    const sum = (of: (x: Mass) => number): number => all.reduce((s, x) => s + of(x), 0);
    return {
      top: top.mass,
      parts: frame.masses,
      total: sum((x) => x.mass),
      least: sum((x) => x.least),
      most: sum((x) => x.most),
      asks: [top.ask, ...frame.asks],
    };
  },
};
