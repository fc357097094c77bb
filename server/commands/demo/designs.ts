import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { rolled, type Sfc32 } from '../../../shared/run/random.ts';

/** What one simulated team will draw: first this, and after trying it, that. */
export interface Attempts {
  /** The last one is sound, unless the team is stuck; the ones before it have a fault that children make. */
  readonly designs: readonly Design[];
}

export const isMet = (challenge: Challenge, design: Design) => judge(challenge, design, 'live').verdict.met;

const withDrawing = (design: Design, drawing: Partial<Design['drawing']>): Design => ({
  ...design,
  drawing: { ...design.drawing, ...drawing },
});

type Fault = (design: Design, dice: Sfc32) => Design;

/** Faults that children make: one mark left out, turned the wrong way, or too close to what is before it. */
const FAULTS: readonly Fault[] = [
  (design, dice) => {
    const lost = rolled(dice, Math.max(1, design.drawing.marks.length));
    return withDrawing(design, { marks: design.drawing.marks.filter((_, i) => i !== lost) });
  },
  (design, dice) => {
    const turned = rolled(dice, Math.max(1, design.drawing.marks.length));
    return withDrawing(design, {
      marks: design.drawing.marks.map((mark, i) =>
        i === turned ? { ...mark, bands: [...mark.bands].reverse() } : mark,
      ),
    });
  },
  (design) =>
    withDrawing(design, {
      marks: design.drawing.marks.map((mark, i) => (i === 0 ? { ...mark, at: Math.min(mark.at, 8) } : mark)),
    }),
  (design) =>
    withDrawing(design, {
      lines: design.drawing.lines.map((line) => ({
        ...line,
        pieces: line.pieces.slice(0, Math.max(1, line.pieces.length - 1)),
      })),
      marks: design.drawing.marks.slice(0, 1),
    }),
];

/** The first fault, from a random one on, that really spoils the design; undefined where none does. */
function spoilt(challenge: Challenge, sound: Design, dice: Sfc32): Design | undefined {
  const first = rolled(dice, FAULTS.length);
  return FAULTS.map((_, i) => FAULTS[(first + i) % FAULTS.length]!(sound, dice)).find(
    (design) => !isMet(challenge, design),
  );
}

/** How often a team that is stuck tries the same fault, so that the desk has somebody to help. */
const STUCK_TRIES = 4;

/** Plans a team's lesson: two teams of three begin with a fault; a stuck one never finds it. */
export function attemptsFor(challenge: Challenge, sound: Design, dice: Sfc32, stuck: boolean): Attempts {
  const faulty = stuck || rolled(dice, 3) > 0 ? spoilt(challenge, sound, dice) : undefined;
  if (!faulty) return { designs: [sound] };
  return { designs: stuck ? Array.from({ length: STUCK_TRIES }, () => faulty) : [faulty, sound] };
}

/** The design as it grows under the pen: piece by piece, then mark by mark. */
export function strokesOf(design: Design): Design[] {
  const { lines, marks } = design.drawing;
  const grown: Design[] = [];
  lines.forEach((line, i) => {
    for (let n = 1; n <= line.pieces.length; n++) {
      const growing = { ...line, pieces: line.pieces.slice(0, n) };
      grown.push(withDrawing(design, { lines: [...lines.slice(0, i), growing], marks: [] }));
    }
  });
  marks.forEach((_, i) => {
    grown.push(withDrawing(design, { marks: marks.slice(0, i + 1) }));
  });
  return grown;
}
