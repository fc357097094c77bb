import { Suspense, useEffect } from 'react';
import { conditionsFor } from '../../shared/room/drawn-in.ts';
import { isGentler, type RoomState, type Team } from '../../shared/room/state.ts';
import { DeviceSettingsButton } from '../parts/device-settings-dialog.tsx';
import { currentRound, teamOf } from '../parts/figures.ts';
import { useLinkState } from '../parts/use-link.tsx';
import { useWakeLock } from '../parts/use-wake-lock.ts';
import { useTeamsChallenge } from './gentler.ts';
import { BriefScreen } from './screens/brief.tsx';
import { CloseScreen } from './screens/close.tsx';
import { ConnectingScreen } from './screens/connecting.tsx';
import { DriveScreen } from './screens/drive.tsx';
import { JoinScreen } from './screens/join.tsx';
import { QuietScreen } from './screens/quiet.tsx';
import { RestingScreen } from './screens/resting.tsx';
import { ShowScreen } from './screens/show.tsx';
import { WaitingScreen } from './screens/waiting.tsx';
import { BuildScreen, fetchWork, PredictScreen } from './work.ts';

/** Whatever a team sees, it can choose its language. */
export function App() {
  useEffect(fetchWork, []);
  return (
    <>
      <Screen />
      <DeviceSettingsButton className="device-corner" />
    </>
  );
}

/** Which screen a team sees: where its link stands first, then the step of the lesson. */
function Screen() {
  const status = useLinkState((state) => state.status);
  const room = useLinkState((state) => state.room);
  const you = useLinkState((state) => state.you);
  useWakeLock(you ? room : null);
  if (status.kind === 'quiet') return <QuietScreen />;
  const refused = status.kind === 'refused' ? status.refusal : null;
  // A seat that this page had is another tablet's now, or nobody's.
  if (room && refused?.code === 'no-seat') return <RestingScreen why="moved" />;
  if (room && refused?.code === 'seat-freed') return <RestingScreen why="freed" />;
  const own = you?.role === 'team' ? you.team : null;
  const team = room && own !== null ? teamOf(room, own) : undefined;
  if (room && team) return <RoomScreen room={room} team={team} />;
  if (room?.removed.some((each) => each.id === own)) return <RestingScreen why="removed" />;
  return refused ? <JoinScreen refusal={refused} /> : <ConnectingScreen />;
}

function RoomScreen({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const round = currentRound(room);
  const loaded = useTeamsChallenge(room, team);
  const challenge = loaded.kind === 'here' ? loaded.value : null;
  const gentler = isGentler(room, team.id, round);
  const { variant } = conditionsFor(room, team);
  // While a team draws, the pause lies over the drawing instead.
  if (room.paused !== null && (room.phase !== 'build' || !challenge)) return <RestingScreen why="paused" />;
  if (room.phase === 'gather') return <WaitingScreen room={room} team={team} />;
  if (room.phase === 'close') return <CloseScreen room={room} team={team} />;
  if (room.phase === 'drive') return <DriveScreen room={room} team={team} />;
  if (!challenge) return <WaitingScreen room={room} team={team} />;
  if (room.phase === 'brief') return <BriefScreen room={room} team={team} challenge={challenge} />;
  if (room.phase === 'show') return <ShowScreen room={room} team={team} challenge={challenge} />;
  const Work = challenge.play === 'predict' ? PredictScreen : BuildScreen;
  return (
    <Suspense fallback={<ConnectingScreen />}>
      <Work
        key={`${room.id} ${team.id} ${round} ${team.moves} ${gentler} ${variant}`}
        room={room}
        team={team}
        round={round}
        challenge={challenge}
      />
    </Suspense>
  );
}
