import { useEffect, useRef, useState } from 'react';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { useAnnounce } from './announcer.tsx';
import { savePdf, type Wanted } from './paper-file.ts';
import { useWords } from './use-words.ts';

export interface SavingPaper {
  /** How far the file is; null while none is being made. */
  readonly making: { readonly done: number; readonly of: number } | null;
  readonly refusal: WireRefusal | null;
  readonly start: () => void;
  readonly stop: () => void;
}

/** Has a PDF made and saves it; leaving the page stops the work. */
export function usePaperFile(wanted: Wanted | null): SavingPaper {
  const { toPaper } = useWords();
  const announce = useAnnounce();
  const [making, setMaking] = useState<SavingPaper['making']>(null);
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
    if (work.current !== now || now.signal.aborted) return;
    setMaking(null);
    if (saved?.ok) announce(toPaper.saved);
    else if (saved) setRefusal(saved.refusal);
  };
  const stop = () => {
    work.current?.abort();
    setMaking(null);
  };
  return { making, refusal, start: () => void start(), stop };
}
