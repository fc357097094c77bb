import { useEffect, useRef } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import type { KeyMap } from './keys.ts';

/** With no second digit for so long, a first one stands for itself, ms. */
const SECOND_DIGIT_MS = 800;

/** What a digit typed among so many teams means: a team's number at once, or the first of two digits. */
export type Typed = { readonly team: number | null } | { readonly waits: string };

/** A first digit waits where another team's number begins with it: "1" from ten teams on, "2" from 20 on. */
export function typedDigit(before: string, digit: string, teams: number): Typed {
  const both = Number(before + digit);
  if (before !== '' && both <= teams) return { team: both };
  const alone = Number(digit);
  if (alone === 0 || alone > teams) return { team: null };
  return alone * 10 <= teams ? { waits: digit } : { team: alone };
}

/** The highest number that a key may mean: teams go by their berths, and a berth may be empty. */
export const lastBerth = (room: RoomState): number => room.teams.at(-1)?.berth ?? 0;

type Pick = (team: number) => void;

/** The number keys for so many teams, counted from 1: plain ones pick, with Shift they put beside. */
export function useTeamNumbers(teams: number, plain: Pick, shifted?: Pick): KeyMap {
  const waiting = useRef<{ digits: string; timer: ReturnType<typeof setTimeout> } | null>(null);
  const picks = useRef({ plain, shifted });
  picks.current = { plain, shifted };
  useEffect(() => () => clearTimeout(waiting.current?.timer), []);
  const type = (digit: string, withShift: boolean) => {
    const pick = (team: number) => picks.current[withShift ? 'shifted' : 'plain']?.(team);
    const before = waiting.current?.digits ?? '';
    clearTimeout(waiting.current?.timer);
    waiting.current = null;
    const typed = typedDigit(before, digit, teams);
    if ('team' in typed) {
      if (typed.team !== null) pick(typed.team);
      return;
    }
    const done = () => {
      waiting.current = null;
      pick(Number(typed.waits));
    };
    waiting.current = { digits: typed.waits, timer: setTimeout(done, SECOND_DIGIT_MS) };
  };
  const keys = Array.from({ length: 10 }, (_, i) => String(i)).flatMap((digit) => [
    [digit, () => type(digit, false)] as const,
    ...(shifted ? [[`Shift+${digit}`, () => type(digit, true)] as const] : []),
  ]);
  return Object.fromEntries(keys);
}
