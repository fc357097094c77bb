import { useEffect, useState } from 'react';
import type { Answers } from '../../shared/documents/answers.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { textIn } from '../../shared/wording/wording.ts';
import { ReplayView } from '../canvas/replay-view.tsx';
import { AnswerRows } from '../parts/answer-rows.tsx';
import { entriesOf } from '../parts/figures.ts';
import { GoalRows } from '../parts/goal-rows.tsx';
import { seenAt } from '../parts/goal-times.ts';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { runFrom, type Staged, stageDuration, useStage, useStageTime } from '../parts/use-stage.ts';
import { useLocale, useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { RunLog } from './run-log.tsx';
import { StandingsSide } from './standings.tsx';
import { MemberBadge, onTheWall, TeamBadge } from './team-badge.tsx';
import { useCurrentChallenge } from './use-challenge.ts';
import { useRem } from './use-rem.ts';
import './stage-scene.css';

/** A drawing being driven, or two side by side on one clock. */
export function StageScene({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const current = useCurrentChallenge(room);
  const stage = useStage(room);
  const locale = useLocale();
  const title = current?.sentence ?? board.show.title;
  if (!stage) return <Head title={title} word={board.show.loading} />;
  const first = stage[0];
  const heat = stage.length > 1;
  // On a mirrored sheet the goal may say right for left.
  const own = first && !heat ? textIn(first.challenge.sentence, locale) : title;
  return (
    <>
      <Head
        title={own}
        word={heat || !first ? board.show.heat : <TeamBadge team={first.team} size="1.4em" />}
        {...(heat || !first ? {} : { note: board.show.entry(first.entry.number) })}
      />
      {heat ? <Heat room={room} stage={stage} /> : first && <Single room={room} staged={first} />}
    </>
  );
}

function Single({ room, staged }: { readonly room: RoomState; readonly staged: Staged }) {
  const duration = stageDuration([staged]);
  return (
    <div className={room.standingsShown ? 'stage stage-beside' : 'stage'}>
      <Replay staged={staged} duration={duration} />
      <div className="stage-side">
        <Outcome room={room} staged={staged} duration={duration} />
        <OneWay staged={staged} />
        {!room.standingsShown && !staged.answers && <RunLogNow staged={staged} duration={duration} />}
      </div>
      {room.standingsShown && <StandingsSide room={room} onStage={[staged.team.id]} />}
    </div>
  );
}

/** Why a goal may be missed that the run on the board meets: the robot can also go another way. */
function OneWay({ staged: { traces, judged } }: { readonly staged: Staged }) {
  const { board } = useWords();
  const shown = traces.find(({ probability }) => probability < 1);
  if (!shown) return null;
  const ways = judged.traces.filter(({ start }) => start === shown.start).length;
  return <p className="one-way">{board.show.oneOf(ways, shown.probability)}</p>;
}

function Heat({ room, stage }: { readonly room: RoomState; readonly stage: readonly Staged[] }) {
  const { board } = useWords();
  const duration = stageDuration(stage);
  return (
    <div className="heat">
      {stage.map((staged) => (
        <section key={staged.entry.id} className="heat-lane">
          <h2>
            <TeamBadge team={staged.team} size="1.3em" />
            <span>{board.show.entry(staged.entry.number)}</span>
          </h2>
          <Replay staged={staged} duration={duration} />
          <Outcome room={room} staged={staged} duration={duration} />
        </section>
      ))}
    </div>
  );
}

function Replay({ staged, duration }: { readonly staged: Staged; readonly duration: Seconds }) {
  const { board, emblems } = useWords();
  const timeAt = useStageTime(duration);
  const rem = useRem();
  const { challenge, design, traces, team, entry } = staged;
  return (
    <div className="stage-sheet" style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}>
      <ReplayView
        challenge={challenge}
        drawing={design.drawing}
        traces={traces}
        timeAt={timeAt}
        textSize={rem}
        pad={6}
        label={board.show.label(
          team.wall === 'shown' ? emblems.name(team.emblem) : board.aTeam,
          entry.number,
        )}
      />
      {traces.length === 0 && <p className="stage-never">{board.show.neverStarted}</p>}
    </div>
  );
}

interface OutcomeProps {
  readonly room: RoomState;
  readonly staged: Staged;
  readonly duration: Seconds;
}

/** Goals turn as the run shows them; margins stand there at the end. */
function Outcome({ room, staged, duration }: OutcomeProps) {
  const { board } = useWords();
  const { challenge, judged, answers, entry, outdated } = staged;
  const t = useSlowTime(duration);
  const results = judged.verdict.goals.filter((result) => {
    const goal = challenge.goals.find((each) => each.id === result.id);
    const run = goal && runFrom(staged, goal.start);
    return !run || t >= seenAt(goal, run) - 0.05;
  });
  const ended = answers ? t >= duration - 0.05 : results.length === challenge.goals.length;
  return (
    <section className="outcome">
      {answers ? (
        <Predicted staged={staged} answers={answers} told={ended} />
      ) : (
        <GoalRows challenge={challenge} results={results} ways={judged.ways} iconSize="1.1em" />
      )}
      {room.standingsShown && ended && entry.verdict && (
        <p className="outcome-points">{board.show.points(entry.verdict.points)}</p>
      )}
      {outdated && <p className="one-way">{board.show.outdated}</p>}
    </section>
  );
}

interface PredictedProps {
  readonly staged: Staged;
  readonly answers: Answers;
  /** Whether the run has shown by now what is right. */
  readonly told: boolean;
}

function Predicted({ staged: { challenge, entry }, answers, told }: PredictedProps) {
  const verdict = hereOf(useDocument('answers-verdict', entry.verdict?.document ?? null));
  const known = told && verdict ? { verdict } : {};
  return <AnswerRows challenge={challenge} answers={answers} {...known} iconSize="1.1em" short />;
}

const READINGS_SHOWN = 5;

function RunLogNow({ staged, duration }: Omit<OutcomeProps, 'room'>) {
  return <RunLog staged={staged} t={useSlowTime(duration)} most={READINGS_SHOWN} />;
}

/** Run time four times a second: words don't need more. */
function useSlowTime(duration: Seconds): Seconds {
  const timeAt = useStageTime(duration);
  const [t, setT] = useState(timeAt);
  useEffect(() => {
    setT(timeAt());
    const timer = setInterval(() => setT(timeAt()), 250);
    return () => clearInterval(timer);
  }, [timeAt]);
  return t;
}

/** Showing has begun, nothing is on the stage yet. */
export function BeforeStage({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const current = useCurrentChallenge(room);
  const ready = onTheWall(room.teams).filter((team) => entriesOf(room, team.id).length > 0);
  return (
    <>
      <Head title={current?.sentence ?? board.show.title} word={board.show.title} />
      <div className="before-stage" data-many={ready.length > 12}>
        <p>{board.show.soon}</p>
        <p className="before-stage-note">{board.show.soonNote}</p>
        <ul>
          {ready.map((team) => (
            <li key={team.id}>
              <MemberBadge team={team} size="1.5em" />
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}
