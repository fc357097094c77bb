import { Download, Trash2 } from 'lucide-react';
import { useState } from 'react';
import type { RoomInList } from '../../shared/wire/desks.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useDesk } from './desk-store.ts';
import { LinkList } from './links.tsx';
import { eraseRoom, keepRoom, roomFilePath } from './session.ts';
import { useWholeWords } from './whole-words.ts';

export interface RoomKeepingProps {
  /** null: closed. */
  readonly room: RoomInList | null;
  readonly onClose: () => void;
  /** The list of rooms is another one now. */
  readonly onChange: () => void;
}

/** What can be done with a room as a whole: keep it as a file, hand it over, erase it. */
export function RoomKeeping({ room, onClose, onChange }: RoomKeepingProps) {
  const { desk } = useWholeWords();
  const { keeping, links } = desk;
  return (
    <Dialog
      open={room !== null}
      title={room ? keeping.title(room.word) : ''}
      closeWord={desk.close}
      onClose={onClose}
    >
      {room && (
        <div className="room-keeping">
          <section>
            <h3>{keeping.file}</h3>
            <p className="desk-quiet">{keeping.fileNote}</p>
            <a className="button" href={roomFilePath(room.room)} download>
              <Icon of={Download} />
              {keeping.fileSave}
            </a>
          </section>
          <section>
            <h3>{links.substitute}</h3>
            <LinkList
              asked={{ kind: 'room', room: room.room }}
              note={links.substituteNote}
              none={links.substituteNone}
              make={links.substituteMake}
            />
          </section>
          <EraseRoom room={room} onErased={() => [onClose(), onChange()]} onChange={onChange} />
        </div>
      )}
    </Dialog>
  );
}

interface EraseProps {
  readonly room: RoomInList;
  readonly onErased: () => void;
  readonly onChange: () => void;
}

/** Asked once more before it begins, and to be taken back for a while after it has. */
function EraseRoom({ room, onErased, onChange }: EraseProps) {
  const { keeping } = useWholeWords().desk;
  const offerUndo = useDesk((state) => state.offerUndo);
  const [asked, setAsked] = useState(false);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const erase = async () => {
    const answer = await eraseRoom(room.room);
    if (!answer.ok) return setRefusal(answer.refusal);
    const back = async () => {
      await keepRoom(room.room);
      onChange();
    };
    offerUndo({ said: keeping.erasing(room.word), back: () => void back() });
    onErased();
  };
  return (
    <section>
      <h3>{keeping.erase}</h3>
      <p className="desk-quiet">{keeping.eraseNote}</p>
      {asked ? (
        <div className="room-sure">
          <Button onClick={() => setAsked(false)}>{keeping.eraseNot}</Button>
          <Button look="primary" icon={<Icon of={Trash2} />} onClick={() => void erase()}>
            {keeping.eraseSure(room.word)}
          </Button>
        </div>
      ) : (
        <Button icon={<Icon of={Trash2} />} onClick={() => setAsked(true)}>
          {keeping.eraseGo}
        </Button>
      )}
      <Refused refusal={refusal} />
    </section>
  );
}
