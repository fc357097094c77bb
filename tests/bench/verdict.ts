import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import { judge, liveJudge } from '../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { type Figure, median, percentile, timesOf } from './figure.ts';

const WARM_UP = 3;
const ROUNDS = 12;

export interface Case {
  readonly challenge: Challenge;
  readonly design: Design;
}

/** The designs of all ready challenges: models, and the drawings that some begin with. */
export const readyCases = (): Case[] =>
  readyChallenges(DEMO_KIT).flatMap((one) => {
    if (!one.playable) return [];
    const { challenge } = one;
    const designs = [challenge.model, challenge.begin].filter((design) => design !== undefined);
    return designs.map((design) => ({ challenge, design }));
  });

/** A drawing whose last vertex, or where lines are given whose last mark, was moved by half a millimetre. */
function touched(design: Design): Design {
  const { lines, marks } = design.drawing;
  const line = lines.at(-1);
  const end = line?.pieces.at(-1);
  if (!line || !end) {
    const slid = marks.map((mark, i) => (i === marks.length - 1 ? { ...mark, at: mark.at + 0.5 } : mark));
    return { ...design, drawing: { lines, marks: slid } };
  }
  const moved = { ...end, to: { x: end.to.x + 0.5, y: end.to.y } };
  const changed = { ...line, pieces: [...line.pieces.slice(0, -1), moved] };
  return { ...design, drawing: { lines: [...lines.slice(0, -1), changed], marks } };
}

/** ms of whole verdicts, from drawing to points, over the designs of all ready challenges. */
export function verdictFigures(): Figure[] {
  const cases = readyCases();
  const times = { entry: [] as number[], live: [] as number[], change: [] as number[] };
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    for (const { challenge, design } of cases) {
      const entry = timesOf(1, () => judge(challenge, design, 'entry'));
      const live = timesOf(1, () => judge(challenge, design, 'live'));
      const check = liveJudge();
      check(challenge, design);
      const changed = touched(design);
      const change = timesOf(1, () => check(challenge, changed));
      if (round < 0) continue;
      times.entry.push(...entry);
      times.live.push(...live);
      times.change.push(...change);
    }
  }
  return [
    { name: 'verdict-median', value: median(times.entry), unit: 'ms', target: { at: 'most', value: 40 } },
    {
      name: 'verdict-p99',
      value: percentile(times.entry, 0.99),
      unit: 'ms',
      target: { at: 'most', value: 200 },
    },
    { name: 'live-median', value: median(times.live), unit: 'ms', target: { at: 'most', value: 8 } },
    { name: 'live-p95', value: percentile(times.live, 0.95), unit: 'ms' },
    { name: 'live-change-median', value: median(times.change), unit: 'ms', target: { at: 'most', value: 4 } },
  ];
}
