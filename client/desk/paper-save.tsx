import { Download } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { printPath } from '../../shared/wire/print.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { savePdf, type Wanted } from '../parts/paper-file.ts';
import { Refused } from '../parts/refusal.tsx';
import { useWords } from '../parts/use-words.ts';

interface Making {
  readonly done: number;
  readonly of: number;
}

/** The files: a PDF of all pages, with a bar while it is being made; each page as SVG. */
export function PaperSave({ wanted }: { readonly wanted: Wanted | null }) {
  const { page } = useWords().print;
  const { making, refusal, start, stop } = useSaving(wanted);
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
            href={printPath({ ...wanted, format: 'svg' })}
            download={`harbour-lines-${wanted.kind}.svg`}
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

function useSaving(wanted: Wanted | null) {
  const { page } = useWords().print;
  const announce = useAnnounce();
  const [making, setMaking] = useState<Making | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const work = useRef<AbortController | null>(null);
  useEffect(() => () => work.current?.abort(), []);
  const start = async () => {
    if (wanted === null) return;
    const now = new AbortController();
    work.current = now;
    setRefusal(null);
    setMaking({ done: 0, of: 1 });
    const saved = await savePdf(wanted, { told: setMaking, signal: now.signal });
    if (work.current !== now) return;
    setMaking(null);
    if (saved?.ok) announce(page.saved);
    else if (saved) setRefusal(saved.refusal);
  };
  const stop = () => {
    work.current?.abort();
    setMaking(null);
  };
  return { making, refusal, start: () => void start(), stop };
}
