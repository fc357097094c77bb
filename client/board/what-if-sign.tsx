import { CircleHelp } from 'lucide-react';
import { Icon } from '../parts/icon.tsx';
import type { Staged } from '../parts/use-stage.ts';
import { useWords } from '../parts/use-words.ts';
import { useSupposedWords } from './supposed-words.ts';

/** Says plainly that what is driven is not what was handed in. */
export function WhatIfSign({ stage }: { readonly stage: readonly Staged[] }) {
  const { stage: words } = useWords();
  const said = useSupposedWords(stage);
  if (said === null) return null;
  return (
    <p className="what-if" role="status">
      <Icon of={CircleHelp} size="1.2em" />
      <strong>{said}</strong>
      {stage.length < 3 && <span>{words.untouched}</span>}
    </p>
  );
}
