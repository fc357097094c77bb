import { CircleCheck, Plus, Sun, Undo2 } from 'lucide-react';
import { useState } from 'react';
import { type Calibrated, calibrationOf, LIGHTS, type Light } from '../../../shared/room/calibration.ts';
import { DRIVING_LIMITS } from '../../../shared/room/driving.ts';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import { berthsFor } from '../../parts/berths.ts';
import { Button } from '../../parts/button.tsx';
import { type Dates, useDates } from '../../parts/dates.ts';
import { emblemIcon } from '../../parts/emblem-icons.ts';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useAsk } from '../../parts/use-ask.ts';
import { useUndoable } from '../use-undoable.ts';
import { useWholeWords } from '../whole-words.ts';
import './robots.css';

interface RoomProps {
  readonly room: RoomState;
}

/** The berths of the wall with the robots in them: a tap notes that one was calibrated, now and in this light. */
export function RobotsOnWall({ room }: RoomProps) {
  const { calibration: words, driving } = useWholeWords();
  const { askUndoable, refusal } = useUndoable();
  const [added, setAdded] = useState<readonly number[]>([]);
  const last = room.calibrations.findLast((note) => note.kind === 'calibrated');
  const [picked, setPicked] = useState<Light | null>(null);
  const light = picked ?? last?.light ?? 'daylight';
  const calibrate = (robot: number) =>
    askUndoable(
      { kind: 'calibrate', robot, light },
      { kind: 'take-calibration-back', robot },
      words.undo.calibrated(robot, light),
    );
  const robots = robotsHere(room, added);
  const next = robots.at(-1)! + 1;
  return (
    <div className="robots">
      <p>{words.how}</p>
      <LightChoice light={light} onPick={setPicked} />
      <ol className="robot-berths">
        {robots.map((robot) => (
          <Berth
            key={robot}
            robot={robot}
            team={room.teams.find(({ berth }) => berth === robot)}
            standing={calibrationOf(room.calibrations, robot)}
            onTap={() => void calibrate(robot)}
          />
        ))}
      </ol>
      <p>
        <Button
          icon={<Icon of={Plus} />}
          disabled={next > DRIVING_LIMITS.robotNumber}
          onClick={() => setAdded([...added, next])}
        >
          {driving.more}
        </Button>
      </p>
      <Refused refusal={refusal} />
      <LightChanged room={room} />
      <Log room={room} />
    </div>
  );
}

/** One for each berth, and whichever else drive, were calibrated, or were `added` here; lowest first. */
function robotsHere({ teams, driving, calibrations }: RoomState, added: readonly number[]): number[] {
  const berths = Array.from({ length: berthsFor(teams.length) }, (_, i) => i + 1);
  const noted = calibrations.flatMap((note) => (note.kind === 'calibrated' ? [note.robot] : []));
  const all = new Set([...berths, ...(driving.robots ?? []), ...noted, ...added]);
  return [...all].sort((a, b) => a - b);
}

interface LightProps {
  readonly light: Light;
  readonly onPick: (light: Light) => void;
}

function LightChoice({ light, onPick }: LightProps) {
  const { calibration: words } = useWholeWords();
  return (
    <fieldset className="robot-light">
      <legend>{words.light}</legend>
      {LIGHTS.map((each) => (
        <label key={each} data-on={each === light}>
          <input type="radio" name="light" checked={each === light} onChange={() => onPick(each)} />
          {words.lightIs(each)}
        </label>
      ))}
    </fieldset>
  );
}

/** The time of day, or the day where that was another one. */
const shortly = (dates: Dates, at: number): string =>
  dates.day(at) === dates.day(Date.now()) ? dates.time(at) : dates.day(at);

interface BerthProps {
  readonly robot: number;
  readonly team: Team | undefined;
  readonly standing: Calibrated | undefined;
  readonly onTap: () => void;
}

function Berth({ robot, team, standing, onTap }: BerthProps) {
  const { calibration: words, emblems } = useWholeWords();
  const dates = useDates();
  const stands = standing === undefined ? 'not' : standing.due ? 'due' : 'done';
  return (
    <li>
      <button type="button" className="robot-berth" data-stands={stands} onClick={onTap}>
        <span className="only-read-aloud">{words.robot(robot)}</span>
        <span className="robot-number" aria-hidden="true">
          {robot}
        </span>
        {team && <Icon of={emblemIcon(team.emblem)} size={22} label={emblems.name(team.emblem)} />}
        {stands === 'done' && <Icon of={CircleCheck} size={18} />}
        <span className="robot-said">
          {standing === undefined
            ? words.not
            : standing.due
              ? words.due
              : words.done(standing.light, shortly(dates, standing.at))}
        </span>
      </button>
    </li>
  );
}

function LightChanged({ room }: RoomProps) {
  const { calibration: words } = useWholeWords();
  const { askUndoable, refusal, busy } = useUndoable();
  const change = () =>
    askUndoable({ kind: 'change-light', on: true }, { kind: 'change-light', on: false }, words.undo.changed);
  const standings = new Set(
    room.calibrations.flatMap((note) => (note.kind === 'calibrated' ? [note.robot] : [])),
  );
  const done = [...standings].filter((robot) => calibrationOf(room.calibrations, robot)?.due === false);
  const of = Math.max(room.teams.length, standings.size);
  return (
    <div className="robot-change">
      <p role="status">{words.count(done.length, of)}</p>
      <Button icon={<Icon of={Sun} />} disabled={busy || done.length === 0} onClick={() => void change()}>
        {words.changed}
      </Button>
      <p className="desk-quiet">{words.changedNote}</p>
      <Refused refusal={refusal} />
    </div>
  );
}

/** Everything that was noted, the newest first, with the way to take a wrong tap back. */
function Log({ room }: RoomProps) {
  const { calibration: words } = useWholeWords();
  const { ask, refusal } = useAsk();
  const dates = useDates();
  const log = room.calibrations;
  const lines = log.map((note, place) => ({ note, place })).reverse();
  const isNewest = (robot: number, place: number) =>
    log.findLastIndex((note) => note.kind === 'calibrated' && note.robot === robot) === place;
  return (
    <details className="robot-log">
      <summary>{words.log}</summary>
      {log.length === 0 && <p>{words.logNone}</p>}
      <ol>
        {lines.map(({ note, place }) => (
          <li key={place}>
            <span>
              <time dateTime={new Date(note.at).toISOString()}>{dates.moment(note.at)}</time>{' '}
              {note.kind === 'calibrated' ? words.line(note.robot, note.light) : words.lineChanged}
            </span>
            {note.kind === 'calibrated' && isNewest(note.robot, place) && (
              <Button
                look="quiet"
                icon={<Icon of={Undo2} />}
                aria-label={words.takeBack(note.robot)}
                title={words.takeBack(note.robot)}
                onClick={() => void ask({ kind: 'take-calibration-back', robot: note.robot })}
              />
            )}
          </li>
        ))}
      </ol>
      <Refused refusal={refusal} />
    </details>
  );
}
