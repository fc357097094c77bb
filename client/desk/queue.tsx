import { ArrowDown, ArrowUp, ListPlus, ListX, X } from 'lucide-react';
import { useCallback, useMemo, useRef } from 'react';
import { textIn } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { NEW_CHALLENGE } from '../../shared/wording/fresh.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useLocale } from '../parts/use-words.ts';
import { useOwn } from './builder/own-challenges.ts';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { useReadyChallenges } from './kit/room-kit.ts';
import { type Stuck, whyStuck } from './queued.ts';
import { useUndoable } from './use-undoable.ts';
import { useWholeWords } from './whole-words.ts';
import './queue.css';

/** What a challenge is called, by its key: a ready one, or one of this desk. */
export function useKnownTitles(): ReadonlyMap<string, string> {
  const locale = useLocale();
  const own = useOwn((state) => state.list);
  return useMemo(() => {
    const titles = new Map(readyChallenges(DEMO_KIT).map(({ key, title }) => [key, textIn(title, locale)]));
    for (const { id, title = NEW_CHALLENGE.title } of own ?? []) titles.set(id, textIn(title, locale));
    return titles;
  }, [locale, own]);
}

/** The same, and the key itself where there is none. */
export function useTitles(): (key: string) => string {
  const titles = useKnownTitles();
  return useMemo(() => (key) => titles.get(key) ?? key, [titles]);
}

export interface Queued {
  /** The first challenge of the queue that can be taken; null where none waits. */
  readonly next: string | null;
  readonly why: (key: string) => Stuck | null;
}

/** What of the queue can be taken: a challenge may have been erased since, or not be for the room's kit. */
export function useQueued(room: RoomState): Queued {
  const ready = useReadyChallenges(room);
  const own = useOwn((state) => state.list);
  const why = useCallback((key: string) => whyStuck(key, ready, own), [ready, own]);
  return { next: room.plan.queue.find((key) => why(key) === null) ?? null, why };
}

/**
 * Puts a challenge at a place of the queue, or takes it off and offers to take that back; what can't be taken could
 * not be put back either.
 */
function useQueue(room: RoomState) {
  const { plan } = room;
  const { why } = useQueued(room);
  const { undo } = useWholeWords().desk;
  const { ask, askUndoable, refusal, busy } = useUndoable();
  const titleOf = useTitles();
  const put = (key: string, place: number) => ask({ kind: 'queue-challenge', key, place });
  const takeOff = async (key: string) => {
    const place = plan.queue.indexOf(key);
    const off = { kind: 'queue-challenge', key, place: null } as const;
    if (place < 0) return;
    if (why(key)) await ask(off);
    else await askUndoable(off, { ...off, place }, undo.unqueued(titleOf(key)));
  };
  return { refusal, busy, put, takeOff, titleOf, why };
}

/** The challenges that wait their turn, in their order. */
export function Queue({ room }: { readonly room: RoomState }) {
  const { queue: words } = useWholeWords().desk;
  const { queue } = room.plan;
  const { put, takeOff, titleOf: known, why, refusal } = useQueue(room);
  const titleOf = (key: string) => (why(key) === 'gone' ? words.gone : known(key));
  const list = useRef<HTMLOListElement>(null);
  /** The focus goes with the row that moves. */
  const move = async (key: string, by: 1 | -1) => {
    await put(key, queue.indexOf(key) + by);
    const row = list.current?.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`);
    const own = row?.querySelector<HTMLButtonElement>(by < 0 ? '.queue-sooner' : '.queue-later');
    (own?.disabled ? row?.querySelector<HTMLButtonElement>('button:enabled') : own)?.focus();
  };
  return (
    <section className="queue" aria-labelledby="queue-title">
      <h3 id="queue-title">{words.title}</h3>
      {queue.length === 0 && <p className="desk-quiet">{words.none}</p>}
      <ol ref={list}>
        {queue.map((key, i) => (
          <li key={key} className="queue-row" data-key={key}>
            <span className="queue-name">
              {titleOf(key)}
              <WhyStuck why={why(key)} />
            </span>
            <Button
              look="quiet"
              className="queue-sooner"
              icon={<Icon of={ArrowUp} size={18} />}
              aria-label={words.sooner(titleOf(key))}
              disabled={i === 0}
              onClick={() => void move(key, -1)}
            />
            <Button
              look="quiet"
              className="queue-later"
              icon={<Icon of={ArrowDown} size={18} />}
              aria-label={words.later(titleOf(key))}
              disabled={i === queue.length - 1}
              onClick={() => void move(key, 1)}
            />
            <Button
              look="quiet"
              icon={<Icon of={X} size={18} />}
              aria-label={words.takeOff(titleOf(key))}
              onClick={() => void takeOff(key)}
            />
          </li>
        ))}
      </ol>
      <Refused refusal={refusal} />
    </section>
  );
}

function WhyStuck({ why }: { readonly why: Stuck | null }) {
  const { queue: words } = useWholeWords().desk;
  return why && <span className="desk-quiet queue-stuck">{words.stuck(why)}</span>;
}

/** Puts the marked challenge at the end of the queue, or takes it off. */
export function QueueButton({ room, marked }: { readonly room: RoomState; readonly marked: string }) {
  const { queue: words } = useWholeWords().desk;
  const keysOn = useDesk((state) => state.keysOn);
  const { put, takeOff, refusal, busy } = useQueue(room);
  const { queue } = room.plan;
  const waits = queue.includes(marked);
  const change = () => void (waits ? takeOff(marked) : put(marked, queue.length));
  useKeys({ q: busy ? undefined : change }, keysOn);
  return (
    <>
      <Button
        className="queue-put"
        icon={<Icon of={waits ? ListX : ListPlus} />}
        shortcut="Q"
        disabled={busy}
        onClick={change}
      >
        {waits ? words.off : words.add}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}
