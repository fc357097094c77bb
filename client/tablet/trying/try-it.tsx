import { ArrowLeft } from 'lucide-react';
import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Trace } from '../../../shared/documents/trace.ts';
import { durationOf } from '../../../shared/picture/replay.ts';
import { textIn } from '../../../shared/wording/wording.ts';
import { type ReplayMoment, ReplayView } from '../../canvas/replay-view.tsx';
import { Button } from '../../parts/button.tsx';
import { GoalRows } from '../../parts/goal-rows.tsx';
import { Icon } from '../../parts/icon.tsx';
import type { JudgedHere } from '../../parts/judge-here.ts';
import { useJudged } from '../../parts/judging.ts';
import { Notice } from '../../parts/notice.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import type { DrawingSession } from '../build/session.ts';
import { useSessionState } from '../build/use-session.ts';
import { type ReplayClock, timeOf } from './clock.ts';
import { Controls } from './controls.tsx';
import './trying.css';

export interface TryItProps {
  readonly challenge: Challenge;
  readonly session: DrawingSession;
  readonly onBack: () => void;
}

/** The robot drives over the drawing as it is. Nothing is scored. */
export function TryIt({ challenge, session, onBack }: TryItProps) {
  const { trying } = useWords().tablet;
  const design = useSessionState(session, (state) => state.editor.design);
  const judged = useJudged(challenge, design);
  const [way, setWay] = useState(0);
  const likeliest = useMemo(() => likeliestFirst(judged?.traces ?? []), [judged]);
  const trace = likeliest[way] ?? likeliest[0];
  return (
    <section className="trying" aria-label={trying.title}>
      {judged && trace ? (
        <Run
          key={trace.hash + trace.start}
          challenge={challenge}
          session={session}
          judged={judged}
          trace={trace}
          ways={likeliest}
          onWay={setWay}
          onBack={onBack}
        />
      ) : (
        <div className="trying-wait">
          <Notice role="status" tone={judged ? 'caution' : 'plain'}>
            {judged ? trying.noRun : trying.working}
          </Notice>
          <Back onBack={onBack} />
        </div>
      )}
    </section>
  );
}

const likeliestFirst = (traces: readonly Trace[]): readonly Trace[] =>
  [...traces].sort((a, b) => b.probability - a.probability);

function Back({ onBack }: { readonly onBack: () => void }) {
  const { trying } = useWords().tablet;
  return (
    <Button className="trying-back" icon={<Icon of={ArrowLeft} size={24} />} onClick={onBack}>
      {trying.back}
    </Button>
  );
}

interface RunProps extends TryItProps {
  readonly judged: JudgedHere;
  readonly trace: Trace;
  readonly ways: readonly Trace[];
  readonly onWay: (way: number) => void;
}

const BEGINNING: Omit<ReplayClock, 'since'> = { playing: true, speed: 1, at: 0 };

function Run({ challenge, session, judged, trace, ways, onWay, onBack }: RunProps) {
  const { trying } = useWords().tablet;
  const [clock, setClock] = useState<ReplayClock>(() => ({ ...BEGINNING, since: performance.now() }));
  const duration = durationOf(trace);
  const timeAt = useCallback(() => timeOf(clock, performance.now(), duration), [clock, duration]);
  const [moment, setMoment] = useState<ReplayMoment | null>(null);
  const onMoment = useCallback((moments: readonly ReplayMoment[]) => setMoment(moments[0] ?? null), []);
  const traces = useMemo(() => [trace], [trace]);
  useEffect(() => {
    if (moment?.over)
      setClock((before) => (before.playing ? { ...before, playing: false, at: duration } : before));
  }, [moment, duration]);
  return (
    <>
      <div className="trying-sheet">
        <ReplayView
          challenge={challenge}
          drawing={session.editor.design.drawing}
          traces={traces}
          timeAt={timeAt}
          onMoment={onMoment}
          label={trying.robot(trying.title)}
        />
      </div>
      <aside className="trying-side">
        <Now moment={moment} trace={trace} />
        {ways.length > 1 && <Ways challenge={challenge} ways={ways} chosen={trace} onWay={onWay} />}
        <div className="trying-goals" data-known={moment?.over ?? false}>
          <h2>{trying.goals}</h2>
          <GoalRows
            challenge={challenge}
            results={moment?.over ? judged.verdict.goals : undefined}
            ways={judged.ways}
          />
          {moment?.over && ways.length > 1 && <Deciding judged={judged} ways={ways} chosen={trace} />}
        </div>
        <p className="quiet-words trying-note">{trying.acts}</p>
      </aside>
      <div className="trying-foot">
        <Back onBack={onBack} />
        <Controls clock={clock} duration={duration} onClock={setClock} />
      </div>
    </>
  );
}

interface DecidingProps {
  readonly judged: JudgedHere;
  readonly ways: readonly Trace[];
  readonly chosen: Trace;
}

/** Which other ways a goal fails in, where the one that is shown does not tell. */
function Deciding({ judged, ways, chosen }: DecidingProps) {
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
function Now({ moment, trace }: { readonly moment: ReplayMoment | null; readonly trace: Trace }) {
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
  readonly onWay: (way: number) => void;
}

/** Each way that the robot can go by itself, with its chance in robots out of twenty. */
function Ways({ challenge, ways, chosen, onWay }: WaysProps) {
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
              onChange={() => onWay(i)}
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
