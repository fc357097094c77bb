import { CircleCheck } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { PREP_CHECKS, type PrepCheck } from '../../../shared/prep/prep-check.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useDesk } from '../desk-store.ts';
import { useKeys } from '../keys.ts';
import { useWholeWords } from '../whole-words.ts';
import { useTicks } from './ticks.ts';
import { type Seen, useSeen } from './use-seen.ts';
import './before.css';

export interface FiveMinutesProps {
  readonly room: RoomState | null;
  readonly kit: Kit | null;
  /** Tells the room that somebody stays with the charger; null before one is open. */
  readonly onStay: (() => void) | null;
  /** What ends the list: the way into the room. */
  readonly end: ReactNode;
}

/** The short list before a lesson: what can be seen is ticked by itself, the rest by a key or a tap. */
export function FiveMinutes({ room, kit, onStay, end }: FiveMinutesProps) {
  const { prepCheck: words } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const { ticked, setTick, clear } = useTicks();
  const seen = useSeen(room, kit);
  const isDone = (check: PrepCheck) => seen[check].done || ticked.includes(check);
  const turn = (check: PrepCheck) => {
    if (seen[check].done) return;
    // A promise that only this list knew would leave the room without it.
    if (check === 'charger' && onStay) onStay();
    else setTick(check, !ticked.includes(check));
  };
  useKeys(Object.fromEntries(PREP_CHECKS.map((check, i) => [String(i + 1), () => turn(check)])), keysOn);
  const done = PREP_CHECKS.filter(isDone).length;
  return (
    <section className="before" aria-labelledby="five-title">
      <h2 id="five-title">{words.title}</h2>
      <p>{words.how}</p>
      <ol className="five">
        {PREP_CHECKS.map((check, i) => (
          <li key={check} data-done={isDone(check)}>
            <Line check={check} number={i + 1} seen={seen[check]} done={isDone(check)} onTurn={turn} />
          </li>
        ))}
      </ol>
      <div className="five-end">
        <p role="status">{words.done(done, PREP_CHECKS.length)}</p>
        {end}
        {ticked.length > 0 && (
          <Button look="quiet" onClick={clear}>
            {words.again}
          </Button>
        )}
      </div>
      {done === PREP_CHECKS.length ? (
        <Notice tone="met" role="status">
          {words.ready}
        </Notice>
      ) : (
        <p className="desk-quiet">
          {words.anyway} {words.kept}
        </p>
      )}
    </section>
  );
}

interface LineProps {
  readonly check: PrepCheck;
  readonly number: number;
  readonly seen: Seen;
  readonly done: boolean;
  readonly onTurn: (check: PrepCheck) => void;
}

/** One line: a box to tick, or the sign that the desk has seen it by itself. */
function Line({ check, number, seen, done, onTurn }: LineProps) {
  const { prepCheck: words } = useWholeWords();
  const said = (
    <>
      <span className="five-key" aria-hidden="true">
        {number}
      </span>
      <span>
        <strong>{words.said(check)}</strong>
        {seen.said !== null && <span className="desk-quiet"> {seen.said}</span>}
      </span>
    </>
  );
  if (seen.done)
    return (
      <p className="five-line">
        <Icon of={CircleCheck} size={24} label={words.seen} />
        {said}
        <span className="desk-quiet five-seen" aria-hidden="true">
          {words.seen}
        </span>
      </p>
    );
  return (
    <label className="five-line">
      <input type="checkbox" checked={done} onChange={() => onTurn(check)} />
      {said}
    </label>
  );
}
