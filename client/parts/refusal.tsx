import type { WireRefusal } from '../../shared/wire/protocol.ts';
import type { PageWording } from '../../shared/wording/wording.ts';
import { Notice } from './notice.tsx';
import { useWords } from './use-words.ts';

export const refusalSentence = (words: PageWording, refusal: WireRefusal): string =>
  (words.refusals[refusal.code] as (refusal: WireRefusal) => string)(refusal);

/** Why something was not done, at the place where it was asked for. */
export function Refused({ refusal }: { readonly refusal: WireRefusal | null }) {
  const words = useWords();
  if (refusal === null) return null;
  return (
    <Notice tone="stops" role="alert">
      {refusalSentence(words, refusal)}
    </Notice>
  );
}
