import type { Seconds } from '../../shared/geometry/units.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { SensorBar } from '../parts/sensor-bar.tsx';
import { useStageLook, useStageTime } from '../parts/stage-clock.ts';
import { useLinkState } from '../parts/use-link.tsx';
import { type Staged, stageDuration } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { Outcome } from './outcome.tsx';
import { logSays, RunLog, type RunLogProps } from './run-log.tsx';
import { Replay } from './stage-replay.tsx';
import { StandingsSide } from './standings.tsx';
import { useSlowTime } from './use-slow-time.ts';

/** One drawing being driven. */
export function Single({ room, staged }: { readonly room: RoomState; readonly staged: Staged }) {
  const { sensors, whole } = useStageLook();
  const duration = stageDuration([staged]);
  const logged = room.standingsShown || staged.answers ? undefined : staged.traces[0];
  return (
    <div className={`stage ${room.standingsShown ? 'stage-beside' : logged ? 'stage-logged' : ''}`}>
      <Replay staged={staged} duration={duration} />
      <div className="stage-side">
        <Outcome staged={staged} duration={duration} />
        <OneWay staged={staged} />
        <Slow />
        {sensors && !whole && <Bar staged={staged} duration={duration} />}
      </div>
      {logged && <RunLogNow kit={staged.challenge.kit} trace={logged} duration={duration} />}
      {room.standingsShown && <StandingsSide room={room} onStage={staged.team} />}
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

/** Nobody may take slow motion for a slow robot. */
function Slow() {
  const { stage } = useWords();
  const speed = useLinkState((state) => state.stageClock?.speed ?? 1);
  return speed < 1 ? <p className="stage-slow">{stage.slow(speed)}</p> : null;
}

interface PartProps {
  readonly staged: Staged;
  readonly duration: Seconds;
}

/** What the sensors of the first robot read. */
function Bar({ staged, duration }: PartProps) {
  const { challenge, judged, traces } = staged;
  const timeAt = useStageTime(duration);
  const trace = traces[0];
  const bar = trace && judged.bars?.[judged.traces.indexOf(trace)];
  return bar ? <SensorBar kit={challenge.kit} bar={bar} timeAt={timeAt} /> : null;
}

function RunLogNow({
  duration,
  ...props
}: Pick<RunLogProps, 'kit' | 'trace'> & { readonly duration: Seconds }) {
  const { whole } = useStageLook();
  const t = useSlowTime(useStageTime(duration), (t) => logSays(props.trace, t));
  return <RunLog {...props} t={whole ? duration : t} numbered={whole} />;
}
