import { FileUp } from 'lucide-react';
import { useEffect, useId, useRef, useState } from 'react';
import type { RoomInList, WireRefusal } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useWords } from '../parts/use-words.ts';
import { goToRoom, listRooms, restoreRoom } from './session.ts';

/** The rooms of this server, newest first, to go on with one of them. */
export function RoomList() {
  const { desk } = useWords();
  const [rooms, setRooms] = useState<readonly RoomInList[] | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  useEffect(() => {
    let current = true;
    void listRooms().then((answer) => {
      if (!current) return;
      if (answer.ok) setRooms(answer.value);
      else setRefusal(answer.refusal);
    });
    return () => {
      current = false;
    };
  }, []);
  return (
    <section className="prepare-box" aria-labelledby="rooms-title">
      <h2 id="rooms-title">{desk.preparing.roomsTitle}</h2>
      <Refused refusal={refusal} />
      {rooms === null && refusal === null && <p className="prepare-quiet">{desk.preparing.roomsLoading}</p>}
      {rooms?.length === 0 && <p className="prepare-quiet">{desk.preparing.roomsNone}</p>}
      {rooms !== null && rooms.length > 0 && (
        <ul className="prepare-rooms">
          {rooms.map((room) => (
            <RoomRow key={room.room} room={room} />
          ))}
        </ul>
      )}
    </section>
  );
}

function RoomRow({ room }: { readonly room: RoomInList }) {
  const { desk } = useWords();
  // The browser's own language writes dates as the teacher reads them.
  const when = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
  return (
    <li className="prepare-room">
      <span>
        <strong>{room.word}</strong>
        <br />
        <span className="prepare-quiet">{desk.preparing.openedAt(when.format(room.openedAt))}</span>
      </span>
      <Button aria-label={desk.preparing.goOnWith(room.word)} onClick={() => goToRoom(room.room)}>
        {desk.preparing.goOn}
      </Button>
    </li>
  );
}

/** Opens a saved room again, from this machine or another one. */
export function RestoreRoom() {
  const { desk } = useWords();
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
