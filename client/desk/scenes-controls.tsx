import { useId } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { WEATHERS, type Weather } from '../../shared/documents/outlook.ts';
import type { Entry, RoomState } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { teamOf } from '../parts/figures.ts';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { givesMarks } from '../parts/use-forecast.ts';
import { drawingsFor, galleryOf, pagesOf } from './scenes-choose.ts';
import { ClosingControls } from './scenes-closing.tsx';
import { ForecastControls } from './scenes-forecast.tsx';
import { GO_ON_KEY, useGoOn } from './scenes-keys.ts';
import { useWholeWords } from './whole-words.ts';

export interface ControlsProps {
  readonly room: RoomState;
  readonly challenge: Challenge | null;
}

/** What the chosen scene lets the desk do; nothing for scenes that need nothing. */
export function SceneControls({ room, challenge }: ControlsProps) {
  const { scene } = room.board;
  const closing = scene === 'closing' || (scene === null && room.phase === 'close');
  if (closing) return <ClosingControls room={room} />;
  if (scene === 'gallery') return <GalleryControls room={room} challenge={challenge} />;
  if (scene === 'fleet') return <FleetControls room={room} challenge={challenge} />;
  if (scene !== 'forecast') return null;
  return (
    <ForecastControls
      room={room}
      pick={(ask) => (
        <DrawingPick
          room={room}
          entries={drawingsFor(room, challenge)}
          given={challenge !== null && givesMarks(challenge)}
          chosen={room.board.forecast?.hung?.entry ?? null}
          onPick={(entry) => ask({ kind: 'foretell', entry })}
        />
      )}
    />
  );
}

function GalleryControls({ room, challenge }: ControlsProps) {
  const { scenes } = useWholeWords();
  const { ask, refusal } = useAsk();
  const pages = pagesOf(galleryOf(room, drawingsFor(room, challenge)));
  const first = room.board.gallery[0]?.entry;
  const page = pages.findIndex((ids) => ids[0] === first);
  const next = pages[(page + 1) % Math.max(1, pages.length)];
  const hang = () => next && void ask({ kind: 'hang', entries: next });
  useGoOn(pages.length > 1 ? hang : undefined);
  if (pages.length < 2) return null;
  return (
    <div className="scene-controls">
      <span>{scenes.page(page + 1, pages.length)}</span>
      <Button shortcut={GO_ON_KEY} onClick={hang}>
        {scenes.nextPage}
      </Button>
      <Refused refusal={refusal} />
    </div>
  );
}

function FleetControls({ room, challenge }: ControlsProps) {
  const { scenes, outlook } = useWholeWords();
  const { ask, refusal } = useAsk();
  const { fleet } = room.board;
  const show = (entry: string, weather: Weather) => void ask({ kind: 'show-fleet', entry, weather });
  const again = () => fleet && show(fleet.entry, fleet.weather);
  useGoOn(again);
  if (!fleet) return null;
  return (
    <div className="scene-controls">
      <DrawingPick
        room={room}
        entries={drawingsFor(room, challenge)}
        given={false}
        chosen={fleet.entry}
        onPick={(entry) => entry !== null && show(entry, fleet.weather)}
      />
      <fieldset className="scenes-list" aria-label={scenes.weather}>
        {WEATHERS.map((weather) => (
          <button
            key={weather}
            type="button"
            aria-pressed={fleet.weather === weather}
            onClick={() => show(fleet.entry, weather)}
          >
            {outlook.weather(weather)}
          </button>
        ))}
      </fieldset>
      <Button shortcut={GO_ON_KEY} onClick={again}>
        {scenes.again}
      </Button>
      <Refused refusal={refusal} />
    </div>
  );
}

interface DrawingPickProps {
  readonly room: RoomState;
  readonly entries: readonly Entry[];
  /** Whether what the challenge itself gives may be chosen too. */
  readonly given: boolean;
  readonly chosen: string | null;
  readonly onPick: (entry: string | null) => void;
}

function DrawingPick({ room, entries, given, chosen, onPick }: DrawingPickProps) {
  const { desk, emblems, scenes } = useWholeWords();
  const id = useId();
  const named = ({ team, number }: Entry) =>
    desk.showing.entry(emblems.name(teamOf(room, team)?.emblem ?? ''), number);
  return (
    <span className="drawing-pick">
      <label htmlFor={id}>{scenes.drawing}</label>
      <select
        id={id}
        value={chosen ?? ''}
        onChange={({ target }) => onPick(target.value === '' ? null : target.value)}
      >
        {given && <option value="">{scenes.foretell.given}</option>}
        {entries.map((entry) => (
          <option key={entry.id} value={entry.id}>
            {named(entry)}
          </option>
        ))}
      </select>
    </span>
  );
}
