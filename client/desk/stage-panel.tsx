import { useCallback, useMemo } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { HeatView } from '../canvas/heat-view.tsx';
import { ReplayView } from '../canvas/replay-view.tsx';
import { emblemIcon } from '../parts/emblem-icons.ts';
import { GoalRows } from '../parts/goal-rows.tsx';
import { Icon } from '../parts/icon.tsx';
import { useStageLook, useStageTime } from '../parts/stage-clock.ts';
import { canLieOnTop, type Staged, stageDuration, useStage } from '../parts/use-stage.ts';
import { StageControls } from './stage-controls.tsx';
import { StageWays } from './stage-ways.tsx';
import { useWholeWords } from './whole-words.ts';
import './stage-panel.css';

/** What the board's stage shows, small, and the clock that both follow. */
export function StagePanel({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords();
  const stage = useStage(room);
  const anyEntry = room.entries.some((entry) => entry.round === room.rounds.length - 1);
  if (room.stage.length === 0)
    return (
      <div className="stage-empty">
        <p>{anyEntry ? desk.showing.empty : desk.showing.emptyNoEntries}</p>
      </div>
    );
  if (!stage) return <div className="stage-empty">{desk.team.checking} …</div>;
  return <OnStage stage={stage} />;
}

interface OnStageProps {
  readonly stage: readonly Staged[];
}

function OnStage({ stage }: OnStageProps) {
  const { onTop } = useStageLook();
  const flat = onTop && stage.length > 1 && canLieOnTop(stage);
  const duration = stageDuration(stage);
  return (
    <div className="stage-panel">
      <div className="stage-sheets" data-many={stage.length > 2 && !flat}>
        {flat ? (
          <Together stage={stage} duration={duration} />
        ) : (
          stage.map((staged) => (
            <StageSheet
              key={staged.entry.id}
              staged={staged}
              duration={duration}
              withGoals={stage.length === 2}
            />
          ))
        )}
      </div>
      <StageControls stage={stage} />
    </div>
  );
}

/** The end of the run while all of it is one picture. */
function useTimeShown(duration: Seconds): () => Seconds {
  const running = useStageTime(duration);
  const { whole } = useStageLook();
  const atEnd = useCallback(() => duration, [duration]);
  return whole ? atEnd : running;
}

interface StageSheetProps {
  readonly staged: Staged;
  readonly duration: Seconds;
  /** In a heat of two the goals of both stand under them; of one alone they stand at the side, with the points. */
  readonly withGoals: boolean;
}

function StageSheet({ staged, duration, withGoals }: StageSheetProps) {
  const { desk, emblems, stage } = useWholeWords();
  const timeAt = useTimeShown(duration);
  const { whole } = useStageLook();
  const { challenge, design, traces, answers, judged, team, entry, replayed } = staged;
  const name = desk.showing.entry(emblems.name(team.emblem), entry.number);
  return (
    <figure className="stage-sheet">
      <div className="stage-canvas" style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}>
        <ReplayView
          challenge={challenge}
          drawing={design.drawing}
          traces={traces}
          timeAt={timeAt}
          whole={whole}
          textSize={14}
          label={name}
        />
      </div>
      <figcaption>
        <strong>{name}</strong>
        <span className="desk-quiet">{desk.team.points(entry.verdict?.points ?? 0)}</span>
        {replayed !== 'same' && <span className="desk-quiet">{stage.replayed(replayed)}</span>}
        <StageWays staged={staged} />
      </figcaption>
      {withGoals && !answers && (
        <GoalRows challenge={challenge} results={judged.verdict.goals} ways={judged.ways} />
      )}
    </figure>
  );
}

/** All of a heat on one sheet. */
function Together({ stage, duration }: OnStageProps & Pick<StageSheetProps, 'duration'>) {
  const { emblems } = useWholeWords();
  const timeAt = useTimeShown(duration);
  const lanes = useMemo(
    () =>
      stage.map(({ design, traces, team }) => ({
        drawing: design.drawing,
        traces,
        flag: <Icon of={emblemIcon(team.emblem)} size="1em" />,
      })),
    [stage],
  );
  const { challenge } = stage[0]!;
  const names = stage.map(({ team }) => emblems.name(team.emblem)).join(', ');
  return (
    <figure className="stage-sheet">
      <div className="stage-canvas" style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}>
        <HeatView challenge={challenge} lanes={lanes} timeAt={timeAt} textSize={14} pad={12} label={names} />
      </div>
      <figcaption>
        <strong>{names}</strong>
      </figcaption>
    </figure>
  );
}
