import { ArrowLeft, ChevronLeft, ChevronRight, Lock } from 'lucide-react';
import { type ReactNode, useMemo, useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { crossesOf, evened, partsOf, tilingOf } from '../../../shared/picture/tiles.ts';
import { useBox } from '../../canvas/use-fitted.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useAwake } from '../../parts/use-wake-lock.ts';
import { useWords } from '../../parts/use-words.ts';
import { HoldButton } from './hold-button.tsx';
import { Ruler, TracedPart } from './traced-part.tsx';
import { useNothingReacts } from './use-nothing-reacts.ts';

/** Glass that shows less than this many mm is as good as none; parts have to be longer than they overlap. */
const LEAST_MM = 30;

export interface GlassPageProps {
  readonly challenge: Challenge;
  readonly design: Design;
  readonly pxPerMm: number;
  readonly locked: boolean;
  readonly onLocked: (locked: boolean) => void;
  readonly onBack: () => void;
}

/** The drawing, part by part, over a strip that says which part it is and that locks the glass. */
export function GlassPage(props: GlassPageProps) {
  const { challenge, design, pxPerMm, locked, onLocked, onBack } = props;
  const { tracing } = useWords();
  const stage = useRef<HTMLDivElement>(null);
  const box = useBox(stage);
  const [wanted, setWanted] = useState(1);
  useAwake(true);
  useNothingReacts(locked);
  const { sheet } = challenge;
  const tiling = useMemo(() => {
    const mm = (px: number) => Math.max(LEAST_MM, px / pxPerMm);
    return box && evened(tilingOf(sheet, { w: mm(box.width), h: mm(box.height) }));
  }, [box, sheet, pxPerMm]);
  const parts = tiling ? partsOf(tiling) : [];
  // A tablet that was turned may have fewer parts.
  const part = parts[Math.min(wanted, parts.length) - 1];
  const named = part && { ...part, count: parts.length, column: part.column + 1, row: part.row + 1 };
  const name = named ? tracing.part(named) : '';
  const step = (by: number) => setWanted((part?.number ?? 1) + by);
  return (
    <div className="tracing-glass" data-locked={locked}>
      <div className="tracing-stage" ref={stage}>
        {tiling && part && (
          <TracedPart
            challenge={challenge}
            design={design}
            part={part}
            crosses={crossesOf(tiling)}
            pxPerMm={pxPerMm}
            label={name}
          />
        )}
      </div>
      <div className="tracing-strip">
        <div className="tracing-facts">
          <Ruler pxPerMm={pxPerMm} label={tracing.ruler} />
          <p role="status">
            <strong>{name}</strong> {locked && tracing.locked}
          </p>
        </div>
        <div className="tracing-either">
          <Layer on={!locked}>
            <Button icon={<Icon of={ArrowLeft} size={22} />} onClick={onBack}>
              {tracing.back}
            </Button>
            {parts.length > 1 && (
              <>
                <Button
                  icon={<Icon of={ChevronLeft} size={22} />}
                  disabled={part?.number === 1}
                  onClick={() => step(-1)}
                >
                  {tracing.previous}
                </Button>
                <Button
                  icon={<Icon of={ChevronRight} size={22} />}
                  disabled={part?.number === parts.length}
                  onClick={() => step(1)}
                >
                  {tracing.next}
                </Button>
              </>
            )}
            <Button look="primary" icon={<Icon of={Lock} size={22} />} onClick={() => onLocked(true)}>
              {tracing.lock}
            </Button>
          </Layer>
          <Layer on={locked}>{locked && <HoldButton onHeld={() => onLocked(false)} />}</Layer>
        </div>
      </div>
    </div>
  );
}

/** Both sets of buttons keep their room, so that the drawing stays where it is when the glass is locked. */
function Layer({ on, children }: { readonly on: boolean; readonly children: ReactNode }) {
  return (
    <div className="tracing-buttons" data-on={on} inert={!on}>
      {children}
    </div>
  );
}
