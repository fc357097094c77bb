import { MonitorUp, Pause } from 'lucide-react';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

/** Over everything, calmly: the drawing stays in sight under it. Beside what is inert, so that it is read out. */
export function Resting({ paused }: { readonly paused: boolean }) {
  const { building, resting } = useWords().tablet;
  return (
    <main className="look-here">
      <div role="alert">
        <h1 className="look-here-word">
          <Icon of={paused ? Pause : MonitorUp} size={56} />
          {paused ? resting.paused.title : building.lookHere}
        </h1>
        <p className="look-here-note">{paused ? resting.paused.sentence : building.lookHereNote}</p>
      </div>
    </main>
  );
}
