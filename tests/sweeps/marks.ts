import type { Mm } from '../../shared/geometry/units.ts';
import type { Ambient } from '../../shared/run/world.ts';
import { Pen } from './pen.ts';
import { merged, type Pace, RUNS, SEED, type Shares, sharesOf, speedOf } from './shares.ts';
import { outcomes, passes, SET_UP, SWEEP_PACES } from './trial.ts';

const WORDS = ['CA', 'AVC', 'CCV', 'VAAC'];

interface MarkSetUp {
  /** Plain line before the mark. */
  readonly before: Mm;
  readonly feature: 'corner' | 'arc';
  readonly length: (index: number) => Mm;
  readonly gap: Mm;
  readonly width: Mm;
  readonly ambient: Ambient;
  readonly calibration: number;
}

const PLAIN_MARK: MarkSetUp = {
  before: 40,
  feature: 'corner',
  length: () => 5.5,
  gap: 0,
  width: 5,
  ambient: SET_UP.ambient,
  calibration: SET_UP.calibration,
};

/** `read`: exactly this word, once. `tracked`: got to the end whatever was read. */
export function marks(change: Partial<MarkSetUp>): { read: Shares; tracked: Shares } {
  const setUp = { ...PLAIN_MARK, ...change };
  const found = SWEEP_PACES.map((pace) => merged(WORDS.map((word) => markRuns(word, setUp, pace))));
  return { read: sharesOf(found, 'right'), tracked: sharesOf(found, 'right', 'missed', 'wrong') };
}

function markRuns(word: string, setUp: MarkSetUp, pace: Pace): Map<string, number> {
  const lengths = [...word].map((_, i) => setUp.length(i));
  const extent = lengths.reduce((sum, length) => sum + length, 0) + setUp.gap * (word.length - 1);
  const pen = new Pen(setUp.width).to(40, 40);
  const lead = setUp.feature === 'corner' ? 90 : 60 + (20 * Math.PI) / 2;
  if (setUp.feature === 'corner') pen.straight(90).turn(90);
  else pen.straight(60).arc(20, 90);
  pen.straight(setUp.before + extent + 60).mark(lead + setUp.before, word, lengths, setUp.gap);
  const place = pen.ahead(-14);
  return outcomes(
    {
      ...SET_UP,
      drawing: pen.drawing(),
      pace,
      ambient: setUp.ambient,
      calibration: setUp.calibration,
      start: { x: 60, y: 40, heading: 0 },
      seconds: 260 / speedOf(pace) + 8,
      outcome: (seen) => {
        if (!passes(seen.robot, place, 90)) return undefined;
        if (seen.words.length === 0) return 'missed';
        return seen.words.length === 1 && seen.words[0] === word ? 'right' : 'wrong';
      },
    },
    RUNS / WORDS.length,
    SEED,
  );
}
