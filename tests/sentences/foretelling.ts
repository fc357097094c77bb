import { CAUSES, WEATHERS } from '../../shared/documents/outlook.ts';
import { GUESSES, MISTAKEN_REASONS, REASONS } from '../../shared/documents/reason.ts';
import type { RunEvent } from '../../shared/documents/trace.ts';
import { WALL_WISHES } from '../../shared/room/state.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

/** What a tablet asks before a run and after it, the log of a run, and what a team agrees on. */
export function ofForetelling({ foretelling, reasons, replay, together, toPaper, tracing }: Wording): void {
  each(GUESSES, (guess) => [
    foretelling.guess(guess),
    foretelling.differs(guess, true),
    foretelling.differs(guess, false),
  ]);
  each(REASONS, reasons.said);
  each(MISTAKEN_REASONS, reasons.but);
  each([foretelling.wrong, foretelling.truth, foretelling.barSees], (say) => say('…'));
  each(WEATHERS, (weather) => [
    foretelling.robots(18, 20, weather, 'make-it'),
    foretelling.robots(1, 1, weather, 'the-same'),
    foretelling.robots(18, 20, weather, 'one-of-its-ways'),
    foretelling.drivenIn(weather),
  ]);
  each(CAUSES, (cause) => [foretelling.frays(1, 20, cause), foretelling.frays(3, 20, cause)]);
  foretelling.noFray(20);
  foretelling.chance(0.35);
  foretelling.chooseWay('…', '7');
  each(['fewer-marks', 'other-end', 'storm'] as const, foretelling.nextAsk);
  each([true, false], (yes) => [foretelling.youSaid(yes), foretelling.otherEnd(yes)]);
  each([1, 18], (same) => foretelling.storm(same, 20));
  each(['pen', 'chart', 'lookout'] as const, together.role);
  each([0, 1, 2], together.seat);
  each(WALL_WISHES, together.wish);
  const [from, to] = [
    { x: 12.5, y: 30 },
    { x: 100, y: 45.5 },
  ];
  each(['begin', 'straight', 'bow', 'mark'] as const, (kind) =>
    toPaper.step({ kind, at: from, from, over: from, to }),
  );
  each([1, 6], (count) => tracing.part({ number: 1, count, column: 1, row: 1 }));
  tracing.card.pixels(428.5);
  for (const event of EVENTS) replay.log({ t: 1, x: 1, y: 1, way: 1, pace: 'fast', ...event } as RunEvent);
}

const EVENTS = [
  { kind: 'read', word: 'CA', along: true, already: false, action: { kind: 'park' } },
  { kind: 'read', word: 'CA', along: true, already: true },
  { kind: 'read', word: 'CA', along: true, already: false },
  { kind: 'junction', took: 'left', by: 'chance', arms: [] },
  { kind: 'corner', took: 'right' },
  { kind: 'turn-back' },
  { kind: 'wait', until: 3 },
  { kind: 'signal', until: 3 },
  { kind: 'loose-end' },
  { kind: 'finish' },
  { kind: 'off-paper' },
  { kind: 'end', ending: 'lost' },
] as const;
