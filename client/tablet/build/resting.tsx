import { MonitorUp, Pause } from 'lucide-react';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

/** Over everything, calmly: the drawing stays in sight under it. */
export function Resting({ paused }: { readonly paused: boolean }) {
  const { building, resting } = useWords().tablet;
  return (
    <div className="look-here" role="alert">
      <p className="look-here-word">
        <Icon of={paused ? Pause : MonitorUp} size={56} />
        {paused ? resting.paused.title : building.lookHere}
      </p>
      <p className="look-here-note">{paused ? resting.paused.sentence : building.lookHereNote}</p>
    </div>
  );
}
