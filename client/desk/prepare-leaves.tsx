import { useState } from 'react';
import { Button } from '../parts/button.tsx';
import { useWords } from '../parts/use-words.ts';
import { Cautions } from './cautions.tsx';
import { ChargingRota } from './rota.tsx';

const LEAVES = { cautions: Cautions, rota: ChargingRota } as const;
type Leaf = keyof typeof LEAVES;

/** What there is to read and plan before a lesson, one leaf at a time; the open one prints. */
export function PrepareLeaves() {
  const { safety, rota, desk } = useWords();
  const [open, setOpen] = useState<Leaf>('cautions');
  const titles: Readonly<Record<Leaf, string>> = { cautions: safety.leaf, rota: rota.title };
  const View = LEAVES[open];
  return (
    <div>
      <nav className="prepare-leaves" aria-label={desk.preparing.leaves}>
        {(Object.keys(LEAVES) as Leaf[]).map((leaf) => (
          <Button key={leaf} aria-pressed={leaf === open} onClick={() => setOpen(leaf)}>
            {titles[leaf]}
          </Button>
        ))}
      </nav>
      <View />
    </div>
  );
}
