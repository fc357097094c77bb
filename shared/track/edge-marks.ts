import { reversed } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidMark, Layout } from './layout.ts';
import type { Cover, Spot } from './meetings.ts';
import type { EdgeMark } from './track.ts';

/** A mark by the ways of the line whose edges carry it. */
export interface Standing {
  readonly mark: LaidMark;
  readonly line: number;
  readonly from: Mm;
  readonly to: Mm;
  /** Whether it reads in the direction of that line. */
  readonly along: boolean;
}

/** Where each mark stands; one on a line that lies on another line stands on the one beneath. */
export function standings(layout: Layout, covers: readonly Cover[]): Standing[] {
  const lines = new Map(layout.lines.map((line, i) => [line.id, i]));
  return layout.marks.map((mark) => {
    const standing = { mark, line: lines.get(mark.line)!, from: mark.from, to: mark.to, along: true };
    return moved(standing, covers);
  });
}

function moved(standing: Standing, covers: readonly Cover[]): Standing {
  const middle = (standing.from + standing.to) / 2;
  const cover = covers.find((c) => c.line === standing.line && c.low <= middle && middle <= c.high);
  // A line over itself may point back at the same stretch.
  if (!cover || cover.on.line >= standing.line) return standing;
  const from = under(cover, standing.from);
  const to = under(cover, standing.to);
  return {
    mark: standing.mark,
    line: cover.on.line,
    from: Math.min(from.way, to.way),
    to: Math.max(from.way, to.way),
    along: cover.same === standing.along,
  };
}

const under = (cover: Cover, way: Mm): Spot => ({
  line: cover.on.line,
  way: cover.on.way + (cover.same ? way - cover.low : cover.low - way),
});

interface Stretch {
  readonly line: number;
  readonly low: Mm;
  readonly high: Mm;
}

/** The marks whose middles lie on a stretch, as they are met along the line or against it. */
export function marksOn(stretch: Stretch, all: readonly Standing[], along: boolean): EdgeMark[] {
  const { line, low, high } = stretch;
  const here = all.filter((s) => {
    const middle = (s.from + s.to) / 2;
    return s.line === line && middle >= low && middle < high;
  });
  return here
    .map((s) => ({
      mark: s.mark,
      from: along ? s.from - low : high - s.to,
      to: along ? s.to - low : high - s.from,
      along: along === s.along,
      word: along === s.along ? s.mark.word : reversed(s.mark.word),
    }))
    .sort((a, b) => a.from - b.from || (a.mark.id < b.mark.id ? -1 : 1));
}
