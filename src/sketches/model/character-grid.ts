/** Ways that a line leaves a cell. */
const up = 1;
const right = 2;
const down = 4;
const left = 8;

const joints = ' ╵╶└╷│┌├╴┘─┴┐┤┬┼';
/** A line that ends in a cell is drawn through it. */
const ends: Readonly<Record<string, string>> = { '╵': '│', '╷': '│', '╶': '─', '╴': '─' };
const dashedSigns: Readonly<Record<string, string>> = { '│': '┊', '─': '╌' };

/** A sheet of character cells on which lines are drawn; places are given in cells, fractions included. */
export class CharacterGrid {
  readonly #ways: number[];
  readonly #signs: (string | undefined)[];
  readonly #dashed: boolean[];

  constructor(
    readonly width: number,
    readonly height: number,
  ) {
    this.#ways = Array<number>(width * height).fill(0);
    this.#signs = Array<string | undefined>(width * height).fill(undefined);
    this.#dashed = Array<boolean>(width * height).fill(false);
  }

  /** Puts one sign over what is drawn in the cell. */
  put(x: number, y: number, sign: string): void {
    const cell = this.#cell(Math.floor(x), Math.floor(y));
    if (cell === undefined) return;
    this.#signs[cell] = sign;
    this.#ways[cell] = 0;
  }

  write(x: number, y: number, text: string): void {
    Array.from(text).forEach((sign, i) => this.put(Math.round(x) + i, y, sign));
  }

  /** Draws lines from each place to the next: upright and level ones join at corners, others are strokes. */
  stroke(points: readonly (readonly [number, number])[], isDashed: boolean): void {
    points.slice(1).forEach((to, i) => {
      const [ax, ay] = points[i] as readonly [number, number];
      const cells = Math.abs(Math.floor(to[0]) - Math.floor(ax));
      const lines = Math.abs(Math.floor(to[1]) - Math.floor(ay));
      if (lines === 0) this.#level(Math.floor(ax), Math.floor(to[0]), Math.floor(ay), isDashed);
      else if (cells === 0) this.#upright(Math.floor(ay), Math.floor(to[1]), Math.floor(ax), isDashed);
      else this.#slanting([ax, ay], to, isDashed);
    });
  }

  rows(): string[] {
    const rows = Array.from({ length: this.height }, (_, y) =>
      Array.from({ length: this.width }, (__, x) => this.#sign(y * this.width + x))
        .join('')
        .trimEnd(),
    );
    while (rows.at(-1) === '') rows.pop();
    while (rows[0] === '') rows.shift();
    return rows;
  }

  #sign(cell: number): string {
    const ways = this.#ways[cell] ?? 0;
    const joint = joints[ways] ?? ' ';
    if (ways === 0) return this.#signs[cell] ?? ' ';
    const sign = ends[joint] ?? joint;
    return this.#dashed[cell] ? (dashedSigns[sign] ?? sign) : sign;
  }

  #cell(x: number, y: number): number | undefined {
    // The lower and right edges of the sheet belong to its last cells.
    const column = x === this.width ? x - 1 : x;
    const row = y === this.height ? y - 1 : y;
    if (column < 0 || row < 0 || column >= this.width || row >= this.height) return undefined;
    return row * this.width + column;
  }

  #leave(x: number, y: number, way: number, isDashed: boolean): void {
    const cell = this.#cell(x, y);
    if (cell === undefined || this.#signs[cell] !== undefined) return;
    this.#dashed[cell] = isDashed && (this.#ways[cell] === 0 || this.#dashed[cell] === true);
    this.#ways[cell] = (this.#ways[cell] ?? 0) | way;
  }

  #level(from: number, to: number, y: number, isDashed: boolean): void {
    const last = Math.max(from, to);
    for (let x = Math.min(from, to); x < last; x++) {
      this.#leave(x, y, right, isDashed);
      this.#leave(x + 1, y, left, isDashed);
    }
  }

  #upright(from: number, to: number, x: number, isDashed: boolean): void {
    const last = Math.max(from, to);
    for (let y = Math.min(from, to); y < last; y++) {
      this.#leave(x, y, down, isDashed);
      this.#leave(x, y + 1, up, isDashed);
    }
  }

  #slanting(
    [ax, ay]: readonly [number, number],
    [bx, by]: readonly [number, number],
    isDashed: boolean,
  ): void {
    const cells = Math.abs(bx - ax);
    const lines = Math.abs(by - ay);
    // Gently sloping lines are level pieces, a step down at a time; steep ones one stroke a line.
    const isGentle = lines < 0.3 * cells;
    const isSteep = cells < 0.35 * lines;
    const steps = Math.ceil(isGentle ? cells : lines);
    const sign = isGentle ? '─' : isSteep ? '│' : bx - ax > 0 === by - ay > 0 ? '╲' : '╱';
    for (let i = 0; i < steps; i++) {
      if (isDashed && i % 2 === 1) continue;
      const t = (i + 0.5) / steps;
      const cell = this.#cell(Math.floor(ax + (bx - ax) * t), Math.floor(ay + (by - ay) * t));
      if (cell !== undefined && this.#ways[cell] === 0) this.#signs[cell] ??= sign;
    }
  }
}
