import { Download } from 'lucide-react';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import type { Wanted } from '../../parts/paper-file.ts';
import { Refused } from '../../parts/refusal.tsx';
import { usePaperFile } from '../../parts/use-paper-file.ts';

export interface SavePrintProps {
  readonly wanted: Wanted;
  readonly label: string;
}

/** One button that has a short PDF made and saves it. */
export function SavePrint({ wanted, label }: SavePrintProps) {
  const { making, refusal, start } = usePaperFile(wanted);
  return (
    <div className="before-saving">
      <Button look="primary" icon={<Icon of={Download} />} disabled={making !== null} onClick={start}>
        {label}
      </Button>
      <Refused refusal={refusal} />
    </div>
  );
}
