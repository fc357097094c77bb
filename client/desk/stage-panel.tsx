import { Pause, Play, RotateCcw, X } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Seconds } from '../../shared/geometry/units.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { StageClock } from '../../shared/wire/protocol.ts';
import { ReplayView } from '../canvas/replay-view.tsx';
import { Button } from '../parts/button.tsx';
import { GoalRows } from '../parts/goal-rows.tsx';
import { Icon } from '../parts/icon.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useLink, useLinkState } from '../parts/use-link.tsx';
import { RESTING, runTime, type Staged, stageDuration, useStage, useStageTime } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import './stage-panel.css';

/** What the board's stage shows, small, and the clock that both follow. */
export function StagePanel({ room }: { readonly room: RoomState }) {
  const { desk } = useWords();
  const stage = useStage(room);
  const anyEntry = room.entries.some((entry) => entry.round === room.rounds.length - 1);
  if (room.stage.length === 0)
    return (
      <div className="stage-empty">
        <p>{anyEntry ? desk.showing.empty : desk.showing.emptyNoEntries}</p>
      </div>
    );
  if (!stage) return <div className="stage-empty">{desk.team.checking} …</div>;
  return (
    <div className="stage-panel">
      <div className="stage-sheets">
        {stage.map((staged) => (
          <StageSheet
            key={staged.entry.id}
            staged={staged}
            duration={stageDuration(stage)}
            withGoals={stage.length > 1}
          />
        ))}
      </div>
      <StageControls duration={stageDuration(stage)} />
    </div>
  );
}

interface StageSheetProps {
  readonly staged: Staged;
  readonly duration: Seconds;
  /** In a heat the goals of both stand under them; of one alone they stand at the side, with the points. */
  readonly withGoals: boolean;
}

function StageSheet({ staged, duration, withGoals }: StageSheetProps) {
  const { desk, emblems } = useWords();
  const timeAt = useStageTime(duration);
  const { challenge, design, traces, answers, judged, team, entry, outdated } = staged;
  const ways = judged.traces.length;
  const name = desk.showing.entry(emblems.name(team.emblem), entry.number);
  return (
    <figure className="stage-sheet">
      <div className="stage-canvas" style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}>
        <ReplayView
          challenge={challenge}
          drawing={design.drawing}
          traces={traces}
          timeAt={timeAt}
          textSize={14}
          label={name}
        />
      </div>
      <figcaption>
        <strong>{name}</strong>
        <span className="desk-quiet">{desk.team.points(entry.verdict?.points ?? 0)}</span>
        {ways > 1 && <span className="desk-quiet">{desk.showing.runs(ways)}</span>}
        {outdated && <span className="desk-quiet">{desk.showing.outdated}</span>}
      </figcaption>
      {withGoals && !answers && (
        <GoalRows challenge={challenge} results={judged.verdict.goals} ways={judged.ways} />
      )}
    </figure>
  );
}

const SPEEDS = [1, 2, 4] as const;

function StageControls({ duration }: { readonly duration: Seconds }) {
  const { desk } = useWords();
  const link = useLink();
  const keysOn = useDesk((state) => state.keysOn);
  const clock = useLinkState((state) => state.stageClock);
  const { ask } = useAsk();
  const at = useShownTime(clock, duration);
  const set = (change: Partial<Omit<StageClock, 'since'>>) => {
    const now = runTime(clock, link.serverNow(), duration);
    const { playing, speed } = clock ?? RESTING;
    link.tell({ kind: 'stage-clock', clock: { playing, speed, at: now, ...change } });
  };
  const ended = at >= duration;
  const playing = (clock?.playing ?? false) && !ended;
  const toggle = () => set(playing ? { playing: false } : { playing: true, ...(ended ? { at: 0 } : {}) });
  const speed = clock?.speed ?? 1;
  const jump = (by: Seconds) => set({ at: Math.min(duration, Math.max(0, at + by)) });
  const clear = () => void ask({ kind: 'stage', entries: [] });
  useKeys(
    {
      p: toggle,
      ',': () => jump(-1),
      '.': () => jump(1),
      v: () => set({ speed: SPEEDS[(SPEEDS.indexOf(speed) + 1) % SPEEDS.length]! }),
    },
    keysOn,
  );
  return (
    <div className="stage-controls">
      <Button
        className="stage-play"
        icon={<Icon of={playing ? Pause : Play} />}
        shortcut="P"
        onClick={toggle}
      >
        {playing ? desk.showing.pause : desk.showing.play}
      </Button>
      <Button
        look="quiet"
        icon={<Icon of={RotateCcw} />}
        aria-label={desk.showing.again}
        title={desk.showing.again}
        onClick={() => set({ at: 0 })}
      />
      <input
        type="range"
        className="stage-scrub"
        min={0}
        max={Math.max(duration, 0.1)}
        step={0.1}
        value={at}
        aria-label={desk.showing.scrub}
        aria-valuetext={desk.showing.at(at, duration)}
        onChange={(event) => set({ at: Number(event.target.value) })}
      />
      <span className="stage-at">{desk.showing.at(at, duration)}</span>
      <fieldset className="stage-speeds" aria-label={desk.showing.speedWord}>
        {SPEEDS.map((each) => (
          <button key={each} type="button" aria-pressed={speed === each} onClick={() => set({ speed: each })}>
            {desk.showing.speed(each)}
          </button>
        ))}
      </fieldset>
      <Button
        look="quiet"
        icon={<Icon of={X} />}
        aria-label={desk.showing.clear}
        title={desk.showing.clear}
        onClick={clear}
      />
    </div>
  );
}

/** The time for the slider: often enough to look smooth, not at every frame. */
function useShownTime(clock: StageClock | null, duration: Seconds): Seconds {
  const link = useLink();
  const [, setTurn] = useState(0);
  const at = runTime(clock, link.serverNow(), duration);
  const moving = (clock?.playing ?? false) && at < duration;
  useEffect(() => {
    if (!moving) return;
    const timer = setInterval(() => setTurn((turn) => turn + 1), 100);
    return () => clearInterval(timer);
  }, [moving]);
  return at;
}
