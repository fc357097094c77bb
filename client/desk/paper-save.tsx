import { Download } from 'lucide-react';
import { printPath } from '../../shared/wire/print.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import type { Wanted } from '../parts/paper-file.ts';
import { Refused } from '../parts/refusal.tsx';
import { usePaperFile } from '../parts/use-paper-file.ts';
import { useWholeWords } from './whole-words.ts';

export interface PaperSaveProps {
  readonly wanted: Wanted | null;
  /** The page that is being looked at, from 1. */
  readonly page: number;
}

/** The files: a PDF of all pages, with a bar while it is being made; the page that is looked at as SVG. */
export function PaperSave({ wanted, page: looked }: PaperSaveProps) {
  const { page } = useWholeWords().print;
  const { making, refusal, start, stop } = usePaperFile(wanted);
  return (
    <div className="paper-save">
      <p className="paper-buttons">
        <Button
          look="primary"
          icon={<Icon of={Download} />}
          disabled={making !== null || wanted === null}
          onClick={start}
        >
          {page.pdf}
        </Button>
        {wanted && (
          <a
            className="button"
            href={printPath({ ...wanted, format: 'svg', page: String(looked) })}
            download={`harbour-lines-${wanted.kind}-${looked}.svg`}
          >
            <Icon of={Download} />
            {page.svg}
          </a>
        )}
      </p>
      {making && (
        <p className="paper-making">
          <label>
            {page.making(making.done, making.of)}
            <progress value={making.done} max={making.of} />
          </label>
          <Button onClick={stop}>{page.stop}</Button>
        </p>
      )}
      <Refused refusal={refusal} />
      <p className="desk-quiet">{page.scale}</p>
    </div>
  );
}
