import { useId } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { WEATHERS, type Weather } from '../../shared/documents/outlook.ts';
import { weatherOf } from '../../shared/library/conditions.ts';
import { type ConditionsCommand, ownOf } from '../../shared/room/conditions.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useLink } from '../parts/use-link.tsx';
import { useDesk } from './desk-store.ts';
import { useWholeWords } from './whole-words.ts';
import './team-learning.css';

interface ClassProps {
  readonly room: RoomState;
  /** As it was chosen, whatever the desk has said since. */
  readonly challenge: Challenge;
}

/** The weather that the class's robots are driven in. Answers are about the undisturbed robot alone. */
export function ClassWeather({ room, challenge }: ClassProps) {
  const { desk } = useWholeWords();
  const { set, refusal } = useSetting();
  const before = room.conditions.weather;
  const own = weatherOf(challenge);
  if (challenge.play === 'predict') return null;
  return (
    <div className="help-pick">
      <Pick
        label={desk.conditions.weather}
        value={before}
        usual={desk.conditions.asChallenge(own)}
        onPick={(weather) =>
          set(
            { kind: 'set-weather', team: null, weather },
            { kind: 'set-weather', team: null, weather: before },
            desk.undo.weather(weather ?? own),
          )
        }
      />
      <p className="desk-quiet">{desk.conditions.from}</p>
      <Refused refusal={refusal} />
    </div>
  );
}

/** The same for one team. Nobody else sees it. */
export function TeamWeather({ room, team, challenge }: ClassProps & { readonly team: Team }) {
  const { desk, emblems } = useWholeWords();
  const { set, refusal } = useSetting();
  const before = ownOf(room.conditions, team.id).weather;
  const ofClass = room.conditions.weather ?? weatherOf(challenge);
  if (challenge.play === 'predict') return null;
  return (
    <div className="help-pick">
      <Pick
        label={desk.conditions.teamWeather}
        value={before}
        usual={desk.conditions.asClass(ofClass)}
        onPick={(weather) =>
          set(
            { kind: 'set-weather', team: team.id, weather },
            { kind: 'set-weather', team: team.id, weather: before },
            desk.undo.teamWeather(emblems.name(team.emblem), weather ?? ofClass),
          )
        }
      />
      <Refused refusal={refusal} />
    </div>
  );
}

/** Sends a command, and offers to send the one that takes it back. */
function useSetting() {
  const { ask, refusal } = useAsk();
  const link = useLink();
  const offerUndo = useDesk((state) => state.offerUndo);
  const set = async (command: ConditionsCommand, back: ConditionsCommand, said: string) => {
    if (await ask(command)) offerUndo({ said, back: () => void link.command(back) });
  };
  return { set, refusal };
}

interface PickProps {
  readonly label: string;
  readonly value: Weather | null;
  /** What having none of its own comes to. */
  readonly usual: string;
  readonly onPick: (weather: Weather | null) => void;
}

function Pick({ label, value, usual, onPick }: PickProps) {
  const { outlook } = useWholeWords();
  const id = useId();
  return (
    <div className="help-step">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value ?? ''}
        onChange={(event) => onPick(WEATHERS.find((weather) => weather === event.target.value) ?? null)}
      >
        <option value="">{usual}</option>
        {WEATHERS.map((weather) => (
          <option key={weather} value={weather}>
            {outlook.weather(weather)}
          </option>
        ))}
      </select>
    </div>
  );
}
