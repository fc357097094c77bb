import { CircleCheck, Inbox } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import { counts, type Entry } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { Sending } from './use-hand-in.ts';
import './handing.css';

export interface EntriesButtonProps {
  readonly entries: readonly Entry[];
  readonly waiting: boolean;
  readonly onOpen: () => void;
}

const pointsOf = (entry: Entry): number | null => entry.verdict?.points ?? null;

/** Of several that count with the most points, the earliest. */
function bestOf(entries: readonly Entry[]): Entry | undefined {
  return entries.reduce<Entry | undefined>((best, entry) => {
    const points = pointsOf(entry);
    return counts(entry) && points !== null && points > (best ? (pointsOf(best) ?? -1) : -1) ? entry : best;
  }, undefined);
}

/** In the head of the page, once there is something to see behind it. */
export function EntriesButton({ entries, waiting, onOpen }: EntriesButtonProps) {
  const { handing } = useWords().tablet;
  if (entries.length === 0 && !waiting) return null;
  const best = bestOf(entries);
  return (
    <Button
      look="quiet"
      className="entries-button"
      icon={<Icon of={Inbox} size={24} label={handing.entries} />}
      onClick={onOpen}
    >
      {best ? handing.points(pointsOf(best) ?? 0) : handing.entries}
    </Button>
  );
}

export interface EntriesDialogProps {
  readonly open: boolean;
  readonly title: string;
  readonly closeWord: string;
  readonly entries: readonly Entry[];
  readonly sending: Sending;
  readonly onClose: () => void;
  /** Stand before the entries and after them. */
  readonly before?: ReactNode;
  readonly after?: ReactNode;
  /** One entry in full, under its points. */
  readonly view: (entry: Entry, close: () => void) => ReactNode;
}

/** What was handed in, the newest first, each with its points and why. */
export function EntriesDialog(props: EntriesDialogProps) {
  const { open, title, closeWord, entries, sending, onClose, view } = props;
  const { handing } = useWords().tablet;
  const [chosen, setChosen] = useState<string | null>(null);
  const newest = entries.at(-1);
  const shown = entries.find((entry) => entry.id === chosen) ?? newest;
  const best = bestOf(entries);
  const close = () => {
    setChosen(null);
    onClose();
  };
  return (
    <Dialog open={open} title={title} closeWord={closeWord} onClose={close}>
      <div className="entries">
        {props.before}
        {sending.waiting && <Notice role="status">{sending.away ? handing.waiting : handing.sending}</Notice>}
        <Refused refusal={sending.refusal} />
        {entries.length === 0 && !sending.waiting && <p className="quiet-words">{handing.none}</p>}
        {entries.length > 1 && (
          <div className="entries-list" role="radiogroup" aria-label={handing.entries}>
            {entries.map((entry) => (
              <label key={entry.id} className="choice" data-chosen={entry === shown}>
                <input
                  type="radio"
                  name="entry"
                  className="tool-input"
                  checked={entry === shown}
                  onChange={() => setChosen(entry.id)}
                />
                {handing.entry(entry.number)}
                {entry === best && <Icon of={CircleCheck} size={18} label={handing.best1} />}
              </label>
            ))}
          </div>
        )}
        {shown && (
          <>
            <EntryHead entry={shown} best={shown === best && entries.length > 1} />
            {view(shown, close)}
          </>
        )}
        {props.after}
      </div>
    </Dialog>
  );
}

interface EntryHeadProps {
  readonly entry: Entry;
  readonly best: boolean;
}

/** Points, and what there is to say of them. */
function EntryHead({ entry, best }: EntryHeadProps) {
  const { handing, notes } = useWords().tablet;
  const points = pointsOf(entry);
  return (
    <p className="entry-points">
      {points === null && (entry.unjudged ? handing.unjudged : handing.judging)}
      {points !== null && <strong>{handing.points(points)}</strong>}
      {entry.verdict && <span>{entry.verdict.met ? handing.done : handing.notDone}</span>}
      {best && <span>{handing.best1}</span>}
      {entry.returned && <span>{notes.givenBack}</span>}
      {entry.late && !entry.returned && <span>{handing.late1(entry.taken)}</span>}
    </p>
  );
}
