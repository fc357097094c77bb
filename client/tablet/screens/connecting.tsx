import { useEffect, useState } from 'react';
import { useWords } from '../../parts/use-words.ts';
import './screens.css';

/** After so long without a room the page says that it keeps trying. */
const LONG_MS = 4000;

export function ConnectingScreen() {
  const { waiting } = useWords().tablet;
  const [long, setLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLong(true), LONG_MS);
    return () => clearTimeout(timer);
  }, []);
  return (
    <main className="screen">
      <div className="screen-card" role="status">
        <img src="/mark.svg" alt="" width="72" height="72" />
        <h1>{waiting.looking}</h1>
        {long && <p className="quiet-words">{waiting.lookingLong}</p>}
      </div>
    </main>
  );
}
