import { CircleDashed } from 'lucide-react';
import { useCallback, useMemo } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';
import { HeatView } from '../canvas/heat-view.tsx';
import { emblemIcon } from '../parts/emblem-icons.ts';
import { type Finish, finishOrder } from '../parts/finish-order.ts';
import { Icon } from '../parts/icon.tsx';
import { useStageLook, useStageTime } from '../parts/stage-clock.ts';
import { canLieOnTop, type Staged, stageDuration } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { isOver, Outcome, seenResults } from './outcome.tsx';
import { Replay } from './stage-replay.tsx';
import { TeamBadge } from './team-badge.tsx';
import { useRem } from './use-rem.ts';
import { useSlowTime } from './use-slow-time.ts';

/** Two to four drawings on one clock, side by side or on top of each other. */
export function Heat({ stage }: { readonly stage: readonly Staged[] }) {
  const { onTop } = useStageLook();
  const duration = stageDuration(stage);
  const lanes = useMemo(() => {
    const finishes = finishOrder(stage.map(({ traces }) => traces));
    return stage.map((staged, i) => ({ staged, finish: finishes[i]! }));
  }, [stage]);
  return onTop && canLieOnTop(stage) ? (
    <OnTop lanes={lanes} duration={duration} />
  ) : (
    <div className="heat" data-many={stage.length > 2}>
      {lanes.map((lane) =>
        stage.length > 2 ? (
          <SmallLane key={lane.staged.entry.id} {...lane} duration={duration} />
        ) : (
          <section key={lane.staged.entry.id} className="heat-lane">
            <LaneHead {...lane} duration={duration} />
            <Replay staged={lane.staged} duration={duration} />
            <Outcome staged={lane.staged} duration={duration} />
          </section>
        ),
      )}
    </div>
  );
}

interface LaneProps {
  readonly staged: Staged;
  readonly finish: Finish;
  readonly duration: Seconds;
}

/** Run time as `said` of it: the end of it where the whole run is one picture. */
function useSaidTime(duration: Seconds, said: (t: Seconds) => number | boolean): Seconds {
  const { whole } = useStageLook();
  const now = useSlowTime(useStageTime(duration), said);
  return whole ? duration : now;
}

const useOver = (duration: Seconds): boolean =>
  isOver(
    useSaidTime(duration, (t) => isOver(t, duration)),
    duration,
  );

/** Whose drawing it is, and at the end of the heat how it came out. */
function LaneHead({ staged: { team, entry }, finish, duration }: LaneProps) {
  const { board } = useWords();
  const over = useOver(duration);
  return (
    <h2>
      <TeamBadge team={team} size="1.3em" />
      <span>{over ? <Finished finish={finish} /> : board.show.entry(entry.number)}</span>
    </h2>
  );
}

/** One of three or four. */
function SmallLane({ staged, finish, duration }: LaneProps) {
  const over = useOver(duration);
  return (
    <section className="heat-lane">
      <h2>
        <TeamBadge team={staged.team} size="1.3em" />
      </h2>
      <Tally staged={staged} duration={duration} />
      <Replay staged={staged} duration={duration} plain />
      <p className="heat-end" role="status">
        {over && <Finished finish={finish} />}
      </p>
    </section>
  );
}

function Finished({ finish: { place, at, ending } }: { readonly finish: Finish }) {
  const { stage } = useWords();
  return <>{place === null ? stage.notThere(ending) : stage.finished(place, at)}</>;
}

/** How many goals are met by now, where there is no room for each. */
function Tally({ staged, duration }: Omit<LaneProps, 'finish'>) {
  const { stage } = useWords();
  const metBy = (t: Seconds) => seenResults(staged, t).filter((result) => result.met).length;
  const met = metBy(useSaidTime(duration, metBy));
  return <p className="heat-tally">{stage.goalsMet(met, staged.challenge.goals.length)}</p>;
}

interface OnTopProps {
  readonly lanes: readonly Omit<LaneProps, 'duration'>[];
  readonly duration: Seconds;
}

/** All drawings on one sheet, each robot with its team's emblem; who is who stands beside it. */
function OnTop({ lanes, duration }: OnTopProps) {
  const { stage } = useWords();
  const timeAt = useStageTime(duration);
  const { whole } = useStageLook();
  const atEnd = useCallback(() => duration, [duration]);
  const rem = useRem();
  const over = useOver(duration);
  const shown = useMemo(
    () =>
      lanes.map(({ staged: { design, traces, team } }) => ({
        drawing: design.drawing,
        traces,
        flag: <Icon of={team.wall === 'shown' ? emblemIcon(team.emblem) : CircleDashed} size="1em" />,
      })),
    [lanes],
  );
  const ordered = over ? [...lanes].sort((a, b) => placeOf(a) - placeOf(b)) : lanes;
  const { challenge } = lanes[0]!.staged;
  return (
    <div className="stage">
      <div className="stage-sheet" style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}>
        <HeatView
          challenge={challenge}
          lanes={shown}
          timeAt={whole ? atEnd : timeAt}
          textSize={rem}
          pad={6}
          label={stage.onTop}
        />
      </div>
      <ol className="heat-order" role="status" aria-label={stage.order}>
        {ordered.map(({ staged, finish }) => (
          <li key={staged.entry.id}>
            <TeamBadge team={staged.team} size="1.3em" />
            <span>{over && <Finished finish={finish} />}</span>
            <Tally staged={staged} duration={duration} />
          </li>
        ))}
      </ol>
    </div>
  );
}

const placeOf = ({ finish }: Pick<LaneProps, 'finish'>): number => finish.place ?? Number.POSITIVE_INFINITY;
