import type { Kit } from '../../shared/documents/kit.ts';
import type { RunEventOf, Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { poseAt } from '../../shared/picture/replay.ts';
import { MarkPicture } from '../parts/mark-picture.tsx';
import { useWords } from '../parts/use-words.ts';
import { useRem } from './use-rem.ts';
import { useFittedRows } from './use-rows.ts';
import './run-log.css';

/** Height of a reading, rem; the style sheet says the same. */
const ROW = 1.75;

export interface RunLogProps {
  readonly kit: Kit;
  readonly trace: Trace;
  readonly t: Seconds;
  /** Whether each reading has its number, as on a still picture. */
  readonly numbered?: boolean;
}

const readBy = (trace: Trace, t: Seconds): RunEventOf<'read'>[] =>
  trace.events.filter((event): event is RunEventOf<'read'> => event.kind === 'read' && event.t <= t);

function endBy(trace: Trace, t: Seconds): RunEventOf<'end'> | null {
  const last = trace.events.at(-1);
  return last?.kind === 'end' && t >= last.t ? last : null;
}

/** What the log tells, to see whether it tells something new. */
export const logSays = (trace: Trace, t: Seconds): string =>
  `${readBy(trace, t).length} ${endBy(trace, t) ? 'over' : poseAt(trace, t).pace}`;

/**
 * How the robot drives now, and the marks that it has read so far, to argue about: as many as have room, of a
 * run that goes on the newest, of a whole one the first.
 */
export function RunLog({ kit, trace, t, numbered = false }: RunLogProps) {
  const { board, actions } = useWords();
  const rem = useRem();
  const { box, fit } = useFittedRows(ROW);
  const read = readBy(trace, t);
  const shown = numbered ? read.slice(0, fit) : read.slice(Math.max(0, read.length - fit));
  const end = endBy(trace, t);
  return (
    <section className="run-log">
      <p className="run-log-pace">
        {end
          ? board.show.ended(actions.ending(end.ending), end.t)
          : board.show.pace(actions.pace(poseAt(trace, t).pace))}
      </p>
      <div className="run-log-box" ref={box}>
        <ol>
          {shown.map((event) => (
            <li key={event.t}>
              {numbered && <strong className="run-log-number">{read.indexOf(event) + 1}</strong>}
              <MarkPicture kit={kit} word={event.word} size={rem * 0.8} />
              <span>{event.action ? actions.name(event.action) : actions.unknown}</span>
            </li>
          ))}
        </ol>
      </div>
    </section>
  );
}
