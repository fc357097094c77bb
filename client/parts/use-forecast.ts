import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Design, EMPTY_DESIGN } from '../../shared/documents/design.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import { type Stop, stopsOf } from '../../shared/evidence/stops.ts';
import type { Millis, Seconds } from '../../shared/geometry/units.ts';
import { durationOf } from '../../shared/picture/replay.ts';
import type { Forecast } from '../../shared/room/board.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { canonicalDrawing } from '../../shared/track/canonical.ts';
import { layOut } from '../../shared/track/layout.ts';
import { currentRound, entryOf } from './figures.ts';
import { useJudged } from './judging.ts';
import { hereOf, useDocument } from './use-document.ts';
import { useLink } from './use-link.tsx';
import { onSheetOfHung } from './variants.ts';

/** A drive that is foretold, worked out on this page: the engine is the server's. */
export type ForecastHere =
  | { readonly kind: 'none' }
  | { readonly kind: 'loading' }
  /** The robot never starts. */
  | { readonly kind: 'no-drive' }
  | {
      readonly kind: 'here';
      readonly challenge: Challenge;
      readonly design: Design;
      readonly trace: Trace;
      readonly stops: readonly Stop[];
    };

/** What is driven where no entry is: all is given, or the drawing that teams begin with. */
const givenBy = ({ play, begin }: Challenge): Design =>
  play === 'predict' ? EMPTY_DESIGN : (begin ?? EMPTY_DESIGN);

/** Whether a challenge gives something to drive over with marks to foretell. */
export const givesMarks = (challenge: Challenge): boolean =>
  challenge.sheet.given.marks.length + givenBy(challenge).drawing.marks.length > 0;

export function useForecast(room: RoomState): ForecastHere {
  const { forecast } = room.board;
  const wanted = forecast !== null;
  const entry = forecast?.hung ? entryOf(room, forecast.hung.entry) : undefined;
  const round = entry?.round ?? currentRound(room);
  const chosen = hereOf(useDocument('challenge', forecast ? (room.rounds[round]?.challenge ?? null) : null));
  const drawn = hereOf(useDocument('design', forecast?.hung?.design ?? null));
  const hung = forecast?.hung;
  const challenge = chosen && entry && hung ? onSheetOfHung(hung, entry, chosen) : chosen;
  const design = forecast?.hung ? drawn : challenge && givenBy(challenge);
  const judged = useJudged(challenge, design);
  return useMemo((): ForecastHere => {
    if (!wanted) return { kind: 'none' };
    if (!challenge || !design || !judged) return { kind: 'loading' };
    const trace = judged.traces[0];
    if (!trace) return { kind: 'no-drive' };
    const { sheet, kit } = challenge;
    const layout = layOut(sheet, canonicalDrawing(design.drawing, sheet.given));
    return { kind: 'here', challenge, design, trace, stops: stopsOf(trace, layout, kit) };
  }, [wanted, challenge, design, judged]);
}

/** Between which two moments of the run the robot may drive now, s. */
export function stretchOf(passed: number, stops: readonly Stop[], duration: Seconds): [Seconds, Seconds] {
  return [passed === 0 ? 0 : (stops[passed - 1]?.at ?? duration), stops[passed]?.at ?? duration];
}

/** How many of all hands were for the right answers. */
export function handsRight(
  stops: readonly Stop[],
  hands: Forecast['hands'],
): { readonly right: number; readonly of: number } {
  const counts = stops.flatMap(({ answers }, stop) =>
    answers.map((answer, i) => ({ right: answer.right, n: hands[stop]?.[i] ?? 0 })),
  );
  const sum = (some: typeof counts) => some.reduce((all, { n }) => all + n, 0);
  return { right: sum(counts.filter((each) => each.right)), of: sum(counts) };
}

/** Run time at a moment of server time: on to the next mark, and there it waits. */
export function forecastTime(
  { passed, since }: Pick<Forecast, 'passed' | 'since'>,
  stops: readonly Stop[],
  duration: Seconds,
  now: Millis,
): Seconds {
  const [from, to] = stretchOf(passed, stops, duration);
  return Math.min(to, from + Math.max(0, now - since) / 1000);
}

const NOT_BEGUN = { passed: 0, since: 0 };

/** The run time to show now. */
export function useForecastTime(forecast: Forecast | null, here: ForecastHere): () => Seconds {
  const link = useLink();
  const { passed, since } = forecast ?? NOT_BEGUN;
  return useCallback(
    () =>
      here.kind === 'here'
        ? forecastTime({ passed, since }, here.stops, durationOf(here.trace), link.serverNow())
        : 0,
    [here, passed, since, link],
  );
}

/** How a question stands: the robot waits before the mark, drives over it, or has read it. */
export interface Asked {
  /** Its number from 0; null before the first one. */
  readonly stop: number | null;
  readonly stand: 'waits' | 'drives' | 'told';
  /** The run is over. */
  readonly over: boolean;
}

/** Where the next mark is near, what the last one said is looked at for so long all the same. */
const LOOKED_AT: Seconds = 4;

/** `gone`: seconds since the class let it drive on. */
export function askedAt(gone: Seconds, passed: number, stops: readonly Stop[], duration: Seconds): Asked {
  const [from, to] = stretchOf(passed, stops, duration);
  const t = Math.min(to, from + gone);
  const last = stops[Math.min(passed, stops.length) - 1];
  const looked = last ? last.readAt - from + LOOKED_AT : 0;
  if (stops[passed] && t >= to && gone >= looked) return { stop: passed, stand: 'waits', over: false };
  const over = !stops[passed] && t >= duration;
  if (!last) return { stop: null, stand: 'drives', over };
  return { stop: Math.min(passed, stops.length) - 1, stand: t >= last.readAt ? 'told' : 'drives', over };
}

const same = (a: Asked, b: Asked): boolean => a.stop === b.stop && a.stand === b.stand && a.over === b.over;

/** The question that is before the class, renewed when it changes. */
export function useAsked(forecast: Forecast | null, here: ForecastHere): Asked {
  const link = useLink();
  const { passed, since } = forecast ?? NOT_BEGUN;
  const now = useCallback(
    (): Asked =>
      here.kind === 'here'
        ? askedAt(Math.max(0, link.serverNow() - since) / 1000, passed, here.stops, durationOf(here.trace))
        : { stop: null, stand: 'drives', over: false },
    [here, passed, since, link],
  );
  const [asked, setAsked] = useState(now);
  useEffect(() => {
    const look = () => setAsked((before) => (same(before, now()) ? before : now()));
    look();
    const timer = setInterval(look, 150);
    return () => clearInterval(timer);
  }, [now]);
  return asked;
}
