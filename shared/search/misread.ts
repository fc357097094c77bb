import type { Challenge } from '../documents/challenge.ts';
import type { Design } from '../documents/design.ts';
import { type Ink, type Kit, reversed } from '../documents/kit.ts';
import { MISREADINGS, type Misread, type Misreading } from '../documents/misread.ts';
import { judge } from '../judge/judge.ts';
import { colourDifference, srgbOf } from '../kit/colour.ts';
import { isAboutMarks } from './marks-problem.ts';
import { parOf } from './par.ts';

/** Drawings driven on the rails for each: a mistaken chart is no harder to search than the right one. */
const EFFORT = 40_000;

/**
 * For each misreading the best drawing of somebody who reads marks like that, driven as it really is. Where
 * lines are given it is searched for with a kit that does what is believed; elsewhere it is the maker's own
 * drawing with the marks that are believed to say the same, which nobody can tell of a mark that acts at once.
 */
export function* misreadOf(challenge: Challenge, model: Design): Generator<Misread> {
  for (const misreading of MISREADINGS) {
    const inks = misreading === 'ink-mistaken' ? closestInks(challenge.kit) : undefined;
    if (misreading === 'ink-mistaken' && !inks) continue;
    const design = isAboutMarks(challenge)
      ? searched(challenge, believed(challenge.kit, misreading, inks))
      : rewritten(model, misreading, inks);
    if (design === undefined) continue;
    const met = design !== null && judge(challenge, design, 'live').verdict.met;
    yield { misreading, ...(inks ? { inks } : {}), design, met };
  }
}

function searched(challenge: Challenge, kit: Kit): Design | null {
  const { model: _, ...open } = challenge;
  const par = parOf({ ...open, kit }, { most: EFFORT });
  return par.kind === 'par' ? par.design : null;
}

type Inks = readonly [string, string] | undefined;

/** The two inks that look most alike; undefined where there is one alone. */
function closestInks({ inks }: Kit): Inks {
  const pairs = inks.flatMap((one, i) => inks.slice(i + 1).map((two) => [one, two] as const));
  const apart = ([one, two]: readonly [Ink, Ink]) => colourDifference(srgbOf(one.color), srgbOf(two.color));
  const [closest] = pairs.sort((a, b) => apart(a) - apart(b));
  return closest && [closest[0].id, closest[1].id];
}

/** The word that is taken for this one. */
function takenFor(word: string, misreading: Misreading, inks: Inks): string {
  if (misreading === 'sides-swapped') return reversed(word);
  if (misreading === 'acts-at-once' || !inks) return word;
  const [one, two] = inks;
  return [...word].map((ink) => (ink === one ? two : ink === two ? one : ink)).join('');
}

/** The kit as somebody believes it to be. */
function believed(kit: Kit, misreading: Misreading, inks: Inks): Kit {
  if (misreading === 'acts-at-once') return { ...kit, robot: { ...kit.robot, actsAfter: 0 } };
  const chart = kit.chart.map((row) => ({ ...row, word: takenFor(row.word, misreading, inks) }));
  return { ...kit, chart };
}

function rewritten(model: Design, misreading: Misreading, inks: Inks): Design | undefined {
  if (misreading === 'acts-at-once' || model.drawing.marks.length === 0) return undefined;
  const marks = model.drawing.marks.map((mark) => {
    const word = mark.bands.map(({ ink }) => ink).join('');
    const taken = takenFor(word, misreading, inks);
    return { ...mark, bands: mark.bands.map((band, i) => ({ ...band, ink: taken[i]! })) };
  });
  return { ...model, drawing: { ...model.drawing, marks } };
}
