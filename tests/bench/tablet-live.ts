import type { Design } from '../../shared/documents/design.ts';
import { liveJudge } from '../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { type Figure, median, percentile, timesOf } from './figure.ts';
import { fullSheet, sheetOfPieces } from './tablet-drawings.ts';

/** Who has drawn forty lines and twenty marks has had them checked sixty times. */
const WARM_UP = 60;
const ROUNDS = 200;

/** The same drawing with a street's end moved by half a millimetre, back and forth. */
function touched(design: Design, turn: number): Design {
  const { lines, marks } = design.drawing;
  const last = lines.at(-1)!;
  const end = last.pieces.at(-1)!;
  const to = { x: end.to.x + (turn % 2 === 0 ? 0.5 : 0), y: end.to.y };
  const changed = { ...last, pieces: [...last.pieces.slice(0, -1), { ...end, to }] };
  return { ...design, drawing: { lines: [...lines.slice(0, -1), changed], marks } };
}

/** Processor time of a live check after a change, in this process: ms. */
export function liveFigures(): Figure[] {
  const found = readyChallenges(DEMO_KIT).find(({ key }) => key === 'one-fast-stretch');
  if (!found?.playable) throw new Error('the challenge is not playable');
  const { challenge } = found;
  const times = (design: Design): number[] => {
    const check = liveJudge();
    check(challenge, design);
    const all = Array.from({ length: WARM_UP + ROUNDS }, (_, turn) =>
      timesOf(1, () => check(challenge, touched(design, turn))),
    );
    return all.flat().slice(WARM_UP);
  };
  const full = times(fullSheet());
  const curve = [10, 40, 160, 500].map((pieces): Figure => {
    const value = median(times(sheetOfPieces(pieces)));
    return { name: `live-change-of-${pieces}-pieces`, value, unit: 'ms' };
  });
  return [
    { name: 'live-change-full-median', value: median(full), unit: 'ms' },
    {
      name: 'live-change-full-p95',
      value: percentile(full, 0.95),
      unit: 'ms',
      target: { at: 'most', value: 8 },
    },
    ...curve,
  ];
}
