import { type ReactNode, useState } from 'react';
import type { Kit } from '../../shared/documents/kit.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { FiveMinutes } from './before/five-minutes.tsx';
import { WhatIsKept } from './before/kept.tsx';
import { LessonPlan } from './before/lesson-plan.tsx';
import { Supplies } from './before/supplies.tsx';
import { Cautions } from './cautions.tsx';
import { KitLeaf } from './kit/kit-leaf.tsx';
import { ChargingRota } from './rota.tsx';
import { FitLeaf } from './trials/fit-leaf.tsx';
import { useWholeWords } from './whole-words.ts';

export interface LeavesProps {
  /** null before one is open. */
  readonly room: RoomState | null;
  /** That challenges are made for; null until it is here. */
  readonly kit: Kit | null;
  /** Tells the room that somebody stays with the charger; null before one is open. */
  readonly onStay: (() => void) | null;
  /** What ends the five minutes. */
  readonly end: ReactNode;
}

const LEAVES = {
  five: FiveMinutes,
  cautions: Cautions,
  rota: ChargingRota,
  kit: KitLeaf,
  supplies: Supplies,
  fit: FitLeaf,
  plan: LessonPlan,
  kept: WhatIsKept,
} as const satisfies Record<string, (props: LeavesProps) => ReactNode>;
type Leaf = keyof typeof LEAVES;

/** What there is to do, read and plan before a lesson, one leaf at a time; the open one prints. */
export function PrepareLeaves(props: LeavesProps) {
  const words = useWholeWords();
  const [open, setOpen] = useState<Leaf>('five');
  const titles: Readonly<Record<Leaf, string>> = {
    five: words.prepCheck.leaf,
    cautions: words.safety.leaf,
    rota: words.rota.title,
    kit: words.kit.shelf.title,
    supplies: words.supplies.leaf,
    fit: words.fitting.leaf,
    plan: words.lessonPlan.leaf,
    kept: words.kept.leaf,
  };
  const View: (props: LeavesProps) => ReactNode = LEAVES[open];
  return (
    <div>
      <nav className="prepare-leaves" aria-label={words.desk.preparing.leaves}>
        {(Object.keys(LEAVES) as Leaf[]).map((leaf) => (
          <Button key={leaf} aria-pressed={leaf === open} onClick={() => setOpen(leaf)}>
            {titles[leaf]}
          </Button>
        ))}
      </nav>
      <View {...props} />
    </div>
  );
}
