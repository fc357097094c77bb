import type { RunEventOf, Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { poseAt } from '../../shared/picture/replay.ts';
import { MarkPicture } from '../parts/mark-picture.tsx';
import type { Staged } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { useRem } from './use-rem.ts';
import './run-log.css';

export interface RunLogProps {
  readonly staged: Staged;
  readonly t: Seconds;
  /** At most so many readings, the newest last. */
  readonly most: number;
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
export function logSays({ traces: [trace] }: Staged, t: Seconds): string {
  if (!trace) return '';
  return `${readBy(trace, t).length} ${endBy(trace, t) ? 'over' : poseAt(trace, t).pace}`;
}

/** How the robot drives now, and the marks that it has read so far, to argue about. */
export function RunLog({ staged, t, most, numbered = false }: RunLogProps) {
  const { board, actions } = useWords();
  const rem = useRem();
  const { challenge } = staged;
  const trace = staged.traces[0];
  if (!trace) return null;
  const read = readBy(trace, t);
  const shown = numbered ? read.slice(0, most) : read.slice(-most);
  const end = endBy(trace, t);
  return (
    <section className="run-log">
      <p className="run-log-pace">
        {end
          ? board.show.ended(actions.ending(end.ending), end.t)
          : board.show.pace(actions.pace(poseAt(trace, t).pace))}
      </p>
      <ol>
        {shown.map((event) => (
          <li key={event.t}>
            {numbered && <strong className="run-log-number">{read.indexOf(event) + 1}</strong>}
            <MarkPicture kit={challenge.kit} word={event.word} size={rem * 0.8} />
            <span>{event.action ? actions.name(event.action) : actions.unknown}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
