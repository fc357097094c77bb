import { Volume2 } from 'lucide-react';
import { useMemo } from 'react';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { useStageTime } from '../parts/stage-clock.ts';
import { useForecast, useForecastTime } from '../parts/use-forecast.ts';
import { stageDuration, useStage } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { BoardSign } from './board-sign.tsx';
import type { Scene } from './scenes.ts';
import { tonesOf, useTones } from './tones.ts';

/** Tones of what is driven on the board, once the desk has turned them on. */
export function Sound({ room, scene }: { readonly room: RoomState; readonly scene: Scene['kind'] }) {
  if (scene === 'stage') return <StageSound room={room} />;
  return scene === 'forecast' ? <ForecastSound room={room} /> : null;
}

function StageSound({ room }: { readonly room: RoomState }) {
  const stage = useStage(room);
  const traces = useMemo(() => (stage ?? []).flatMap((staged) => staged.traces), [stage]);
  return <Tones traces={traces} timeAt={useStageTime(stageDuration(stage ?? []))} />;
}

function ForecastSound({ room }: { readonly room: RoomState }) {
  const forecast = useForecast(room);
  const timeAt = useForecastTime(room.board.forecast, forecast);
  const traces = useMemo(() => (forecast.kind === 'here' ? [forecast.trace] : []), [forecast]);
  return <Tones traces={traces} timeAt={timeAt} />;
}

interface TonesProps {
  readonly traces: readonly Trace[];
  readonly timeAt: () => Seconds;
}

function Tones({ traces, timeAt }: TonesProps) {
  const { scenes } = useWords();
  const { waits } = useTones(
    useMemo(() => tonesOf(traces), [traces]),
    timeAt,
  );
  return waits ? <BoardSign icon={Volume2} words={scenes.soundWaits} /> : null;
}
