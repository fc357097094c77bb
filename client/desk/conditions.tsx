import type { Challenge } from '../../shared/documents/challenge.ts';
import { WEATHERS, type Weather } from '../../shared/documents/outlook.ts';
import { weatherOf } from '../../shared/library/conditions.ts';
import { OWN_SHEETS, type OwnSheet, ownOf } from '../../shared/room/conditions.ts';
import { variantFor, variantOn } from '../../shared/room/drawn-in.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { Refused } from '../parts/refusal.tsx';
import { onSheetOf } from '../parts/variants.ts';
import { PickOne, type PickOneProps } from './pick-one.tsx';
import { useUndoable } from './use-undoable.ts';
import { useWholeWords } from './whole-words.ts';
import './team-coaching.css';
import './team-learning.css';

interface ClassProps {
  readonly room: RoomState;
  /** As it was chosen, whatever the desk has said since. */
  readonly challenge: Challenge;
}

interface TeamProps extends ClassProps {
  readonly team: Team;
}

/** The weather that the class's robots are driven in. Answers are about the undisturbed robot alone. */
export function ClassWeather({ room, challenge }: ClassProps) {
  const { desk } = useWholeWords();
  const { askUndoable, refusal } = useUndoable();
  const before = room.conditions.weather;
  const usual = weatherOf(challenge);
  if (challenge.play === 'predict') return null;
  const pick = (weather: Weather | null) =>
    void askUndoable(
      { kind: 'set-weather', team: null, weather },
      { kind: 'set-weather', team: null, weather: before },
      desk.undo.weather(weather ?? usual),
    );
  return (
    <div className="help-pick">
      <WeatherPick
        label={desk.conditions.weather}
        value={before}
        usual={desk.conditions.asChallenge(usual)}
        onPick={pick}
      />
      {room.building && <p className="desk-quiet">{desk.conditions.from}</p>}
      <Refused refusal={refusal} />
    </div>
  );
}

/** Weather and sheet of one team. Nobody else sees either, but for a drawing that is shown on its sheet. */
export function TeamConditions(props: TeamProps) {
  const { desk, outlook } = useWholeWords();
  const { room, team, challenge } = props;
  const { weather, sheet } = ownOf(room.conditions, team.id);
  if (challenge.play === 'predict') return null;
  const said = [weather && outlook.weather(weather), sheet && desk.conditions.sheet(sheet)].filter(Boolean);
  return (
    <details className="team-said">
      <summary>
        {desk.conditions.ofTeam}
        {said.length > 0 && `: ${said.join(', ')}`}
      </summary>
      <div className="help-pick">
        <TeamWeather {...props} />
        <TeamSheet {...props} />
      </div>
    </details>
  );
}

function TeamWeather({ room, team, challenge }: TeamProps) {
  const { desk, emblems } = useWholeWords();
  const { askUndoable, refusal } = useUndoable();
  const before = ownOf(room.conditions, team.id).weather;
  const usual = room.conditions.weather ?? weatherOf(challenge);
  const pick = (weather: Weather | null) =>
    void askUndoable(
      { kind: 'set-weather', team: team.id, weather },
      { kind: 'set-weather', team: team.id, weather: before },
      desk.undo.teamWeather(emblems.name(team.emblem), weather ?? usual),
    );
  return (
    <>
      <WeatherPick
        label={desk.conditions.teamWeather}
        value={before}
        usual={desk.conditions.asClass(usual)}
        onPick={pick}
      />
      <Refused refusal={refusal} />
    </>
  );
}

function TeamSheet({ room, team, challenge }: TeamProps) {
  const { desk, emblems } = useWholeWords();
  const { askUndoable, refusal } = useUndoable();
  const before = ownOf(room.conditions, team.id).sheet;
  const round = room.rounds.at(-1);
  // A chart that can't say left for right has no mirrored sheets.
  const mirrored = onSheetOf({ variant: 'mirrored', weather: null }, challenge);
  const sheets = OWN_SHEETS.filter((sheet) => sheet !== 'mirrored' || mirrored !== challenge);
  const pick = (sheet: OwnSheet | null) => {
    const now = desk.conditions.sheet(variantOn(sheet, round, team) ?? 'as-drawn');
    void askUndoable(
      { kind: 'set-sheet', team: team.id, sheet },
      { kind: 'set-sheet', team: team.id, sheet: before },
      desk.undo.sheet(emblems.name(team.emblem), now),
    );
  };
  return (
    <>
      <PickOne
        label={desk.conditions.teamSheet}
        value={before}
        usual={desk.conditions.asBerth(variantFor(round, team))}
        options={sheets.map((sheet) => [sheet, desk.conditions.sheet(sheet)])}
        onPick={pick}
      />
      <p className="desk-quiet">{desk.conditions.sheetHow}</p>
      <Refused refusal={refusal} />
    </>
  );
}

type WeatherPickProps = Omit<PickOneProps<Weather>, 'options'>;

function WeatherPick(props: WeatherPickProps) {
  const { outlook } = useWholeWords();
  return <PickOne {...props} options={WEATHERS.map((weather) => [weather, outlook.weather(weather)])} />;
}
