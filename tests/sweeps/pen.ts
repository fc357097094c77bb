import type { Band, Drawing, Line, Mark } from '../../shared/documents/design.ts';
import { cos, radians, sin } from '../../shared/geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';

/** A pen that draws lines by lengths and turns, for set-ups of tests. Angles in degrees, to the right positive. */
export class Pen {
  readonly lines: Line[] = [];
  readonly marks: Mark[] = [];
  at: PaperPoint = { x: 0, y: 0 };
  heading = 0;
  readonly width: Mm;

  constructor(width: Mm = 5) {
    this.width = width;
  }

  /** Lifts the pen; the next stroke begins a new line. */
  to(x: Mm, y: Mm, heading = 0): this {
    this.at = { x, y };
    this.heading = heading;
    this.lines.push({ id: `line${this.lines.length}`, width: this.width, from: this.at, pieces: [] });
    return this;
  }

  straight(length: Mm): this {
    return this.stroke(this.ahead(length), 0);
  }

  turn(angle: number): this {
    this.heading += angle;
    return this;
  }

  /** An arc, cut into pieces of 120 degrees at most. */
  arc(radius: Mm, sweep: number): this {
    const parts = Math.max(1, Math.ceil(Math.abs(sweep) / 120));
    for (let part = 0; part < parts; part++) {
      const turn = sweep / parts;
      this.heading += turn / 2;
      const half = radians(Math.abs(turn) / 2);
      const quarter = radians(turn / 4);
      this.stroke(this.ahead(2 * radius * sin(half)), sin(quarter) / cos(quarter));
      this.heading += turn / 2;
    }
    return this;
  }

  /** A point ahead of the pen, or behind it. */
  ahead(length: Mm): PaperPoint {
    const angle = radians(this.heading);
    return { x: this.at.x + length * cos(angle), y: this.at.y + length * sin(angle) };
  }

  /** A mark on the present line; `at` is the way along it, `gap` the white between bands. */
  mark(at: Mm, word: string, lengths: readonly Mm[], gap: Mm = 0): this {
    const bands = [...word].map((ink, i): Band => ({ ink, length: lengths[i]!, gap: i === 0 ? 0 : gap }));
    this.marks.push({ id: `mark${this.marks.length}`, line: this.lines.at(-1)!.id, at, bands });
    return this;
  }

  drawing(): Drawing {
    return { lines: this.lines, marks: this.marks };
  }

  private stroke(to: PaperPoint, bulge: number): this {
    this.lines.at(-1)!.pieces.push({ to, bulge });
    this.at = to;
    return this;
  }
}
