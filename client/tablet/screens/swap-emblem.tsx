import { Shuffle } from 'lucide-react';
import { useState } from 'react';
import { EMBLEMS, type RoomState } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useAsk } from '../../parts/use-ask.ts';
import { useWords } from '../../parts/use-words.ts';

/** While the class gathers a team may take any emblem that is still free. */
export function SwapEmblem({ room }: { readonly room: RoomState }) {
  const { waiting } = useWords().tablet;
  const [open, setOpen] = useState(false);
  const { ask, refusal, busy } = useAsk();
  const free = EMBLEMS.filter((emblem) => room.teams.every((team) => team.emblem !== emblem));
  const take = async (emblem: (typeof EMBLEMS)[number]) => {
    if (await ask({ kind: 'swap-emblem', emblem })) setOpen(false);
  };
  return (
    <>
      <Button icon={<Icon of={Shuffle} size={22} />} onClick={() => setOpen(true)}>
        {waiting.swap}
      </Button>
      <Dialog
        open={open}
        title={waiting.swapTitle}
        closeWord={waiting.swapClose}
        onClose={() => setOpen(false)}
      >
        <p className="quiet-words">{waiting.swapHow}</p>
        <Refused refusal={refusal} />
        <ul className="free-emblems">
          {free.map((emblem) => (
            <li key={emblem}>
              <Button disabled={busy} onClick={() => void take(emblem)}>
                <EmblemBadge emblem={emblem} size={26} />
              </Button>
            </li>
          ))}
        </ul>
      </Dialog>
    </>
  );
}
