import { Button } from '../../parts/button.tsx';
import { useLink } from '../../parts/use-link.tsx';
import { useWords } from '../../parts/use-words.ts';
import './screens.css';

/** The seat is open in a newer tab; only a tap here makes this one live again. */
export function QuietScreen() {
  const { quiet } = useWords().tablet;
  const link = useLink();
  return (
    <main className="screen">
      <div className="screen-card">
        <h1>{quiet.title}</h1>
        <p className="large-words">{quiet.sentence}</p>
        <Button className="big-button" onClick={() => link.takeOver()}>
          {quiet.here}
        </Button>
      </div>
    </main>
  );
}
