import { ChevronLeft, ChevronRight } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { type FirstLook, firstLook, type Wanted } from '../parts/paper-file.ts';
import { Refused } from '../parts/refusal.tsx';
import { useWholeWords } from './whole-words.ts';

export interface PaperPreviewProps {
  readonly wanted: Wanted | null;
  readonly page: number;
  readonly onTurn: (page: number) => void;
}

/** The page as it will lie in the printer, one at a time. */
export function PaperPreview({ wanted, page, onTurn }: PaperPreviewProps) {
  const { page: words } = useWholeWords().print;
  const { look, refusal, looking } = useFirstLook(wanted, page);
  const pages = look?.pages ?? 1;
  return (
    <section className="paper-preview" aria-labelledby="paper-preview-title" aria-busy={looking}>
      <header className="paper-preview-head">
        <h3 id="paper-preview-title">{words.preview}</h3>
        <p role="status" className="desk-quiet">
          {looking ? `${words.looking} …` : look ? words.previewOf(page, pages) : ''}
        </p>
        <Button
          look="quiet"
          icon={<Icon of={ChevronLeft} />}
          aria-label={words.before}
          disabled={page <= 1}
          onClick={() => onTurn(page - 1)}
        />
        <Button
          look="quiet"
          icon={<Icon of={ChevronRight} />}
          aria-label={words.next}
          disabled={page >= pages}
          onClick={() => onTurn(page + 1)}
        />
      </header>
      <Refused refusal={refusal} />
      <div className="paper-sheet">
        {look && wanted && (
          <img src={look.url} alt={`${words.kind(wanted.kind)}. ${words.previewOf(page, pages)}`} />
        )}
      </div>
    </section>
  );
}

/** A moment of rest before the server draws: who walks through a list of choices wants the last one. */
const REST_MS = 150;

function useFirstLook(wanted: Wanted | null, page: number) {
  const [look, setLook] = useState<FirstLook | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const [looking, setLooking] = useState(true);
  const asked = wanted && JSON.stringify({ ...wanted, page: String(page) });
  useEffect(() => {
    setRefusal(null);
    setLooking(asked !== null);
    if (asked === null) return setLook(null);
    const now = new AbortController();
    let url: string | undefined;
    const timer = setTimeout(async () => {
      const answer = await firstLook(JSON.parse(asked) as Wanted, now.signal);
      if (answer === null) return;
      if (now.signal.aborted) {
        if (answer.ok) URL.revokeObjectURL(answer.value.url);
        return;
      }
      setLooking(false);
      setRefusal(answer.ok ? null : answer.refusal);
      setLook(answer.ok ? answer.value : null);
      url = answer.ok ? answer.value.url : undefined;
    }, REST_MS);
    return () => {
      clearTimeout(timer);
      now.abort();
      if (url !== undefined) URL.revokeObjectURL(url);
    };
  }, [asked]);
  return { look, refusal, looking };
}
