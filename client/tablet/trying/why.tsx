import { CircleCheck, Search } from 'lucide-react';
import { useMemo } from 'react';
import type { Drawing } from '../../../shared/documents/design.ts';
import { type Guess, isMistaken, type TrueReason } from '../../../shared/documents/reason.ts';
import { reasonsFor } from '../../../shared/judge/because.ts';
import type { Because } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

export interface WhyProps {
  readonly guess: Guess;
  readonly right: TrueReason;
  /** What was picked of this drawing before, if anything was. */
  readonly before: Because | null;
  readonly drawing: Drawing;
  /** The run's own, by which the reasons are laid out. */
  readonly hash: string;
  readonly onPick: (because: Because) => void;
  /** Leads to where it can be seen. */
  readonly onShow: (() => void) | null;
}

/** After a run that went otherwise than foretold: three reasons, one of them true. Neither is ranked. */
export function Why({ guess, right, before, drawing, hash, onPick, onShow }: WhyProps) {
  const { foretelling, reasons } = useWords();
  const { offered } = useMemo(() => reasonsFor(right, drawing, hash), [right, drawing, hash]);
  return (
    <section className="trying-card" role="status">
      <h2>{foretelling.differs(guess, right === 'all-as-drawn')}</h2>
      {before ? (
        <Answered because={before} onShow={onShow} />
      ) : (
        offered.map((reason) => (
          <Button
            key={reason}
            className="why-choice"
            onClick={() => onPick({ offered, picked: reason, right })}
          >
            {reasons.said(reason)}
          </Button>
        ))
      )}
    </section>
  );
}

function Answered({ because, onShow }: { readonly because: Because } & Pick<WhyProps, 'onShow'>) {
  const { foretelling, reasons } = useWords();
  const { picked, right } = because;
  const wrong = isMistaken(picked);
  return (
    <>
      <p className="why-answer">
        <Icon of={wrong ? Search : CircleCheck} size={22} />
        {wrong ? foretelling.wrong(reasons.but(picked)) : foretelling.right}
      </p>
      <p>{wrong ? foretelling.truth(reasons.said(right)) : reasons.said(right)}</p>
      {onShow && <Button onClick={onShow}>{foretelling.show}</Button>}
    </>
  );
}
