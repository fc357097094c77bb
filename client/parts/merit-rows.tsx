import type { Challenge } from '../../shared/documents/challenge.ts';
import { GOAL_REASON, type PointLine } from '../../shared/documents/verdict.ts';
import { useWords } from './use-words.ts';
import './merit-rows.css';

export interface MeritRowsProps {
  readonly challenge: Challenge;
  readonly points: readonly PointLine[];
}

/** What gives points beside the goals, each with its reason. */
export function MeritRows({ challenge, points }: MeritRowsProps) {
  const words = useWords();
  const merits = points.filter(({ reason }) => !reason.startsWith(GOAL_REASON));
  if (merits.length === 0) return null;
  return (
    <ul className="merit-rows">
      {merits.map((line) => (
        <li key={line.reason}>
          <span className="merit-words">
            <span>{words.numbers.capital(words.points.reason(line, challenge))}</span>
            <span className="merit-because">{words.points.because(line)}</span>
          </span>
          <span className="goal-points">{words.judging.stands.outOf(line.got, line.of)}</span>
        </li>
      ))}
    </ul>
  );
}
