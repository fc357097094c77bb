import { MonitorUp } from 'lucide-react';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

/** Over everything, calmly: the drawing stays in sight under it. */
export function LookHere() {
  const { building } = useWords().tablet;
  return (
    <div className="look-here" role="alert">
      <p className="look-here-word">
        <Icon of={MonitorUp} size={56} />
        {building.lookHere}
      </p>
      <p className="look-here-note">{building.lookHereNote}</p>
    </div>
  );
}
