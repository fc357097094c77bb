import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { NoNames } from '../parts/no-names.tsx';
import { refusalSentence } from '../parts/refusal.tsx';
import { useLinkState } from '../parts/use-link.tsx';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { IDLE_DRAWING, IDLE_SHEET } from './idle-sheet.ts';
import { SheetPicture } from './sheet-picture.tsx';
import './no-room.css';

/** A board that names a room waits for that one alone; one that names none may have to. */
const mustName = ({ code }: WireRefusal): boolean =>
  code === 'no-room-named' || new URLSearchParams(location.search).has('room');

/** Before any room is open, or before this board knows which one it shows. */
export function NoRoom() {
  const { board } = useWords();
  const status = useLinkState((state) => state.status);
  return (
    <>
      <Head title={board.title} />
      <div className="no-room">
        <SheetPicture
          challenge={{ sheet: IDLE_SHEET, kit: DEMO_KIT }}
          drawing={IDLE_DRAWING}
          label={board.title}
        />
        {status.kind === 'refused' && mustName(status.refusal) ? (
          <WhichRoom refusal={status.refusal} />
        ) : (
          <div>
            <h2>{board.noRoom.title}</h2>
            <p>{board.noRoom.next}</p>
          </div>
        )}
      </div>
    </>
  );
}

/** Loads the board anew with the word that is typed. */
function WhichRoom({ refusal }: { readonly refusal: WireRefusal }) {
  const words = useWords();
  const { which, gone, word, show } = words.board.noRoom;
  return (
    <div>
      <h2>{which}</h2>
      <p role="status">{refusal.code === 'unknown-room' ? gone : refusalSentence(words, refusal)}</p>
      <form action="/board">
        <label htmlFor="room-word">{word}</label>
        <input
          id="room-word"
          name="room"
          required
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
          aria-describedby="room-word-no-names"
        />
        <Button type="submit" look="primary">
          {show}
        </Button>
        <NoNames id="room-word-no-names" />
      </form>
    </div>
  );
}
