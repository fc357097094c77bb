import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design, Line } from '../../../shared/documents/design.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { rolled, type Sfc32 } from '../../../shared/run/random.ts';

/** What one simulated team will draw: first this, and after trying it, that. */
export interface Attempts {
  /** The last one is sound; the ones before it have a fault that children make. */
  readonly designs: readonly Design[];
}

const SHIFT_MM = 5;
const MOST_SHIFTS = 3;
const TRIES = 30;

const isMet = (challenge: Challenge, design: Design) => judge(challenge, design, 'live').verdict.met;

const withDrawing = (design: Design, drawing: Partial<Design['drawing']>): Design => ({
  ...design,
  drawing: { ...design.drawing, ...drawing },
});

/** Moves the inner points of every line by whole steps, so that no two teams draw the same track. */
function shifted(design: Design, dice: Sfc32): Design {
  const step = () => (rolled(dice, 2 * MOST_SHIFTS + 1) - MOST_SHIFTS) * SHIFT_MM;
  const lines = design.drawing.lines.map((line): Line => {
    const dx = step();
    const dy = step();
    const last = line.pieces.length - 1;
    const pieces = line.pieces.map((piece, i) =>
      i === 0 || i >= last - 1 ? piece : { ...piece, to: { x: piece.to.x + dx, y: piece.to.y + dy } },
    );
    return { ...line, pieces };
  });
  return withDrawing(design, { lines });
}

/** A sound design that differs from the maker's own, or the maker's own where none is found. */
function soundDesign(challenge: Challenge, model: Design, dice: Sfc32): Design {
  for (let i = 0; i < TRIES; i++) {
    const design = shifted(model, dice);
    if (isMet(challenge, design)) return design;
  }
  return model;
}

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

/** Plans a team's lesson: about two teams of three begin with a fault. */
export function attemptsFor(challenge: Challenge, model: Design, dice: Sfc32): Attempts {
  const sound = soundDesign(challenge, model, dice);
  const faulty = rolled(dice, 3) === 0 ? undefined : spoilt(challenge, sound, dice);
  return { designs: faulty ? [faulty, sound] : [sound] };
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
