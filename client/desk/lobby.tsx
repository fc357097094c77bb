import { useWords } from '../parts/use-words.ts';
import { useDesk } from './desk-store.ts';
import { KeysHelp } from './keys-help.tsx';
import { PrepareLobby } from './prepare.tsx';
import { Rail } from './rail.tsx';

/** The desk before it has a room. */
export function Lobby() {
  const { desk } = useWords();
  const keysOn = useDesk((state) => state.keysOn);
  return (
    <div className="desk">
      <header className="desk-head">
        <h1>{desk.title}</h1>
        <span className="desk-head-space" />
        <KeysHelp />
      </header>
      <div className="desk-body">
        <Rail room={null} step="prepare" onStep={() => {}} />
        <main className="desk-main">
          <PrepareLobby keysOn={keysOn} />
        </main>
      </div>
    </div>
  );
}
