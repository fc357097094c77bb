import { forecastsIn, reasonsIn } from '../../shared/evidence/evidence.ts';
import { HELP_STEPS } from '../../shared/room/coaching.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { PickOne } from './pick-one.tsx';
import { useWholeWords } from './whole-words.ts';
import './team-learning.css';

/** How much all tablets help. */
export function ClassHelp({ room }: { readonly room: RoomState }) {
  const { learning } = useWholeWords();
  const { ask, refusal } = useAsk();
  return (
    <div className="help-pick">
      <PickOne
        label={learning.help}
        value={room.help}
        options={HELP_STEPS.map((step) => [step, learning.step(step)])}
        onPick={(step) => step && void ask({ kind: 'set-help', team: null, step })}
      />
      <Refused refusal={refusal} />
    </div>
  );
}

/** A team's own help step, its wish about the wall, and how it foretells. Nobody else sees any of it. */
export function TeamLearning({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { learning } = useWholeWords();
  const { ask, refusal } = useAsk();
  return (
    <div className="help-pick">
      <PickOne
        label={learning.teamHelp}
        value={team.help}
        usual={learning.asClass(room.help)}
        options={HELP_STEPS.map((step) => [step, learning.step(step)])}
        onPick={(step) => void ask({ kind: 'set-help', team: team.id, step })}
      />
      <Refused refusal={refusal} />
      <Foretold room={room} team={team} />
      {team.wall !== null && team.wall !== 'shown' && <strong>{learning.wish(team.wall)}</strong>}
    </div>
  );
}

function Foretold({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { learning } = useWholeWords();
  const tries = room.tries.filter((one) => one.team === team.id && one.round === room.rounds.length - 1);
  if (tries.length === 0) return null;
  const reasons = reasonsIn(tries);
  return (
    <p className="desk-quiet">
      {learning.tries(tries.length, forecastsIn(tries).shown)}
      {reasons.of > 0 && `, ${learning.reasons(reasons.of, reasons.shown)}`}
    </p>
  );
}
