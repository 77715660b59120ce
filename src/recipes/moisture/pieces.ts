// What a top is made of, and the sum of what its pieces do; or the change by a figure of one's own.
import { InputError } from '../../units/input-error.js';
import { collectIssues } from '../../engine/field.js';
import { nanometres } from '../../engine/nanometres.js';
import type { Trace } from '../../engine/trace.js';
import type { Timber } from '../../materials/timber.js';
import { coefficientRule, greenRule, moveAcross, type Moved, type Piece } from './movement-model.js';
import { byRule, type SizeRule } from './size-rules.js';
import type { Cut } from './wood-state.js';

/** What is given of a top: one board, or its strips. */
interface Top {
  readonly width: number | undefined;
  readonly timber: Timber | undefined;
  readonly cut: Cut;
  readonly strips:
    | readonly {
        readonly timber: Timber;
        readonly width: number;
        readonly cut: Cut;
        readonly count: number;
      }[]
    | undefined;
}

/** The pieces that make the width: the strips, or the one board. @throws InputError where neither or both are given */
export function piecesOf(given: Top): Piece[] {
  if (given.strips) {
    if (given.timber)
      throw new InputError({
        field: 'timber',
        message: 'given together with strips, each of which has its own; takes one of the two',
      });
    const pieces = given.strips.flatMap((s, i) =>
      Array.from({ length: s.count }, () => ({ row: i + 1, width: s.width, timber: s.timber, cut: s.cut })),
    );
    const sum = pieces.reduce((a, p) => a + p.width, 0);
    if (pieces.length > 10_000)
      throw new InputError({ field: 'strips', message: `got ${pieces.length} strips, takes at most 10 000` });
    // Half a millimetre, to a nanometre.
    const width = given.width ?? sum;
    if (nanometres(Math.abs(width - sum)) > 500_000) {
      throw new InputError({
        field: 'width',
        message: `got ${(width * 1000).toFixed(1)} mm, but the strips add up to ${(sum * 1000).toFixed(1)} mm; leave width out, or make them agree`,
      });
    }
    return pieces;
  }
  const { width, timber, cut } = given;
  if (width !== undefined && timber !== undefined) return [{ width, timber, cut }];
  throw new InputError([
    ...(width === undefined
      ? [{ field: 'width', message: 'missing; takes a length such as "900 mm", or give strips' }]
      : []),
    ...(timber === undefined
      ? [{ field: 'timber', message: 'missing; takes a timber by name such as "white oak", or give strips' }]
      : []),
  ]);
}

/** A refusal that a strip raises is given the strip's place. */
function ofPiece(piece: Piece, run: () => Moved): Moved {
  if (piece.row === undefined) return run();
  const [moved] = collectIssues([[`strips[${piece.row}]`, run]]) as [Moved];
  return moved;
}

/** Sum over the pieces. Each piece's spread adds in full: strips of one kind move together. */
export function moveAll(
  trace: Trace,
  pieces: readonly Piece[],
  from: number,
  to: number,
): Moved & { readonly each: readonly Moved[] } {
  const [only] = pieces;
  if (only && pieces.length === 1) {
    const moved = ofPiece(only, () => moveAcross(trace, only, from, to));
    const { change, low, high, rule, perPercent } = moved;
    return { change, low, high, rule, perPercent, each: [moved] };
  }
  // Strips alike are computed once.
  const seen = new Map<string, Moved>();
  const each = pieces.map((p) => {
    const key = `${p.timber.id}|${p.width}|${p.cut.angle}|${p.cut.unknown}`;
    const moved = seen.get(key) ?? ofPiece(p, () => moveAcross(trace, p, from, to));
    seen.set(key, moved);
    return moved;
  });
  const sum = (k: 'change' | 'low' | 'high'): number => each.reduce((a, m) => a + m[k], 0);
  const width = pieces.reduce((a, p) => a + p.width, 0);
  const rules = new Set(each.map((m) => m.rule));
  return {
    change: sum('change'),
    low: sum('low'),
    high: sum('high'),
    rule: (rules.size === 1 ? [...rules][0] : 'green shrinkage') as Moved['rule'],
    perPercent: each.reduce((a, m, i) => a + m.perPercent * (pieces[i] as Piece).width, 0) / width,
    each,
  };
}

/** What may be given in place of the timber's published figures. */
interface Own extends Top {
  readonly coefficient: number | undefined;
  readonly shrinkage: number | undefined;
  readonly fibreSaturation: number;
  readonly rule: SizeRule;
  readonly face: 'width' | 'thickness';
}

/** The change by a figure of one's own or a rule of a standard; undefined where the timber's published figures are asked for. */
export function ownFigure(
  trace: Trace,
  g: Own,
  from: number,
  to: number,
): { readonly width: number; readonly change: number; readonly rule: string } | undefined {
  const named: string[] = [];
  if (g.coefficient !== undefined) named.push('coefficient');
  if (g.shrinkage !== undefined) named.push('shrinkage');
  if (g.rule !== 'timber') named.push('rule');
  if (g.strips) named.push('strips');
  if (named.length > 1)
    throw new InputError({
      field: named[1] as string,
      message: `given together with ${named[0]}; takes one of the two`,
    });
  if (named.length === 0 || g.strips) return undefined;
  if (g.width === undefined)
    throw new InputError({ field: 'width', message: 'missing; takes a length such as "900 mm"' });
  if (g.rule !== 'timber')
    return {
      width: g.width,
      change: byRule(trace, g.rule, g.width, from, to, g.face, g.timber),
      rule: g.rule === 'EN 336' ? 'flat rate of EN 336' : 'softwood lumber by its green size',
    };
  return {
    width: g.width,
    change: ownMove(trace, g, g.width, from, to),
    rule: g.coefficient !== undefined ? 'coefficient as given' : 'shrinkage from green as given',
  };
}

/** The change by a coefficient or a shrinkage of one's own. */
function ownMove(trace: Trace, own: Own, D: number, from: number, to: number): number {
  const f = own.fibreSaturation;
  const [M_I, M_F] = [Math.min(from, f), Math.min(to, f)];
  return own.coefficient !== undefined
    ? trace.evaluate(coefficientRule, { D, C: own.coefficient, M_F, M_I })
    : trace.evaluate(greenRule, { D, M_F, M_I, f, S: own.shrinkage as number });
}
