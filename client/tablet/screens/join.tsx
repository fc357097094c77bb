import { ArrowRight } from 'lucide-react';
import { type FormEvent, useState } from 'react';
import { ROOM_LIMITS } from '../../../shared/room/decision.ts';
import { ROUTES, type WireRefusal } from '../../../shared/wire/protocol.ts';
import { Button } from '../../parts/button.tsx';
import { postJson } from '../../parts/http.ts';
import { Icon } from '../../parts/icon.tsx';
import { NoNames } from '../../parts/no-names.tsx';
import { Notice } from '../../parts/notice.tsx';
import { refusalSentence } from '../../parts/refusal.tsx';
import { useWords } from '../../parts/use-words.ts';
import './screens.css';

/** A scanned link that did not lead to a seat comes back with its code in the address. */
function refusedByLink(): WireRefusal | null {
  const code = new URLSearchParams(window.location.search).get('refused');
  if (code === 'unknown-room' || code === 'no-seat' || code === 'too-fast') return { code };
  return code === 'room-full' ? { code, most: ROOM_LIMITS.teams } : null;
}

/** Type the room word, and in. `refusal` is why this page has no seat; having none yet is no complaint. */
export function JoinScreen({ refusal }: { readonly refusal: WireRefusal }) {
  const words = useWords();
  const { joining } = words.tablet;
  const [word, setWord] = useState('');
  const [busy, setBusy] = useState(false);
  const first = refusal.code === 'no-seat' ? refusedByLink() : refusal;
  const [problem, setProblem] = useState<string | null>(first && refusalSentence(words, first));

  const goIn = async (event: FormEvent) => {
    event.preventDefault();
    if (word.trim() === '') return setProblem(joining.empty);
    setBusy(true);
    const answer = await postJson(ROUTES.join, { word: word.trim().toLowerCase() });
    // The seat is a cookie, which only a new connection carries.
    if (answer.ok) return window.location.replace('/');
    setBusy(false);
    setProblem(refusalSentence(words, answer.refusal));
  };

  return (
    <main className="screen">
      <form className="screen-card" onSubmit={goIn}>
        <img src="/mark.svg" alt="" width="72" height="72" />
        <h1>{joining.title}</h1>
        <label className="join-field">
          <span>{joining.label}</span>
          <input
            value={word}
            onChange={(event) => setWord(event.target.value)}
            autoComplete="off"
            autoCapitalize="none"
            autoCorrect="off"
            spellCheck={false}
            maxLength={40}
            aria-describedby="join-hint join-no-names"
          />
        </label>
        <p id="join-hint" className="quiet-words">
          {joining.hint}
        </p>
        <NoNames id="join-no-names" />
        {problem !== null && (
          <Notice tone="stops" role="alert">
            {problem}
          </Notice>
        )}
        <Button
          type="submit"
          look="primary"
          className="big-button"
          disabled={busy}
          icon={<Icon of={ArrowRight} size={24} />}
        >
          {busy ? joining.busy : joining.go}
        </Button>
      </form>
    </main>
  );
}
