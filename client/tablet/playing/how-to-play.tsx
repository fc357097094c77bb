import { CircleHelp } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Hear } from '../../parts/hear.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { hasMet, noteMet } from './met-plays.ts';
import { picturesOf } from './pictures.tsx';
import './how-to-play.css';

interface HowProps {
  readonly challenge: Challenge;
}

/** How this way is played: three pictures with a few words each. Whoever has seen them has met it. */
export function HowPictures({ challenge: { play, kit } }: HowProps) {
  const { how } = useWords().tablet.playing;
  useEffect(() => noteMet(play), [play]);
  const words = how[play];
  return (
    <ol className="how-pictures">
      {picturesOf(play, kit).map((shown, i) => (
        <li key={words[i]}>
          {shown}
          <p>{words[i]}</p>
        </li>
      ))}
    </ol>
  );
}

/** The same behind a button, and by itself where nobody has seen it at this tablet. */
export function HowButton({ challenge }: HowProps) {
  const { tablet } = useWords();
  const { playing, building } = tablet;
  const [open, setOpen] = useState(() => !hasMet(challenge.play));
  return (
    <>
      <Button
        look="quiet"
        className="how-button"
        icon={<Icon of={CircleHelp} size={24} />}
        onClick={() => setOpen(true)}
      >
        {playing.help}
      </Button>
      <Dialog open={open} title={playing.title} closeWord={building.close} onClose={() => setOpen(false)}>
        <HowPictures challenge={challenge} />
        <Hear text={playing.how[challenge.play].join(' ')} />
      </Dialog>
    </>
  );
}
