import { Trash2 } from 'lucide-react';
import { useMemo } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { fitRobot } from '../../../shared/prep/fit.ts';
import { fittedKit } from '../../../shared/prep/fit-kit.ts';
import { bandsTried, CORNERS_TRIED, limitOf } from '../../../shared/prep/fit-limits.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { useDevice } from '../../parts/device-settings.ts';
import { Icon } from '../../parts/icon.tsx';
import { SavePrint } from '../before/save-print.tsx';
import { useDesk } from '../desk-store.ts';
import { useWholeWords } from '../whole-words.ts';
import { FitLimits } from './fit-limits.tsx';
import { type FitNotes, isNothing, NO_NOTES, setNotes, useFitNotes } from './fit-notes.ts';
import { FitResult } from './fit-result.tsx';
import { FitRuns } from './fit-runs.tsx';
import { UseKit } from './use-kit.tsx';
import '../before/before.css';
import './fit.css';

interface FitProps {
  readonly room: RoomState | null;
  /** null until it is here. */
  readonly kit: Kit | null;
}

/** The kit's numbers from the class's own robots: timed runs, and what all of them make. */
export function FitLeaf({ room, kit: given }: FitProps) {
  const { fitting } = useWholeWords();
  const notes = useFitNotes();
  const offerUndo = useDesk((state) => state.offerUndo);
  const kit = given ?? DEMO_KIT;
  const fit = useMemo(() => fitRobot(notes.runs, kit.robot), [notes.runs, kit.robot]);
  const corner = limitOf(notes.corners, notes.tried);
  const band = limitOf(notes.bands, notes.tried);
  const fitted = fittedKit(kit, {
    fit,
    corner: corner ? CORNERS_TRIED[corner.step]! : null,
    band: band ? (bandsTried(kit)[band.step] ?? null) : null,
  });
  /** Changes what is typed; what is said can be taken back. */
  const change = (next: FitNotes, said?: string) => {
    setNotes(next);
    if (said !== undefined) offerUndo({ said, back: () => setNotes(notes) });
  };
  return (
    <section className="before fit" aria-labelledby="fit-title">
      <h2 id="fit-title">{fitting.leaf}</h2>
      <p>{fitting.how}</p>
      <p className="desk-quiet">{fitting.first}</p>
      {room && <Prints room={room} />}
      <h3>{fitting.runsTitle}</h3>
      <FitRuns notes={notes} kit={kit} onChange={change} />
      <h3>{fitting.result}</h3>
      <FitResult fit={fit} kit={kit} />
      <h3>{fitting.limitsTitle}</h3>
      <FitLimits notes={notes} kit={kit} corner={corner} band={band} onChange={change} />
      <h3>{fitting.useTitle}</h3>
      <UseKit room={room} kit={kit} changed={fitted} />
      {!isNothing(notes) && (
        <Button look="quiet" icon={<Icon of={Trash2} />} onClick={() => change(NO_NOTES, fitting.cleared)}>
          {fitting.clear}
        </Button>
      )}
    </section>
  );
}

function Prints({ room }: { readonly room: RoomState }) {
  const { print } = useWholeWords();
  const { language, units } = useDevice();
  return (
    <div className="fit-prints">
      {(['timed-line', 'timed-circle', 'limits'] as const).map((kind) => (
        <SavePrint
          key={kind}
          wanted={{ kind, language, units, room: room.id }}
          label={print.page.kind(kind)}
        />
      ))}
    </div>
  );
}
