import { useId } from 'react';
import { forecastsIn, reasonsIn } from '../../shared/evidence/evidence.ts';
import { HELP_STEPS, type HelpStep } from '../../shared/room/coaching.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useWholeWords } from './whole-words.ts';
import './team-learning.css';

/** How much all tablets help. */
export function ClassHelp({ room }: { readonly room: RoomState }) {
  const { learning } = useWholeWords();
  const { ask, refusal } = useAsk();
  return (
    <div className="help-pick">
      <StepPick
        label={learning.help}
        value={room.help}
        onPick={(step) => step !== AS_CLASS && void ask({ kind: 'set-help', team: null, step })}
      />
      <Refused refusal={refusal} />
    </div>
  );
}

/** The value that stands for no step of one's own. */
const AS_CLASS = '';
type Picked = HelpStep | typeof AS_CLASS;

interface StepPickProps {
  readonly label: string;
  readonly value: Picked;
  /** What having no step of its own comes to. */
  readonly asClass?: string;
  readonly onPick: (step: Picked) => void;
}

function StepPick({ label, value, asClass, onPick }: StepPickProps) {
  const { learning } = useWholeWords();
  const id = useId();
  return (
    <div className="help-step">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onPick(event.target.value as Picked)}>
        {asClass !== undefined && <option value={AS_CLASS}>{asClass}</option>}
        {HELP_STEPS.map((step) => (
          <option key={step} value={step}>
            {learning.step(step)}
          </option>
        ))}
      </select>
    </div>
  );
}

/** A team's own help step, its wish about the wall, and how it foretells. Nobody else sees any of it. */
export function TeamLearning({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { learning } = useWholeWords();
  const { ask, refusal } = useAsk();
  const set = (step: Picked) => void ask({ kind: 'set-help', team: team.id, step: step || null });
  return (
    <div className="help-pick">
      <StepPick
        label={learning.teamHelp}
        value={team.help ?? AS_CLASS}
        asClass={learning.asClass(room.help)}
        onPick={set}
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
