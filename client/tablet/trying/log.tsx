import { useEffect, useRef } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { RunEvent, Trace } from '../../../shared/documents/trace.ts';
import type { Seconds } from '../../../shared/geometry/units.ts';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { ReplayClock } from './clock.ts';
import { useShown } from './controls.tsx';
import type { Fork } from './forks.ts';

export interface LogProps {
  readonly kit: Kit;
  readonly trace: Trace;
  readonly forks: readonly Fork[];
  readonly clock: ReplayClock;
  readonly duration: Seconds;
  /** Shows that moment. */
  readonly onGo: (t: Seconds) => void;
  /** Shows the run that goes another way. */
  readonly onWay: (trace: Trace, since: Seconds) => void;
}

/** What happened, line by line, running along with the robot; a tap on a line is there. */
export function Log({ kit, trace, forks, clock, duration, onGo, onWay }: LogProps) {
  const { foretelling, replay, numbers } = useWords();
  const lines = trace.events.flatMap((event, i) => {
    const said = replay.log(event);
    return said === undefined ? [] : [{ event, said, key: `${i} ${event.t}` }];
  });
  const now = useShown(clock, duration, (t) => lines.findLastIndex(({ event }) => event.t <= t + 0.001));
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    list.current?.children[Math.max(0, now)]?.scrollIntoView({ block: 'nearest' });
  }, [now]);
  return (
    <section className="trying-log" aria-labelledby="log-title">
      <h2 id="log-title">{foretelling.log}</h2>
      <ol ref={list}>
        {lines.map(({ event, said, key }, i) => (
          <li key={key} data-now={i === now} data-past={i < now}>
            <button type="button" onClick={() => onGo(event.t)} aria-current={i === now ? 'step' : undefined}>
              <span className="log-time">{numbers.fixed(event.t, 1)}</span>
              {event.kind === 'read' && <MarkPicture kit={kit} word={event.word} size={18} />}
              <span>{said}</span>
            </button>
            <Ways fork={forkAt(forks, event)} onWay={(other) => onWay(other, event.t)} />
          </li>
        ))}
      </ol>
    </section>
  );
}

const forkAt = (forks: readonly Fork[], event: RunEvent): Fork | undefined =>
  event.kind === 'junction' && event.by === 'chance' ? forks.find((fork) => fork.t === event.t) : undefined;

/** At a junction left to luck: each way with its chance, to be chosen. */
function Ways({ fork, onWay }: { readonly fork: Fork | undefined; readonly onWay: (trace: Trace) => void }) {
  const { foretelling, actions } = useWords();
  if (!fork) return null;
  return (
    <div className="log-ways">
      {fork.ways.map(({ way, chance, trace }) => (
        <button key={way} type="button" aria-pressed={way === fork.took} onClick={() => onWay(trace)}>
          {foretelling.chooseWay(actions.way(way), foretelling.chance(chance))}
        </button>
      ))}
    </div>
  );
}
