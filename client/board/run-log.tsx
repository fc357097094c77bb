import type { RunEventOf } from '../../shared/documents/trace.ts';
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

/** How the robot drives now, and the marks that it has read so far, to argue about. */
export function RunLog({ staged, t, most, numbered = false }: RunLogProps) {
  const { board, actions } = useWords();
  const rem = useRem();
  const { challenge } = staged;
  const trace = staged.traces[0];
  if (!trace) return null;
  const read = trace.events.filter(
    (event): event is RunEventOf<'read'> => event.kind === 'read' && event.t <= t,
  );
  const shown = numbered ? read.slice(0, most) : read.slice(-most);
  const ended = trace.events.at(-1);
  return (
    <section className="run-log">
      <p className="run-log-pace">
        {ended?.kind === 'end' && t >= ended.t
          ? board.show.ended(actions.ending(ended.ending), ended.t)
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
