import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angledRail } from '../../src/recipes/joinery/angled-rail.js';
import { biscuitSpacing } from '../../src/recipes/joinery/biscuit-spacing.js';
import { halfLap } from '../../src/recipes/joinery/half-lap.js';
import { jointFit } from '../../src/recipes/joinery/joint-fit.js';
import { mitredEnd } from '../../src/recipes/joinery/mitred-end.js';
import { screwHold } from '../../src/recipes/joinery/screw-hold.js';
import { splayedCorner } from '../../src/recipes/joinery/splayed-corner.js';
import { splineSlot } from '../../src/recipes/joinery/spline-slot.js';
import { squareness } from '../../src/recipes/joinery/squareness.js';

const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });
type V3 = readonly [number, number, number];
const dot = (a: V3, b: V3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: V3, b: V3): V3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: V3): V3 => {
  const l = Math.sqrt(dot(a, a));
  return [a[0] / l, a[1] / l, a[2] / l];
};

describe('splayedCorner', () => {
  it('agrees with the box built in space: planes of two sides, their edge, and the plane that halves them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 24 }), num(1, 89), (n, s) => {
        const slope = (s * Math.PI) / 180;
        const r = splayedCorner({ sides: n, slope: `${s} deg` });
        // Side 1 faces out along x: its foot runs along y, and going up it goes out by cos(slope), up by sin(slope).
        const up: V3 = [Math.cos(slope), 0, Math.sin(slope)];
        const along: V3 = [0, 1, 0];
        const turn = (v: V3, a: number): V3 => [
          v[0] * Math.cos(a) - v[1] * Math.sin(a),
          v[0] * Math.sin(a) + v[1] * Math.cos(a),
          v[2],
        ];
        const normal = unit(cross(up, along));
        const next = turn(normal, (2 * Math.PI) / n);
        const edge = unit(cross(normal, next));
        // The mitre: how far the edge leans from the square end of side 1, in the face of side 1.
        const mitre = Math.atan2(Math.abs(dot(edge, along)), Math.abs(dot(edge, up)));
        expect(r.mitre.value).toBeCloseTo(mitre, 9);
        // The bevel: half of what the two faces turn through.
        const between = Math.acos(Math.min(1, Math.max(-1, dot(normal, next))));
        expect(r.bevel.value).toBeCloseTo(between / 2, 7);
        expect(r.between.value).toBeCloseTo(Math.PI - between, 7);
      }),
    );
  });
  it('a flat frame is 180/n at no bevel; an upright box is square on the gauge at 180/n of bevel', () => {
    for (let n = 3; n <= 30; n++) {
      const [flat, box] = [
        splayedCorner({ sides: n, slope: '0 deg' }),
        splayedCorner({ sides: n, slope: '90 deg' }),
      ];
      expect(flat.mitre.in('deg')).toBeCloseTo(180 / n, 9);
      expect(flat.bevel.value).toBeCloseTo(0, 12);
      expect(box.mitre.value).toBeCloseTo(0, 9);
      expect(box.bevel.in('deg')).toBeCloseTo(180 / n, 9);
    }
  });
});

describe('squareness', () => {
  it('finds the lean of any parallelogram from its diagonals', () => {
    fc.assert(
      fc.property(num(100, 5000), num(100, 3000), num(-0.3, 0.3), (w, h, lean) => {
        const [dx, dy] = [h * Math.sin(lean), h * Math.cos(lean)];
        const A = Math.hypot(w + dx, dy);
        const B = Math.hypot(w - dx, dy);
        const r = squareness({
          width: `${w} mm`,
          height: `${h} mm`,
          diagonalA: `${A} mm`,
          diagonalB: `${B} mm`,
        });
        expect(r.outOfSquare.value).toBeCloseTo(Math.abs(lean), 6);
        expect(r.move.in('mm')).toBeCloseTo(Math.abs(dx), 4);
        expect(r.sidesDiffer?.in('mm')).toBeCloseTo(0, 4);
        if (Math.abs(lean) > 1e-3) expect(r.pull).toMatch(lean > 0 ? /diagonal A/ : /diagonal B/);
        const again = squareness({ width: `${w} mm`, height: `${h} mm`, cornerOffset: `${dx} mm` });
        expect(again.diagonalA.in('mm')).toBeCloseTo(A, 6);
        expect(again.diagonalB.in('mm')).toBeCloseTo(B, 6);
        expect(again.outOfSquare.value).toBeCloseTo(Math.abs(lean), 9);
      }),
    );
  });
  it('by Pythagoras: 3, 4, 5, and 1200 by 800 has a diagonal of 1442.22 mm', () => {
    expect(
      squareness({ width: '3 m', height: '4 m', cornerOffset: '0 mm' }).trueDiagonal.in('m'),
    ).toBeCloseTo(5, 12);
    expect(
      squareness({ width: '1200 mm', height: '800 mm', cornerOffset: '0 mm' }).trueDiagonal.in('mm'),
    ).toBeCloseTo(1442.22, 2);
  });
  it('is not sure within the tape’s error, and the error it names is just what wrong readings make', () => {
    const r = squareness({
      width: '1200 mm',
      height: '800 mm',
      diagonalA: '1442.6 mm',
      diagonalB: '1441.8 mm',
      readingError: '0.5 mm',
    });
    expect(r.sure).toBe(false);
    expect(r.cautions.some((c) => /within what the tape may be out/.test(c.text))).toBe(true);
    const d = Math.hypot(1200, 800);
    const wrong = squareness({
      width: '1200 mm',
      height: '800 mm',
      diagonalA: `${d + 0.5} mm`,
      diagonalB: `${d - 0.5} mm`,
      readingError: '0.5 mm',
    });
    expect(wrong.outPerMetre.value / wrong.readingAngle.value).toBeCloseTo(1, 5);
  });
  it('says when sides and diagonals cannot belong together', () => {
    const r = squareness({ width: '1200 mm', height: '800 mm', diagonalA: '1450 mm', diagonalB: '1448 mm' });
    expect(r.cautions.some((c) => c.level === 'range' && /opposite sides are not equal/.test(c.text))).toBe(
      true,
    );
  });
});

describe('jointFit', () => {
  // A plain generator, so that the trial is the same each time.
  const random = (seed: number) => () => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return (seed + 0.5) / 4294967296;
  };
  it('agrees with a simulation of 200 000 joints, within four standard errors', () => {
    const next = random(7);
    const normal = (mean: number, sd: number) =>
      mean + sd * Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
    const cases = [
      [6.2, 0.1, 6.15, 0.1, 0, 0.2],
      [12, 0.15, 11.9, 0.05, -0.05, 0.2],
      [8, 0.02, 8.02, 0.04, -0.05, 0.03],
    ] as const;
    for (const [S, tS, P, tP, tight, loose] of cases) {
      const r = jointFit({
        slot: { size: `${S} mm`, plusMinus: `${tS} mm` },
        part: { size: `${P} mm`, plusMinus: `${tP} mm` },
        tightest: `${tight} mm`,
        loosest: `${loose} mm`,
      });
      const tries = 200_000;
      let [fits, jams, slack] = [0, 0, 0];
      for (let i = 0; i < tries; i++) {
        const c = normal(S, tS / 2) - normal(P, tP / 2);
        if (c < tight) jams++;
        else if (c > loose) slack++;
        else fits++;
      }
      for (const [ours, count] of [
        [r.chanceFits, fits],
        [r.chanceJams, jams],
        [r.chanceLoose, slack],
      ] as const) {
        const p = ours.value;
        expect(Math.abs(count / tries - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / tries) + 1e-6);
      }
    }
  });
  it('chances add up to one, and no other size fits oftener than the one to aim for', () => {
    fc.assert(
      fc.property(
        num(3, 30),
        num(0.001, 0.4),
        num(0.001, 0.4),
        num(-0.1, 0.1),
        num(0.01, 0.4),
        num(-0.5, 0.5),
        (S, tS, tP, tight, band, off) => {
          const given = (P: number) => ({
            slot: { size: `${S} mm`, plusMinus: `${tS} mm` },
            part: { size: `${P} mm`, plusMinus: `${tP} mm` },
            tightest: `${tight} mm`,
            loosest: `${tight + band} mm`,
          });
          const r = jointFit(given(S + off));
          expect(r.chanceFits.value + r.chanceJams.value + r.chanceLoose.value).toBeCloseTo(1, 9);
          expect(r.chanceFits.value).toBeLessThanOrEqual(r.chanceAtAim.value + 1e-12);
          expect(jointFit(given(r.aim.in('mm'))).chanceFits.value).toBeCloseTo(r.chanceAtAim.value, 9);
        },
      ),
    );
  });
  it('one standard deviation either side is 68.27 %, two 95.45 %, three 99.73 %', () => {
    for (const [z, p] of [
      [1, 0.682689492],
      [2, 0.954499736],
      [3, 0.997300204],
    ] as const) {
      const r = jointFit({
        slot: { size: '10 mm', plusMinus: '0.1 mm' },
        part: { size: '9.9 mm', plusMinus: '0 mm' },
        sigmas: z,
        tightest: '0 mm',
        loosest: '0.2 mm',
      });
      expect(r.chanceFits.value).toBeCloseTo(p, 8);
    }
  });
  it('without any spread decides outright', () => {
    const r = jointFit({
      slot: { size: '10 mm', plusMinus: '0 mm' },
      part: { size: '9.9 mm', plusMinus: '0 mm' },
    });
    expect(r.chanceFits.value).toBe(1);
    expect(r.toText()).not.toMatch(/NaN/);
  });
});

describe('halfLap', () => {
  it('its glued face is the rhomboid of two crossing strips, and its shoulders are the sides of it', () => {
    fc.assert(
      fc.property(num(10, 300), num(10, 300), num(10, 100), num(15, 90), (wA, wB, t, a) => {
        const r = halfLap({
          widthA: `${wA} mm`,
          widthB: `${wB} mm`,
          thickness: `${t} mm`,
          angle: `${a} deg`,
        });
        const [onA, onB] = r.shoulders.map((s) => s.between.in('mm')) as [number, number];
        // Area of a parallelogram with sides onA and onB and this angle between them.
        expect(r.glueArea.in('mm2') / (onA * onB * Math.sin((a * Math.PI) / 180))).toBeCloseTo(1, 9);
        expect(onA).toBeGreaterThanOrEqual(wB * (1 - 1e-12));
        expect(r.depth.in('mm')).toBeCloseTo(t / 2, 9);
      }),
    );
  });
});

describe('mitredEnd', () => {
  it('spends the whole strip: ends, top, grain lost and trim', () => {
    fc.assert(
      fc.property(
        num(500, 3000),
        num(200, 1200),
        num(15, 60),
        num(0, 5),
        num(70, 150),
        fc.integer({ min: 1, max: 2 }),
        (T, H, t, k, a, n) => {
          const r = mitredEnd({
            topLength: `${T} mm`,
            endHeight: `${H} mm`,
            thickness: `${t} mm`,
            kerf: `${k} mm`,
            angle: `${a} deg`,
            ends: n,
          });
          const at = r.cutPositions.map((c) => c.position.in('mm'));
          expect(at).toHaveLength(n === 2 ? 6 : 4);
          for (let i = 1; i < at.length; i++) expect(at[i]).toBeGreaterThanOrEqual(at[i - 1] as number);
          expect((at[at.length - 1] as number) + 10).toBeCloseTo(r.stripLength.in('mm'), 6);
          expect((at[1] as number) - (at[0] as number)).toBeCloseTo(H, 6);
          expect((at[3] as number) - (at[2] as number)).toBeCloseTo(T, 6);
          // Two mitres and the inside angle make a straight angle.
          expect(2 * r.bevel.in('deg') + a).toBeCloseTo(180, 9);
        },
      ),
    );
  });
});

describe('splineSlot', () => {
  it('leaves the walls that plane geometry measures', () => {
    fc.assert(
      fc.property(num(18, 80), num(2, 8), num(8, 24), num(0.2, 0.7), num(50, 140), (t, s, w, share, a) => {
        const bevel = Math.PI / 2 - (a * Math.PI) / 360;
        const m = t / Math.cos(bevel);
        const c = s / 2 + share * (m - s);
        let r;
        try {
          r = splineSlot({
            thickness: `${t} mm`,
            splineThickness: `${s} mm`,
            splineWidth: `${w} mm`,
            fromInside: `${c} mm`,
            angle: `${a} deg`,
          });
        } catch (error) {
          expect(String(error)).toMatch(/comes out through the outside face/);
          return;
        }
        const d = w / 2 + 0.5;
        // The inside face runs from the corner (0, 0) at the interior angle 90° + bevel to the mitre face, the outside one parallel to it.
        const direction = [Math.cos(Math.PI / 2 + bevel), Math.sin(Math.PI / 2 + bevel)] as const;
        const distance = (u: number, v: number, u0: number) =>
          Math.abs((u - u0) * direction[1] - v * direction[0]);
        const corners = [
          [c - s / 2, 0],
          [c - s / 2, d],
          [c + s / 2, 0],
          [c + s / 2, d],
        ] as const;
        expect(r.wallInside.in('mm')).toBeCloseTo(Math.min(...corners.map(([u, v]) => distance(u, v, 0))), 6);
        expect(r.wallOutside.in('mm')).toBeCloseTo(
          Math.min(...corners.map(([u, v]) => distance(u, v, m))),
          6,
        );
      }),
    );
  });
  it('at its deepest it leaves just the least wall', () => {
    const r = splineSlot({
      thickness: '40 mm',
      splineThickness: '6 mm',
      splineWidth: '24 mm',
      fromInside: '16 mm',
      leastWall: '5 mm',
    });
    const again = splineSlot({
      thickness: '40 mm',
      splineThickness: '6 mm',
      splineWidth: `${(r.deepest.in('mm') - 0.5) * 2} mm`,
      fromInside: '16 mm',
      leastWall: '5 mm',
    });
    expect(again.wallOutside.in('mm')).toBeCloseTo(5, 9);
  });
});

describe('angledRail', () => {
  it('fits between its uprights: corners laid out by coordinates', () => {
    fc.assert(
      fc.property(
        num(300, 3000),
        num(0, 0.9),
        num(20, 120),
        fc.oneof(fc.constant(0), num(1, 30)),
        (R, steep, h, r) => {
          const V = R * steep;
          const x = angledRail({
            run: `${R} mm`,
            rise: `${V} mm`,
            section: { width: '35 mm', depth: `${h} mm` },
            recessDepth: `${r} mm`,
          });
          const a = x.angle.value;
          const u = [Math.cos(a), Math.sin(a)] as const;
          const p = x.seat.in('mm');
          const corners = [
            [-r, -r * Math.tan(a)],
            [-r, p - r * Math.tan(a)],
            [R + r, V + r * Math.tan(a)],
            [R + r, V + p + r * Math.tan(a)],
          ] as const;
          const alongs = corners.map(([cx, cy]) => cx * u[0] + cy * u[1]);
          const acrosses = corners.map(([cx, cy]) => -cx * u[1] + cy * u[0]);
          expect(Math.max(...alongs) - Math.min(...alongs)).toBeCloseTo(x.longPoint.in('mm'), 6);
          expect(Math.max(...acrosses) - Math.min(...acrosses)).toBeCloseTo(h, 6);
          const [lowFoot, lowTop, highFoot, highTop] = alongs as [number, number, number, number];
          expect(highFoot - lowTop).toBeCloseTo(x.shortPoint.in('mm'), 6);
          expect(highFoot - lowFoot).toBeCloseTo(x.edgeLength.in('mm'), 6);
          expect(highTop - lowTop).toBeCloseTo(x.edgeLength.in('mm'), 6);
          // The long point of the lower end is on the edge that reaches farther down the rail.
          if (a > 1e-6) expect(x.bevels[0]?.longPointOn).toBe(lowFoot < lowTop ? 'lower edge' : 'upper edge');
          if (r > 0) {
            const upper = (x.recess ?? [])
              .filter((q) => q.upright === 'upper')
              .map((q) => [q.into.in('mm'), q.up.in('mm')]);
            expect(upper[1]?.[1]).toBeCloseTo(V + r * Math.tan(a), 6);
            expect(upper[2]?.[1]).toBeCloseTo(V + p + r * Math.tan(a), 6);
          }
        },
      ),
    );
  });
  it('measured from middle to middle it is the same rail', () => {
    const faces = angledRail({ run: '1000 mm', rise: '500 mm', section: { width: '35 mm', depth: '60 mm' } });
    const middles = angledRail({
      run: '1070 mm',
      rise: '535 mm',
      section: { width: '35 mm', depth: '60 mm' },
      betweenFaces: false,
      uprightWidth: '70 mm',
    });
    expect(middles.longPoint.in('mm')).toBeCloseTo(faces.longPoint.in('mm'), 9);
  });
});

describe('biscuitSpacing', () => {
  it('spaces evenly from end to end, never farther than wanted and never one too many', () => {
    fc.assert(
      fc.property(num(300, 4000), num(40, 110), num(140, 400), (L, e, s) => {
        const r = biscuitSpacing({ length: `${L} mm`, endDistance: `${e} mm`, spacing: `${s} mm` });
        const at = r.positions.map((p) => p.in('mm'));
        expect(at[0]).toBeCloseTo(e, 6);
        expect(at[at.length - 1]).toBeCloseTo(L - e, 6);
        const gap = r.spacing?.in('mm') as number;
        for (let i = 1; i < at.length; i++)
          expect((at[i] as number) - (at[i - 1] as number)).toBeCloseTo(gap, 6);
        expect(gap).toBeLessThanOrEqual(s * (1 + 1e-9));
        if (at.length > 2) expect((L - 2 * e) / (at.length - 2)).toBeGreaterThan(s * (1 - 1e-6));
      }),
    );
  });
  it('its glued face is the area of the lens, by adding up thin strips', () => {
    const [l, w] = [56, 23];
    const r = (l * l + w * w) / (4 * w);
    let area = 0;
    const strips = 20000;
    for (let i = 0; i < strips; i++) {
      const x = -l / 2 + ((i + 0.5) * l) / strips;
      area += (2 * (Math.sqrt(r * r - x * x) - (r - w / 2)) * l) / strips;
    }
    const one = biscuitSpacing({ length: '120 mm', endDistance: '60 mm', size: '20' });
    expect(one.count).toBe(1);
    expect(one.glueArea.in('mm2') / (2 * area)).toBeCloseTo(1, 6);
  });
});

describe('screwHold', () => {
  it('agrees with the metric form 108.25 G² D L, N and mm, as the handbook prints it beside the inch one', () => {
    fc.assert(
      fc.property(num(0.3, 0.9), num(2, 7), num(30, 75), (G, d, l) => {
        const r = screwHold({
          specificGravity: G,
          diameter: `${d} mm`,
          penetration: `${l} mm`,
          breaking: true,
        });
        // The least of the thread in the wood and mild steel of 400 MPa at the root.
        const steel = (400 * Math.PI * r.root.in('mm') ** 2) / 4;
        expect(r.withdrawal!.in('N') / Math.min(108.25 * G * G * d * l, steel)).toBeCloseTo(1, 3);
        expect(r.allowable.value).toBeLessThanOrEqual(r.thread.value);
        expect(r.allowable.value).toBeLessThanOrEqual(r.steel.value);
      }),
    );
  });
  it('grows with the square of the gravity, and with count, diameter and length', () => {
    const at = (more: object) =>
      screwHold({ specificGravity: 0.4, diameter: '4 mm', penetration: '40 mm', ...more });
    const one = at({}).thread.value;
    expect(at({ specificGravity: 0.8 }).thread.value / one).toBeCloseTo(4, 9);
    expect(at({ count: 3 }).allowable.value / one).toBeCloseTo(3, 9);
    expect(at({ penetration: '60 mm' }).thread.value / one).toBeCloseTo(1.5, 9);
    // A longer thread, a thicker board and a stronger steel never allow less; a plateau is reached at the steel.
    const allowed = (more: object) => at({ boardThickness: '18 mm', ...more }).allowable.value;
    for (const more of [{ penetration: '80 mm' }, { boardThickness: '30 mm' }, { tensile: '700 MPa' }])
      expect(allowed(more)).toBeGreaterThanOrEqual(allowed({}));
    expect(allowed({ penetration: '200 mm', headDiameter: '20 mm' })).toBe(
      allowed({ penetration: '300 mm', headDiameter: '20 mm' }),
    );
  });
  it('allows nothing in end grain and says so as a danger', () => {
    const r = screwHold({ specificGravity: 0.5, diameter: '5 mm', penetration: '40 mm', grain: 'end' });
    expect(r.allowable.value).toBe(0);
    expect(r.cautions.some((c) => c.level === 'danger' && /end grain/.test(c.text))).toBe(true);
  });
  it('defers to codes and licensed practice', () => {
    expect(
      screwHold(screwHold.example).cautions.some(
        (c) => c.level === 'danger' && /local codes and licensed practice/.test(c.text),
      ),
    ).toBe(true);
  });
});
