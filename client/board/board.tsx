import { Unplug } from 'lucide-react';
import type { RoomState } from '../../shared/room/state.ts';
import { Icon } from '../parts/icon.tsx';
import { useLinkState } from '../parts/use-link.tsx';
import { useWakeLock } from '../parts/use-wake-lock.ts';
import { useWords } from '../parts/use-words.ts';
import { BriefScene } from './brief-scene.tsx';
import { BuildingScene } from './building-scene.tsx';
import { NoRoom } from './no-room.tsx';
import { LookHere, Paused, Together } from './quiet-scenes.tsx';
import { type Scene, sceneOf } from './scenes.ts';
import { Signs } from './signs.tsx';
import { BeforeStage, StageScene } from './stage-scene.tsx';
import { StandingsScene } from './standings-scene.tsx';
import { WallScene } from './wall-scene.tsx';

/** The projected page. Nothing on it is pressed; the desk decides what it shows. */
export function Board() {
  // A room that is no more leaves the board.
  const room = useLinkState(({ room: last, status }) => (status.kind === 'refused' ? null : last));
  useWakeLock(room);
  const scene = sceneOf(room);
  return (
    <div className="board">
      <main className="scene" key={scene.kind}>
        <SceneView scene={scene} room={room} />
      </main>
      <LinkSign />
      <Signs />
    </div>
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
  standings: StandingsScene,
  'before-stage': BeforeStage,
  together: Together,
};

function SceneView({ scene, room }: { readonly scene: Scene; readonly room: RoomState | null }) {
  if (scene.kind === 'no-room' || room === null) return <NoRoom />;
  const View = VIEWS[scene.kind];
  return <View room={room} />;
}

/** Says quietly that what is shown may be old. */
function LinkSign() {
  const { board } = useWords();
  const away = useLinkState((state) => state.status.kind === 'away');
  if (!away) return null;
  return (
    <p className="board-sign" role="status">
      <Icon of={Unplug} size="1em" />
      {board.link.away}
    </p>
  );
}
