import { useCallback } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';
import { ReplayView } from '../canvas/replay-view.tsx';
import { useStageLook, useStageTime } from '../parts/stage-clock.ts';
import type { Staged } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { useRem } from './use-rem.ts';

export interface ReplayProps {
  readonly staged: Staged;
  readonly duration: Seconds;
  /** Without names and readings, on a small sheet. */
  readonly plain?: boolean;
}

/** The run of one entry over its sheet, by the stage's clock; or all of it as one picture. */
export function Replay({ staged, duration, plain = false }: ReplayProps) {
  const { board, emblems } = useWords();
  const running = useStageTime(duration);
  const { whole } = useStageLook();
  const atEnd = useCallback(() => duration, [duration]);
  const rem = useRem();
  const { challenge, design, traces, team, entry, whatIf } = staged;
  return (
    <div
      className="stage-sheet"
      data-supposed={whatIf !== null}
      style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}
    >
      <ReplayView
        challenge={challenge}
        drawing={design.drawing}
        traces={traces}
        timeAt={whole ? atEnd : running}
        whole={whole}
        plain={plain}
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
