import { ChevronLeft, ChevronRight, Plus, Undo2 } from 'lucide-react';
import { useState } from 'react';
import type { Drive } from '../../../shared/prep/driving-rota.ts';
import { DRIVING_LIMITS, type Trial } from '../../../shared/room/driving.ts';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { robotsOf, turnsOf } from '../../parts/driving.ts';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { bestEntry, entryOf } from '../../parts/figures.ts';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useAsk } from '../../parts/use-ask.ts';
import { useWholeWords } from '../whole-words.ts';
import { saidOf } from './said.ts';
import type { Noting } from './use-noting.ts';

/** A drive that has been picked: whose trial is noted next. */
export interface Picked {
  readonly team: string;
  readonly robot: number;
}

interface TurnsProps {
  readonly room: RoomState;
  readonly picked: Picked | null;
  readonly onPick: (picked: Picked) => void;
  readonly noting: Noting;
}

const MINUTES = [2, 3, 4, 5, 8, 10] as const;

/** Which team drives which robot when, and what has been noted of it. */
export function Turns({ room, picked, onPick, noting }: TurnsProps) {
  const { driving } = useWholeWords();
  const [minutes, setMinutes] = useState<number>(4);
  const { turn } = room.driving;
  const turns = turnsOf(room);
  if (room.teams.length === 0) return <p className="desk-quiet">{driving.noTeams}</p>;
  return (
    <>
      <RobotNumbers room={room} />
      {turns.length === 0 && <Notice tone="caution">{driving.noRobots}</Notice>}
      {turns.length > 0 && (
        <div className="trials-bar">
          <TurnSteps room={room} last={turns.length - 1} />
          <label className="trials-minutes">
            {driving.minutes}
            <select value={minutes} onChange={(event) => setMinutes(Number(event.target.value))}>
              {MINUTES.map((each) => (
                <option key={each}>{each}</option>
              ))}
            </select>
          </label>
        </div>
      )}
      <ol className="trials-turns">
        {turns
          .map((drives, place) => ({ drives, place }))
          .map(({ drives, place }) => (
            <li key={place} className="trials-turn" data-now={place === turn}>
              <h3>
                {driving.turn(place + 1)}{' '}
                <span className="desk-quiet">
                  {place < turn
                    ? driving.over
                    : place === turn
                      ? driving.now
                      : driving.inMinutes((place - turn) * minutes)}
                </span>
              </h3>
              <ul>
                {drives.map((drive) => (
                  <DriveRow
                    key={drive.team.id}
                    room={room}
                    drive={drive}
                    on={picked?.team === drive.team.id && picked.robot === drive.robot && place === turn}
                    onPick={onPick}
                    noting={noting}
                  />
                ))}
              </ul>
            </li>
          ))}
      </ol>
    </>
  );
}

/** The number of every robot that there is, pressed where it drives. */
function RobotNumbers({ room }: { readonly room: RoomState }) {
  const { driving } = useWholeWords();
  const { ask, refusal } = useAsk();
  const robots = robotsOf(room);
  const known = [...new Set([...robots, ...room.teams.map(({ berth }) => berth)])].sort((a, b) => a - b);
  const next = (known.at(-1) ?? 0) + 1;
  const toggle = (robot: number) => {
    const rest = robots.filter((each) => each !== robot);
    void ask({ kind: 'set-robots', robots: rest.length < robots.length ? rest : [...robots, robot] });
  };
  return (
    <fieldset className="trials-robots">
      <legend>{driving.robots}</legend>
      {known.map((robot) => (
        <button
          key={robot}
          type="button"
          aria-label={driving.robot(robot)}
          aria-pressed={robots.includes(robot)}
          onClick={() => toggle(robot)}
        >
          {robot}
        </button>
      ))}
      <button
        type="button"
        aria-label={driving.more}
        title={driving.more}
        disabled={known.length >= DRIVING_LIMITS.robots}
        onClick={() => toggle(next)}
      >
        <Icon of={Plus} size={18} />
      </button>
      <p className="desk-quiet">{driving.robotsNote}</p>
      <Refused refusal={refusal} />
    </fieldset>
  );
}

function TurnSteps({ room, last }: { readonly room: RoomState; readonly last: number }) {
  const { driving } = useWholeWords();
  const { ask, busy } = useAsk();
  const { turn } = room.driving;
  const call = (to: number) => void ask({ kind: 'call-turn', turn: to });
  return (
    <p className="trials-steps">
      <Button
        look="quiet"
        icon={<Icon of={ChevronLeft} />}
        aria-label={driving.before}
        title={driving.before}
        disabled={busy || turn === 0}
        onClick={() => call(Math.min(last, turn) - 1)}
      />
      <strong>{driving.turn(turn + 1)}</strong>
      <Button
        look="quiet"
        icon={<Icon of={ChevronRight} />}
        aria-label={driving.next}
        title={driving.next}
        disabled={busy || turn >= DRIVING_LIMITS.turns}
        onClick={() => call(turn + 1)}
      />
    </p>
  );
}

/** Trials of a team in this round that count, each with its place in the list of all. */
function trialsOf(room: RoomState, team: string): (Trial & { readonly place: number })[] {
  const round = room.rounds.length - 1;
  return room.driving.trials
    .map((trial, place) => ({ ...trial, place }))
    .filter(({ entry, withdrawn }) => {
      const of = entryOf(room, entry);
      return !withdrawn && of?.team === team && of.round === round;
    });
}

interface RowProps {
  readonly room: RoomState;
  readonly drive: Drive<Team>;
  readonly on: boolean;
  readonly onPick: (picked: Picked) => void;
  readonly noting: Noting;
}

function DriveRow({ room, drive, on, onPick, noting }: RowProps) {
  const { driving } = useWholeWords();
  const { team, robot, time } = drive;
  const noted = trialsOf(room, team.id)[time];
  const nothing = !bestEntry(room, team.id);
  return (
    <li className="trials-drive" data-on={on}>
      <button
        type="button"
        className="trials-pick"
        aria-pressed={on}
        disabled={nothing}
        onClick={() => onPick({ team: team.id, robot })}
      >
        <kbd>{team.berth}</kbd>
        <EmblemBadge emblem={team.emblem} />
        <span>{driving.robot(noted?.robot ?? robot)}</span>
        <span className={noted ? 'trials-said' : 'desk-quiet'}>
          {noted ? saidOf(noted.outcome, driving) : nothing ? driving.noEntry : driving.waits}
        </span>
      </button>
      {noted && (
        <Button
          look="quiet"
          icon={<Icon of={Undo2} />}
          aria-label={driving.takeBack}
          title={driving.takeBack}
          onClick={() => noting.takeBack(noted.place)}
        />
      )}
    </li>
  );
}
