import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Trace } from '../../../shared/documents/trace.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { ReplayMoment } from '../../canvas/replay-moments.ts';
import type { JudgedHere } from '../../parts/judge-here.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';

interface DecidingProps {
  readonly judged: JudgedHere;
  readonly ways: readonly Trace[];
  readonly chosen: Trace;
}

/** Which other ways a goal fails in, where the one that is shown does not tell. */
export function Deciding({ judged, ways, chosen }: DecidingProps) {
  const { trying } = useWords().tablet;
  const failing = judged.verdict.goals.flatMap(({ met, run }) => {
    const trace = run === undefined ? undefined : judged.traces[run];
    return trace && !met && trace !== chosen ? [ways.indexOf(trace) + 1] : [];
  });
  return (
    <p className="quiet-words trying-deciding">
      {trying.everyWay} {trying.decides([...new Set(failing)])}
    </p>
  );
}

/** The commanded pace while it drives, and how it ended. */
export function Now({ moment, trace }: { readonly moment: ReplayMoment | null; readonly trace: Trace }) {
  const words = useWords();
  const { trying } = words.tablet;
  return (
    <dl className="trying-now">
      <div>
        <dt>{trying.pace}</dt>
        <dd>{moment ? words.actions.pace(moment.pace) : ''}</dd>
      </div>
      <div>
        <dt>{moment?.over ? trying.ending : trying.now}</dt>
        <dd>{moment?.over ? words.actions.ending(trace.ending) : trying.driving}</dd>
      </div>
    </dl>
  );
}

interface WaysProps {
  readonly challenge: Challenge;
  readonly ways: readonly Trace[];
  readonly chosen: Trace;
  readonly onWay: (trace: Trace) => void;
}

/** Each way that the robot can go by itself, with its chance in robots out of twenty. */
export function Ways({ challenge, ways, chosen, onWay }: WaysProps) {
  const { trying } = useWords().tablet;
  const locale = useLocale();
  const { start, finish } = challenge.sheet;
  const bothEnds = challenge.starts.length > 1;
  const nameOf = (trace: Trace) =>
    textIn(trace.start === 'finish' && finish ? finish.name : start.name, locale);
  return (
    <div className="trying-ways">
      <h2 id="ways-title">{trying.ways}</h2>
      <div role="radiogroup" aria-labelledby="ways-title">
        {ways.map((trace, i) => (
          <label key={trace.start + trace.hash} className="choice" data-chosen={trace === chosen}>
            <input
              type="radio"
              name="way"
              className="tool-input"
              checked={trace === chosen}
              onChange={() => onWay(trace)}
            />
            {bothEnds
              ? trying.wayFrom(i + 1, nameOf(trace), trying.chance(trace.probability))
              : trying.way(i + 1, trying.chance(trace.probability))}
          </label>
        ))}
      </div>
      {ways.some((trace) => trace.probability < 1) && <p className="quiet-words">{trying.luck}</p>}
    </div>
  );
}
