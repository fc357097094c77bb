import type { RoomState, Team } from '../../shared/room/state.ts';
import { currentRound, teamOf } from '../parts/figures.ts';
import { useDocument } from '../parts/use-document.ts';
import { useLinkState } from '../parts/use-link.tsx';
import { BuildScreen } from './build/build-screen.tsx';
import { PredictScreen } from './predict/predict-screen.tsx';
import { BriefScreen } from './screens/brief.tsx';
import { CloseScreen } from './screens/close.tsx';
import { ConnectingScreen } from './screens/connecting.tsx';
import { JoinScreen } from './screens/join.tsx';
import { QuietScreen } from './screens/quiet.tsx';
import { ShowScreen } from './screens/show.tsx';
import { WaitingScreen } from './screens/waiting.tsx';

/** Which screen a team sees: where its link stands first, then the step of the lesson. */
export function App() {
  const status = useLinkState((state) => state.status);
  const room = useLinkState((state) => state.room);
  const you = useLinkState((state) => state.you);
  if (status.kind === 'quiet') return <QuietScreen />;
  const team = room && you?.role === 'team' ? teamOf(room, you.team) : undefined;
  if (room && team) return <RoomScreen room={room} team={team} />;
  return status.kind === 'refused' ? <JoinScreen refusal={status.refusal} /> : <ConnectingScreen />;
}

function RoomScreen({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const round = currentRound(room);
  const challenge = useDocument('challenge', room.rounds[round]?.challenge ?? null);
  if (room.phase === 'gather') return <WaitingScreen team={team} />;
  if (room.phase === 'close') return <CloseScreen room={room} team={team} />;
  if (challenge.kind !== 'here') return <WaitingScreen team={team} />;
  if (room.phase === 'brief') return <BriefScreen team={team} challenge={challenge.value} />;
  if (room.phase === 'show') return <ShowScreen room={room} team={team} challenge={challenge.value} />;
  const Screen = challenge.value.play === 'predict' ? PredictScreen : BuildScreen;
  return (
    <Screen
      key={`${room.id} ${team.id} ${round}`}
      room={room}
      team={team}
      round={round}
      challenge={challenge.value}
    />
  );
}
