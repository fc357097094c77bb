import { Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';

export interface SureProps {
  readonly ask: string;
  readonly note: string;
  readonly yes: string;
  readonly no: string;
  readonly onYes: () => void;
}

/** An act that is asked about once more before it begins; the safe answer stands first. */
export function Sure({ ask, note, yes, no, onYes }: SureProps) {
  const [asked, setAsked] = useState(false);
  const answer = (does?: () => void) => {
    setAsked(false);
    does?.();
  };
  return (
    <div className="sure">
      <p className="desk-quiet">{note}</p>
      {asked ? (
        <p className="room-sure">
          <Button onClick={() => answer()}>{no}</Button>
          <Button look="primary" icon={<Icon of={Trash2} />} onClick={() => answer(onYes)}>
            {yes}
          </Button>
        </p>
      ) : (
        <Button icon={<Icon of={Trash2} />} onClick={() => setAsked(true)}>
          {ask}
        </Button>
      )}
    </div>
  );
}
