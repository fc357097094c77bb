import { CreditCard, Layers2, X } from 'lucide-react';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/use-words.ts';

export interface BeforePageProps {
  /** The card was held against this screen, at this zoom. */
  readonly holds: boolean;
  readonly onStart: () => void;
  readonly onMeasure: () => void;
  readonly onClose: () => void;
}

/** How to trace, and how the glass stays whole. */
export function BeforePage({ holds, onStart, onMeasure, onClose }: BeforePageProps) {
  const { before, close } = useWords().tracing;
  return (
    <div className="tracing-page">
      <h2>{before.title}</h2>
      <ol className="tracing-steps">
        {before.how.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <Notice tone="caution" title={before.cautionTitle}>
        <ul className="tracing-steps">
          {before.cautions.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
        <p className="quiet-words">{before.by}</p>
      </Notice>
      {!holds && (
        <Notice tone="stops" role="alert">
          {before.other}
        </Notice>
      )}
      <div className="tracing-buttons">
        <Button icon={<Icon of={X} size={22} />} onClick={onClose}>
          {close}
        </Button>
        <Button
          look={holds ? 'plain' : 'primary'}
          icon={<Icon of={CreditCard} size={22} />}
          onClick={onMeasure}
        >
          {before.again}
        </Button>
        {holds && (
          <Button look="primary" icon={<Icon of={Layers2} size={22} />} onClick={onStart}>
            {before.start}
          </Button>
        )}
      </div>
    </div>
  );
}
