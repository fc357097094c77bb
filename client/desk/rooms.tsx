import { Ellipsis, FileUp } from 'lucide-react';
import { useCallback, useEffect, useId, useRef, useState } from 'react';
import type { ErasedRoom, RoomInList } from '../../shared/wire/desks.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { useDates } from '../parts/dates.ts';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import { Refused } from '../parts/refusal.tsx';
import { RoomKeeping } from './room-keeping.tsx';
import { goToRoom, listErased, listRooms, openRoom, restoreRoom } from './session.ts';
import { useWholeWords } from './whole-words.ts';

/** A room that is erased within so long says so without being asked, ms. */
const SOON_MS = 14 * 24 * 3_600_000;

interface Listed {
  readonly rooms: readonly RoomInList[];
  readonly erased: readonly ErasedRoom[];
}

function useRooms() {
  const [listed, setListed] = useState<Listed | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const load = useCallback(async () => {
    const [rooms, erased] = await Promise.all([listRooms(), listErased()]);
    if (!rooms.ok) return setRefusal(rooms.refusal);
    setRefusal(null);
    setListed({ rooms: rooms.value, erased: erased.ok ? erased.value : [] });
  }, []);
  useEffect(() => void load(), [load]);
  return { listed, refusal, load };
}

/** The rooms of this desk, newest first: to go on with one, to keep it or to erase it. */
export function RoomList() {
  const { desk } = useWholeWords();
  const { listed, refusal, load } = useRooms();
  const [kept, setKept] = useState<RoomInList | null>(null);
  const { openNext, trouble } = useNextLesson();
  return (
    <section className="prepare-box" aria-labelledby="rooms-title">
      <h2 id="rooms-title">{desk.preparing.roomsTitle}</h2>
      <Refused refusal={refusal ?? trouble} />
      {listed === null && refusal === null && <p className="prepare-quiet">{desk.preparing.roomsLoading}</p>}
      {listed?.rooms.length === 0 && <p className="prepare-quiet">{desk.preparing.roomsNone}</p>}
      {listed && <ErasedSoon rooms={listed.rooms} />}
      {listed && listed.rooms.length > 0 && (
        <ul className="prepare-rooms">
          {listed.rooms.map((room) => (
            <RoomRow
              key={room.room}
              room={room}
              onKeep={() => setKept(room)}
              onNext={() => void openNext(room)}
            />
          ))}
        </ul>
      )}
      {listed && <Erased rooms={listed.erased} />}
      <RoomKeeping room={kept} onClose={() => setKept(null)} onChange={() => void load()} />
    </section>
  );
}

/** Opens a room for a class that comes back: its emblems and berths, what is left of its queue, its help. */
function useNextLesson() {
  const [trouble, setTrouble] = useState<WireRefusal | null>(null);
  const openNext = async ({ room }: RoomInList) => {
    setTrouble(null);
    const answer = await openRoom(false, room);
    if (answer.ok) goToRoom(answer.value.room);
    else setTrouble(answer.refusal);
  };
  return { openNext, trouble };
}

function ErasedSoon({ rooms }: { readonly rooms: readonly RoomInList[] }) {
  const { keeping } = useWholeWords().desk;
  const dates = useDates();
  const soon = rooms.filter(({ erasedOn }) => erasedOn !== null && erasedOn - Date.now() < SOON_MS);
  return soon.map(({ room, word, erasedOn }) => (
    <Notice key={room} tone="caution">
      {keeping.soon(word, dates.day(erasedOn ?? 0))}
    </Notice>
  ));
}

function Erased({ rooms }: { readonly rooms: readonly ErasedRoom[] }) {
  const { keeping } = useWholeWords().desk;
  const dates = useDates();
  if (rooms.length === 0) return null;
  return (
    <details className="prepare-erased">
      <summary>{keeping.erasedTitle}</summary>
      <ul>
        {rooms.map(({ room, word, at, why }) => (
          <li key={room} className="prepare-quiet">
            {keeping.erased(word, dates.day(at), why)}
          </li>
        ))}
      </ul>
    </details>
  );
}

interface RowProps {
  readonly room: RoomInList;
  readonly onKeep: () => void;
  readonly onNext: () => void;
}

function RoomRow({ room, onKeep, onNext }: RowProps) {
  const { preparing, keeping } = useWholeWords().desk;
  const dates = useDates();
  return (
    <li className="prepare-room">
      <span>
        <strong>{room.word}</strong>
        <br />
        <span className="prepare-quiet">
          {preparing.openedAt(dates.moment(room.openedAt))}
          {room.erasedOn !== null && `, ${keeping.until(dates.day(room.erasedOn))}`}
        </span>
      </span>
      <span className="prepare-room-acts">
        {room.managed && (
          <Button
            look="quiet"
            icon={<Icon of={Ellipsis} />}
            aria-label={keeping.moreOf(room.word)}
            title={keeping.more}
            onClick={onKeep}
          />
        )}
        {room.managed && (
          <Button aria-label={preparing.nextLessonOf(room.word)} onClick={onNext}>
            {preparing.nextLesson}
          </Button>
        )}
        <Button aria-label={preparing.goOnWith(room.word)} onClick={() => goToRoom(room.room)}>
          {preparing.goOn}
        </Button>
      </span>
    </li>
  );
}

/** Opens a saved room again, from this machine or another one. */
export function RestoreRoom() {
  const { desk } = useWholeWords();
  const input = useRef<HTMLInputElement>(null);
  const noteId = useId();
  const [trouble, setTrouble] = useState<WireRefusal | 'no-room-file' | null>(null);
  const read = async (file: File | undefined) => {
    if (!file) return;
    setTrouble(null);
    const answer = await restoreRoom(file);
    if (answer === 'no-room-file') setTrouble(answer);
    else if (answer.ok) goToRoom(answer.value.room);
    // Whatever is wrong inside a file, what helps is another file.
    else setTrouble(answer.refusal.code === 'bad-form' ? 'no-room-file' : answer.refusal);
    if (input.current) input.current.value = '';
  };
  return (
    <section className="prepare-box" aria-labelledby="restore-title">
      <h2 id="restore-title">{desk.preparing.restoreTitle}</h2>
      <p className="prepare-quiet" id={noteId}>
        {desk.preparing.restoreNote}
      </p>
      <input
        ref={input}
        type="file"
        accept="application/json,.json"
        hidden
        aria-label={desk.preparing.restoreTitle}
        onChange={(event) => void read(event.target.files?.[0])}
      />
      <Button aria-describedby={noteId} icon={<Icon of={FileUp} />} onClick={() => input.current?.click()}>
        {desk.preparing.restore}
      </Button>
      {trouble === 'no-room-file' ? (
        <Notice tone="stops" role="alert">
          {desk.preparing.notARoomFile}
        </Notice>
      ) : (
        <Refused refusal={trouble} />
      )}
    </section>
  );
}
