import { Send } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import './handing.css';

export interface HandInFrameProps {
  readonly open: boolean;
  readonly title: string;
  /** Nothing is there to hand in yet. */
  readonly empty: boolean;
  readonly onClose: () => void;
  readonly onYes: () => void;
  readonly children: ReactNode;
}

/** The last question before handing in, whatever it is that is handed in. */
export function HandInFrame({ open, title, empty, onClose, onYes, children }: HandInFrameProps) {
  const { handing } = useWords().tablet;
  return (
    <Dialog
      open={open}
      title={title}
      closeWord={handing.no}
      onClose={onClose}
      foot={
        <Button
          look="primary"
          className="big-foot"
          icon={<Icon of={Send} size={24} />}
          disabled={empty}
          onClick={onYes}
        >
          {handing.yes}
        </Button>
      }
    >
      {children}
    </Dialog>
  );
}
