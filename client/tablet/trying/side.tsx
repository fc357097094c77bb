import type { ReactNode } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { Trace } from '../../../shared/documents/trace.ts';
import type { Seconds } from '../../../shared/geometry/units.ts';
import type { NextQuestion } from '../../../shared/judge/next-question.ts';
import type { Study } from '../../../shared/judge/study.ts';
import type { Trouble } from '../../../shared/judge/trouble.ts';
import type { Because } from '../../../shared/room/state.ts';
import type { ReplayMoment } from '../../canvas/replay-moments.ts';
import { GoalRows } from '../../parts/goal-rows.tsx';
import type { JudgedHere } from '../../parts/judge-here.ts';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { Tried } from '../build/use-help.ts';
import type { ReplayClock } from './clock.ts';
import type { Fork } from './forks.ts';
import { Log } from './log.tsx';
import { Next } from './next-question.tsx';
import { Robots } from './robots.tsx';
import { Deciding, Now, Ways } from './ways.tsx';
import { Why } from './why.tsx';

export interface RunProps {
  readonly challenge: Challenge;
  readonly design: Design;
  readonly judged: JudgedHere;
  /** The team's own drawing, and not what a question makes of it. */
  readonly isOwn: boolean;
  readonly tried: Tried | undefined;
  readonly back: string;
  readonly onExplain: (because: Because) => void;
  readonly onSee: (question: NextQuestion) => void;
  readonly onBack: () => void;
}

export interface SideProps extends RunProps {
  readonly study: Partial<Study>;
  /** The likeliest first. */
  readonly ways: readonly Trace[];
  readonly trace: Trace;
  readonly forks: readonly Fork[];
  readonly moment: ReplayMoment | null;
  readonly clock: ReplayClock;
  readonly duration: Seconds;
  readonly trouble: Trouble | undefined;
  /** What the sensors read now, where it is wanted; beside the sheet, so that it covers nothing. */
  readonly sensors: ReactNode;
  readonly onTrouble: (() => void) | null;
  readonly onGo: (t: Seconds) => void;
  /** Shows another run, from a time on up to which it is the same. */
  readonly onWay: (trace: Trace, since: Seconds) => void;
}

/** Beside the run: how it drives, what to think about, what happened, how many make it, what comes of it. */
export function Side(props: SideProps) {
  const { challenge, judged, study, ways, trace, moment } = props;
  const { trying } = useWords().tablet;
  const { met } = judged.verdict;
  const over = moment?.over ?? false;
  return (
    <aside className="trying-side">
      <div className="trying-part">
        <Now moment={moment} trace={trace} />
        {props.sensors}
        {over && props.isOwn && <Thinking {...props} />}
        {ways.length > 1 && (
          <Ways challenge={challenge} ways={ways} chosen={trace} onWay={(way) => props.onWay(way, 0)} />
        )}
        <Log {...props} kit={challenge.kit} />
      </div>
      <div className="trying-part">
        {trace.ending === 'never-started' ? (
          <Notice tone="caution">{trying.noRun}</Notice>
        ) : (
          <Robots study={study} does={met ? 'make-it' : ways.length > 1 ? 'one-of-its-ways' : 'the-same'} />
        )}
        <div className="trying-goals" data-known={over}>
          <h2>{trying.goals}</h2>
          <GoalRows
            challenge={challenge}
            results={over ? judged.verdict.goals : undefined}
            ways={judged.ways}
          />
          {over && ways.length > 1 && <Deciding judged={judged} ways={ways} chosen={trace} />}
        </div>
        <p className="quiet-words trying-note">{trying.acts}</p>
      </div>
    </aside>
  );
}

/** After the run: why it went otherwise than foretold, or the next question. */
function Thinking({ judged, tried, study, design, trace, trouble, onExplain, onTrouble, onSee }: SideProps) {
  const { met } = judged.verdict;
  const differs = tried && tried.guess !== 'not-sure' && (tried.guess === 'makes-it') !== met;
  return (
    <>
      {differs && (met || trouble) && (
        <Why
          guess={tried.guess}
          right={met ? 'all-as-drawn' : trouble!.reason}
          before={tried.because}
          drawing={design.drawing}
          hash={trace.hash}
          onPick={onExplain}
          onShow={onTrouble}
        />
      )}
      {met && study.next && <Next questions={study.next} onSee={onSee} />}
    </>
  );
}
