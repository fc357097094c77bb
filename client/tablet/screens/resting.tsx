import { ArrowRight, Pause, TabletSmartphone } from 'lucide-react';
import { Button } from '../../parts/button.tsx';
import { Icon, type IconShape } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import './screens.css';

/** Why a tablet rests. From `moved` it can come back as a new team; the others end at the desk. */
export type Rest = 'paused' | 'removed' | 'freed' | 'moved';

const ICONS: Readonly<Record<Rest, IconShape>> = {
  paused: Pause,
  removed: TabletSmartphone,
  freed: TabletSmartphone,
  moved: TabletSmartphone,
};

/** Quietly: what happened, and what to do. */
export function RestingScreen({ why }: { readonly why: Rest }) {
  const { resting } = useWords().tablet;
  const { title, sentence } = resting[why];
  return (
    <main className="screen">
      <div className="screen-card" role="status">
        <Icon of={ICONS[why]} size={64} />
        <h1>{title}</h1>
        <p className="large-words">{sentence}</p>
        {why === 'moved' && (
          <Button
            className="big-button"
            icon={<Icon of={ArrowRight} size={24} />}
            onClick={() => window.location.replace('/')}
          >
            {resting.anew}
          </Button>
        )}
      </div>
    </main>
  );
}
