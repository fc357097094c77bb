import { useEffect } from 'react';
import { type RoomState, timeIn } from '../../shared/room/state.ts';
import type { Step } from '../../shared/wording/en/desk.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import type { Link } from '../link/connect.ts';
import { turnsOf } from '../parts/driving.ts';
import { bestEntry } from '../parts/figures.ts';
import { RESTING } from '../parts/stage-clock.ts';
import { type Asking, useAsk } from '../parts/use-ask.ts';
import { useLink } from '../parts/use-link.tsx';
import { loadOwn } from './builder/own-challenges.ts';
import { useDesk } from './desk-store.ts';
import { useQueued, useTitles } from './queue.tsx';
import { type NextStep, nextStep } from './steps.ts';
import { useWholeWords } from './whole-words.ts';

/** Whoever takes back the end of the building has at least so long, s. */
const LEAST_LEFT_S = 60;

export interface Next extends Asking {
  readonly label: string;
  readonly possible: boolean;
  readonly go: () => void;
}

/** The next sensible action as a button would show it. */
export function useNext(room: RoomState, step: Step): Next {
  const words = useWholeWords();
  const { marked, minutes, lookAt, mark, offerUndo } = useDesk();
  const link = useLink();
  const asking = useAsk();
  const { ask } = asking;
  const titleOf = useTitles();
  const queued = useQueued(room);
  const anyWaits = room.plan.queue.length > 0;
  useEffect(() => {
    if (anyWaits) void loadOwn(room.id);
  }, [anyWaits, room.id]);
  const choose = async (key: string) => {
    if (!(await ask({ kind: 'choose-challenge', key }))) return false;
    if (room.phase === 'gather') await ask({ kind: 'go-to', phase: 'brief' });
    return true;
  };
  const next = nextStep(room, {
    step,
    marked,
    queued: queued.next,
    unshown: unshownBest(room),
    turns: turnsOf(room).length,
  });
  const go = async () => {
    switch (next.kind) {
      case 'look-at':
        return lookAt(next.step);
      case 'take-challenge':
        if (marked !== null) await choose(marked);
        return;
      case 'take-queued':
        mark(next.key);
        if (await choose(next.key)) lookAt(null);
        // It may be gone since this page last looked.
        else await loadOwn(room.id);
        return;
      case 'start-building':
        await ask({ kind: 'start-building', seconds: minutes === null ? null : minutes * 60 });
        return lookAt(null);
      case 'end-building':
        if (await ask({ kind: 'end-building' }))
          offerUndo({ said: words.desk.undo.ended, back: () => void buildOn(link, room) });
        return;
      case 'go-to-show':
        await ask({ kind: 'go-to', phase: 'show' });
        return lookAt(null);
      case 'show-next':
        if (await ask({ kind: 'stage', entries: [next.entry] }))
          link.tell({ kind: 'stage-clock', clock: RESTING });
        return;
      case 'go-to-drive':
        await ask({ kind: 'go-to', phase: 'drive' });
        return lookAt(null);
      case 'next-turn':
        await ask({ kind: 'call-turn', turn: next.turn });
        return;
      case 'go-to-close':
        await ask({ kind: 'go-to', phase: 'close' });
        return lookAt(null);
      case 'another-challenge':
        return lookAt('brief');
    }
  };
  return {
    ...asking,
    label: labelOf(next, room, words, titleOf),
    possible: next.kind !== 'take-challenge' || marked !== null,
    go: () => void go(),
  };
}

/** The best entry of the first team, in order of berths, none of whose entries has been on the board. */
function unshownBest(room: RoomState): string | null {
  const round = room.rounds.length - 1;
  for (const team of room.teams) {
    if (room.entries.some((e) => e.team === team.id && e.round === round && e.shown)) continue;
    const best = bestEntry(room, team.id);
    if (best) return best.id;
  }
  return null;
}

/** Goes on building as if it had not been ended: for as long as there was still, or without a limit. */
async function buildOn(link: Link, { building, ...room }: RoomState): Promise<void> {
  const left =
    building?.until == null ? null : building.until - timeIn({ ...room, building }, link.serverNow());
  await link.command({ kind: 'go-to', phase: 'build' });
  if (left === null) await link.command({ kind: 'start-building', seconds: null });
  else
    await link.command({ kind: 'extend-building', seconds: Math.max(LEAST_LEFT_S, Math.ceil(left / 1000)) });
}

function labelOf(
  next: NextStep,
  room: RoomState,
  { desk, driving }: Wording,
  titleOf: (key: string) => string,
): string {
  switch (next.kind) {
    case 'look-at':
      if (next.step === 'brief') return desk.gathering.choose;
      return next.step === 'gather' ? desk.preparing.toWall : desk.step(next.step);
    case 'take-challenge':
      return room.rounds.length > 0 && room.building !== null ? desk.briefing.takeNext : desk.briefing.take;
    case 'take-queued':
      return desk.queue.next(titleOf(next.key));
    case 'start-building':
      return desk.briefing.start;
    case 'end-building':
      return desk.building.end;
    case 'go-to-show':
      return desk.building.show;
    case 'show-next':
      return desk.showing.next;
    case 'go-to-drive':
      return driving.go;
    case 'next-turn':
      return driving.next;
    case 'go-to-close':
      return desk.showing.close;
    case 'another-challenge':
      return desk.closing.again;
  }
}
