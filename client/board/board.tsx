import { Camera, Unplug } from 'lucide-react';
import { useEffect } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import { useLinkState } from '../parts/use-link.tsx';
import { useWakeLock } from '../parts/use-wake-lock.ts';
import { useWords } from '../parts/use-words.ts';
import { BoardSign } from './board-sign.tsx';
import { BriefScene } from './brief-scene.tsx';
import { BuildingScene } from './building-scene.tsx';
import { useCalm } from './calm.ts';
import { CheckScene } from './check-scene.tsx';
import { DrivingScene } from './driving-scene.tsx';
import { FleetScene } from './fleet-scene.tsx';
import { ForecastScene } from './forecast-scene.tsx';
import { GalleryScene } from './gallery-scene.tsx';
import { NoRoom } from './no-room.tsx';
import { LookHere, Paused } from './quiet-scenes.tsx';
import { type Scene, sceneOf } from './scenes.ts';
import { Signs } from './signs.tsx';
import { Sound } from './sound.tsx';
import { BeforeStage, StageScene } from './stage-scene.tsx';
import { StandingsScene } from './standings-scene.tsx';
import { StillPicture } from './still-picture.tsx';
import { Together } from './together.tsx';
import { WallScene } from './wall-scene.tsx';

/** A room that is no more leaves the board. */
const useRoom = (): RoomState | null =>
  useLinkState(({ room, status }) => (status.kind === 'refused' ? null : room));

/** The projected page. Nothing on it is pressed; the desk decides what it shows. */
export function Board() {
  const { board, scenes } = useWords();
  const room = useRoom();
  const away = useLinkState((state) => state.status.kind === 'away');
  useWakeLock(room);
  useGround(room?.board.dark ?? false);
  return (
    <div className="board">
      <StillPicture>
        <Now />
      </StillPicture>
      {room?.board.still && <BoardSign icon={Camera} words={scenes.still} />}
      {away && <BoardSign icon={Unplug} words={board.link.away} />}
      <Signs />
    </div>
  );
}

const isSame = (value: boolean): string => String(value);

/** Light ink on a dark ground, or dark on light. */
function useGround(wanted: boolean): void {
  const dark = useCalm(wanted, isSame);
  useEffect(() => {
    document.documentElement.dataset.ground = dark ? 'dark' : 'light';
  }, [dark]);
}

const kindOf = ({ kind }: Scene): string => kind;

/** The scene as it is, or as it was when it was stopped. */
function Now() {
  const room = useRoom();
  const scene = useCalm(sceneOf(room), kindOf);
  return (
    <>
      <main className="scene" key={scene.kind}>
        <SceneView scene={scene} room={room} />
      </main>
      {room?.board.sound && <Sound room={room} scene={scene.kind} />}
    </>
  );
}

const VIEWS: Readonly<
  Record<Exclude<Scene['kind'], 'no-room'>, (props: { room: RoomState }) => React.ReactNode>
> = {
  paused: Paused,
  'look-here': LookHere,
  wall: WallScene,
  brief: BriefScene,
  building: BuildingScene,
  stage: StageScene,
  gallery: GalleryScene,
  fleet: FleetScene,
  forecast: ForecastScene,
  standings: StandingsScene,
  'before-stage': BeforeStage,
  check: CheckScene,
  driving: DrivingScene,
  together: Together,
};

function SceneView({ scene, room }: { readonly scene: Scene; readonly room: RoomState | null }) {
  if (scene.kind === 'no-room' || room === null) return <NoRoom />;
  const View = VIEWS[scene.kind];
  return <View room={room} />;
}
