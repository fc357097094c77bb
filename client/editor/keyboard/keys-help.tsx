import { Keyboard } from 'lucide-react';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import './keyboard.css';

export interface KeysHelpProps {
  readonly open: boolean;
  /** Whether the button that opens it stands on the page. */
  readonly button: boolean;
  readonly onOpen: (open: boolean) => void;
}

/** All keys of the page that draws. */
export function KeysHelp({ open, button, onOpen }: KeysHelpProps) {
  const { keys } = useWords();
  return (
    <>
      {button && (
        <Button
          className="keys-button"
          icon={<Icon of={Keyboard} />}
          shortcut="?"
          onClick={() => onOpen(true)}
        >
          {keys.title}
        </Button>
      )}
      <Dialog open={open} title={keys.title} closeWord={keys.close} onClose={() => onOpen(false)}>
        <dl className="keys-table">
          {keys.rows.map(([key, does]) => (
            <div key={key} className="keys-table-row">
              <dt>
                <kbd>{key}</kbd>
              </dt>
              <dd>{does}</dd>
            </div>
          ))}
        </dl>
      </Dialog>
    </>
  );
}
