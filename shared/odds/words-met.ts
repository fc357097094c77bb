import type { Kit } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';
import { MODEL } from '../run/model.ts';
import type { EdgeMark } from '../track/track.ts';

/** A band as it is met, with ways from the mark's beginning. */
interface Met {
  readonly ink: string;
  readonly from: Mm;
  readonly to: Mm;
}

/** Inks multiply where bands overlap: so much of it, and the run of the next band is spoilt. Fitted. */
const MOST_OVERLAP: Mm = 1.7;

/**
 * The word that the band reader makes of a mark met from one side, by its own rules for the lengths of
 * runs, or undefined where it takes it for no mark.
 */
export function wordMet({ mark, along }: EdgeMark, kit: Kit): string | undefined {
  const bands = mark.bands.map(
    ({ ink, from, to }): Met =>
      along
        ? { ink, from: from - mark.from, to: to - mark.from }
        : { ink, from: mark.to - to, to: mark.to - from },
  );
  if (!along) bands.reverse();
  const lengths = runLengths(bands);
  if (!lengths) return undefined;
  let word = '';
  for (const { ink, length } of lengths) {
    const count = bandsIn(length, kit);
    if (count === undefined || word.length + count > kit.rules.bands.most) return undefined;
    word += ink.repeat(count);
  }
  return word.length < 2 ? undefined : word;
}

interface Run {
  readonly ink: string;
  readonly length: Mm;
}

/** Runs of one ink, each until the next ink stands alone; undefined where white or a dark overlap breaks them. */
function runLengths(bands: readonly Met[]): Run[] | undefined {
  const runs: Run[] = [];
  let from = 0;
  for (let i = 0; i < bands.length; i++) {
    const band = bands[i]!;
    const next = bands[i + 1];
    const gap = next ? next.from - band.to : 0;
    if (gap >= MODEL.debounce || gap < -MOST_OVERLAP) return undefined;
    if (next?.ink === band.ink) continue;
    const to = next ? Math.max(next.from, band.to) : band.to;
    runs.push({ ink: band.ink, length: to - from });
    from = to;
  }
  return runs;
}

/** How many bands fit a run, as the band reader counts. */
function bandsIn(length: Mm, kit: Kit): number | undefined {
  const { bandUnit } = kit.robot;
  const fitting = Math.floor(length / bandUnit + 0.5);
  const count = fitting < 1 && length >= MODEL.shortestBand ? 1 : fitting;
  if (count < 1) return undefined;
  const tooLong = !kit.equalNeighbours && (count > 1 || length > MODEL.longestRun * bandUnit);
  return tooLong ? undefined : count;
}
