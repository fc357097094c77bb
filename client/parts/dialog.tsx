import { X } from 'lucide-react';
import { type ReactNode, useEffect, useId, useRef } from 'react';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';
import './parts.css';

export interface DialogProps {
  readonly open: boolean;
  readonly title: string;
  /** The word on the button that closes it. */
  readonly closeWord: string;
  /** Also called when the browser closes it (Escape). */
  readonly onClose: () => void;
  /** Buttons at the end, the safe one first. */
  readonly foot?: ReactNode;
  readonly children: ReactNode;
}

/** The browser's own modal dialog: it keeps the focus inside and gives it back. */
export function Dialog({ open, title, closeWord, onClose, foot, children }: DialogProps) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const dialog = ref.current;
    if (!dialog || dialog.open === open) return;
    if (open) dialog.showModal();
    else dialog.close();
  }, [open]);
  return (
    <dialog ref={ref} className="dialog" aria-labelledby={titleId} onClose={onClose}>
      {open && (
        <>
          <div className="dialog-head">
            <h2 id={titleId}>{title}</h2>
            <Button look="quiet" icon={<Icon of={X} />} onClick={onClose}>
              {closeWord}
            </Button>
          </div>
          <div className="dialog-body">{children}</div>
          {foot !== undefined && <div className="dialog-foot">{foot}</div>}
        </>
      )}
    </dialog>
  );
}
