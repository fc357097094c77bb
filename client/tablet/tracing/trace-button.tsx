import { Layers2 } from 'lucide-react';
import { lazy, Suspense, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { untilHere } from '../until-here.ts';

const TracingTable = lazy(async () => ({
  default: (await untilHere(() => import('./tracing-table.tsx'))).TracingTable,
}));

export interface TraceButtonProps {
  readonly challenge: Challenge;
  readonly design: Design;
}

/** Opens the tracing table for a drawing. */
export function TraceButton({ challenge, design }: TraceButtonProps) {
  const { tracing } = useWords();
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button icon={<Icon of={Layers2} size={22} />} aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {tracing.open}
      </Button>
      {open && (
        <Suspense fallback={null}>
          <TracingTable challenge={challenge} design={design} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
