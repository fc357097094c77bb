import { PencilLine, Printer } from 'lucide-react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { Entry } from '../../../shared/room/state.ts';
import { useAnnounce } from '../../parts/announcer.tsx';
import { Button } from '../../parts/button.tsx';
import { useDevice } from '../../parts/device-settings.ts';
import { GoalRows } from '../../parts/goal-rows.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWays } from '../../parts/judging.ts';
import { MeritRows } from '../../parts/merit-rows.tsx';
import { Miniature } from '../../parts/miniature.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useDocument } from '../../parts/use-document.ts';
import { usePaperFile } from '../../parts/use-paper-file.ts';
import { useWords } from '../../parts/use-words.ts';
import { TraceButton } from '../tracing/trace-button.tsx';
import { ReadOut } from './read-out.tsx';

export interface DrawnEntryProps {
  readonly entry: Entry;
  readonly challenge: Challenge;
  readonly onTakeUp: (design: Design) => void;
}

/** A drawing that was handed in, point by point; it can be taken up again. */
export function DrawnEntry({ entry, challenge, onTakeUp }: DrawnEntryProps) {
  const { handing } = useWords().tablet;
  const announce = useAnnounce();
  const design = useDocument('design', entry.design);
  const verdict = useDocument('verdict', entry.verdict?.document ?? null);
  const ways = useWays(challenge, design, verdict);
  return (
    <div className="handing">
      {design.kind === 'here' && (
        <Miniature sheet={challenge.sheet} kit={challenge.kit} drawing={design.value.drawing} />
      )}
      <div className="handing-words">
        {entry.mended && <p className="quiet-words">{handing.mended}</p>}
        {verdict.kind === 'here' && (
          <GoalRows
            challenge={challenge}
            results={verdict.value.goals}
            ways={ways}
            points={verdict.value.points}
          />
        )}
        {verdict.kind === 'here' && <MeritRows challenge={challenge} points={verdict.value.points} />}
      </div>
      <div className="handing-acts">
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
        <ToPaper entry={entry.id} />
        {design.kind === 'here' && <TraceButton challenge={challenge} design={design.value} />}
        {design.kind === 'here' && <ReadOut challenge={challenge} design={design.value} />}
      </div>
    </div>
  );
}

/** The drawing true to size as a file, where there is a printer or somebody who takes it to one. */
function ToPaper({ entry }: { readonly entry: string }) {
  const { toPaper } = useWords();
  const { language, units } = useDevice();
  const { making, refusal, start } = usePaperFile({ kind: 'drawing', entry, language, units });
  return (
    <>
      <Button icon={<Icon of={Printer} size={22} />} disabled={making !== null} onClick={start}>
        {toPaper.file}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}
