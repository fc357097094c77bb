import { CircleCheck, Inbox, PencilLine } from 'lucide-react';
import { useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { Entry } from '../../../shared/room/state.ts';
import { useAnnounce } from '../../parts/announcer.tsx';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { GoalRows } from '../../parts/goal-rows.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWays } from '../../parts/judging.ts';
import { Miniature } from '../../parts/miniature.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useDocument } from '../../parts/use-document.ts';
import { useWords } from '../../parts/use-words.ts';
import type { Sending } from './use-hand-in.ts';
import './handing.css';

export interface EntriesButtonProps {
  readonly entries: readonly Entry[];
  readonly waiting: boolean;
  readonly onOpen: () => void;
}

const pointsOf = (entry: Entry): number | null => entry.verdict?.points ?? null;

/** Of several with the most points, the earliest. */
function bestOf(entries: readonly Entry[]): Entry | undefined {
  return entries.reduce<Entry | undefined>((best, entry) => {
    const points = pointsOf(entry);
    return points !== null && points > (best ? (pointsOf(best) ?? -1) : -1) ? entry : best;
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
  readonly challenge: Challenge;
  readonly entries: readonly Entry[];
  readonly sending: Sending;
  readonly onTakeUp: (design: Design) => void;
  readonly onClose: () => void;
}

/** What was handed in, the newest first, each with its points and why. */
export function EntriesDialog({ open, challenge, entries, sending, onTakeUp, onClose }: EntriesDialogProps) {
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
    <Dialog open={open} title={handing.entriesTitle} closeWord={handing.close} onClose={close}>
      <div className="entries">
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
          <EntryView
            entry={shown}
            best={shown === best && entries.length > 1}
            challenge={challenge}
            onTakeUp={(design) => {
              onTakeUp(design);
              close();
            }}
          />
        )}
      </div>
    </Dialog>
  );
}

interface EntryViewProps {
  readonly entry: Entry;
  readonly best: boolean;
  readonly challenge: Challenge;
  readonly onTakeUp: (design: Design) => void;
}

function EntryView({ entry, best, challenge, onTakeUp }: EntryViewProps) {
  const { handing } = useWords().tablet;
  const announce = useAnnounce();
  const design = useDocument('design', entry.design);
  const verdict = useDocument('verdict', entry.verdict?.document ?? null);
  const ways = useWays(challenge, design, verdict);
  const points = pointsOf(entry);
  return (
    <div className="handing">
      {design.kind === 'here' && (
        <Miniature sheet={challenge.sheet} kit={challenge.kit} drawing={design.value.drawing} />
      )}
      <div className="handing-words">
        <p className="entry-points">
          {points === null && (entry.unjudged ? handing.unjudged : handing.judging)}
          {points !== null && <strong>{handing.points(points)}</strong>}
          {entry.verdict && <span>{entry.verdict.met ? handing.done : handing.notDone}</span>}
          {best && <span>{handing.best1}</span>}
          {entry.late && <span>{handing.lateWord}</span>}
        </p>
        {verdict.kind === 'here' && (
          <GoalRows
            challenge={challenge}
            results={verdict.value.goals}
            ways={ways}
            points={verdict.value.points}
          />
        )}
        {design.kind === 'here' && (
          <Button
            icon={<Icon of={PencilLine} size={22} />}
            onClick={() => {
              onTakeUp(design.value);
              announce(handing.takenUp);
            }}
          >
            {handing.takeUp}
          </Button>
        )}
      </div>
    </div>
  );
}
