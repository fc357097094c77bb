import { type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from 'react';
import { EMPTY_DRAWING } from '../../../shared/documents/design.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { pictureOf } from '../../../shared/picture/picture.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { SheetView } from '../../canvas/sheet-view.tsx';
import { useFitted } from '../../canvas/use-fitted.ts';
import { toPaper, toScreen, type View } from '../../canvas/view.ts';
import { onGrid } from '../../editor/snap.ts';
import { useKitOnScreen } from '../../parts/kit-on-screen.ts';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { type Handle, handlesOf, moved, type PlaceRef, placeIn, samePlaceRef } from './places.ts';
import { useChallenge, type Work } from './work.ts';

export interface PlacesSurfaceProps {
  readonly work: Work;
  /** null: the sheet is only looked at. */
  readonly handles: { readonly chosen: PlaceRef | null; readonly onChoose: (place: PlaceRef) => void } | null;
}

const PAD = 18;

/** The sheet with what is drawn on it; berths, gates and areas can be taken hold of, by hand and by keys. */
export function PlacesSurface({ work, handles }: PlacesSurfaceProps) {
  const { places } = useWholeWords().builder;
  const challenge = useChallenge(work);
  // While a hand pulls, what would come of it; the work changes once, when it lets go.
  const [pulled, setPulled] = useState<Sheet | null>(null);
  const sheet = pulled ?? challenge.sheet;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const { frame, box, view } = useFitted(sheet, PAD);
  const drawing = (challenge.model ?? challenge.begin)?.drawing ?? EMPTY_DRAWING;
  const picture = useMemo(
    () => pictureOf({ sheet, kit, layout: layOut(sheet, drawing), language }),
    [sheet, kit, drawing, language],
  );
  const drop = (now: Sheet | null) => {
    setPulled(null);
    if (now) work.change({ ...challenge, sheet: now });
  };
  return (
    <div className="surface-frame" ref={frame}>
      {box && view && (
        <SheetView picture={picture} box={box} view={view} label={places.picture}>
          {handles &&
            handlesOf(sheet).map((handle) => (
              <HandleButton
                key={`${handle.place.kind} ${handle.place.id} ${handle.part} ${handle.corner}`}
                handle={handle}
                sheet={sheet}
                view={view}
                chosen={samePlaceRef(handle.place, handles.chosen)}
                onChoose={handles.onChoose}
                onPull={setPulled}
                onDrop={drop}
                onNudge={(now) => work.change({ ...challenge, sheet: now }, `nudge ${handle.place.id}`)}
              />
            ))}
        </SheetView>
      )}
    </div>
  );
}

interface HandleButtonProps {
  readonly handle: Handle;
  readonly sheet: Sheet;
  readonly view: View;
  readonly chosen: boolean;
  readonly onChoose: (place: PlaceRef) => void;
  readonly onPull: (sheet: Sheet) => void;
  /** null: it was not moved. */
  readonly onDrop: (sheet: Sheet | null) => void;
  readonly onNudge: (sheet: Sheet) => void;
}

const ARROWS: Readonly<Record<string, PaperPoint>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};
/** mm a press of an arrow. */
const STRIDE = 5;

function HandleButton(props: HandleButtonProps) {
  const { handle, sheet, view, chosen, onChoose, onPull, onDrop, onNudge } = props;
  const { places } = useWholeWords().builder;
  const name = textIn(placeIn(sheet, handle.place)!.name, useLocale());
  const { px, py } = toScreen(view, handle.at);
  const pull = useRef<{ readonly grab: PaperPoint; sheet: Sheet | null } | null>(null);
  const at = (event: PointerEvent) => toPaper(view, { px: event.clientX, py: event.clientY });
  const down = (event: PointerEvent<HTMLButtonElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    const here = at(event);
    pull.current = { grab: { x: handle.at.x - here.x, y: handle.at.y - here.y }, sheet: null };
    onChoose(handle.place);
  };
  const move = (event: PointerEvent) => {
    const { current } = pull;
    if (!current) return;
    const here = at(event);
    const exact = { x: here.x + current.grab.x, y: here.y + current.grab.y };
    current.sheet = moved(sheet, handle, event.shiftKey ? exact : onGrid(exact), event.shiftKey);
    onPull(current.sheet);
  };
  const up = () => {
    const { current } = pull;
    pull.current = null;
    if (current) onDrop(current.sheet);
  };
  const cancel = () => {
    pull.current = null;
    onDrop(null);
  };
  const press = (event: KeyboardEvent) => {
    const arrow = ARROWS[event.key];
    if (!arrow) return;
    event.preventDefault();
    const by = event.shiftKey ? 1 : STRIDE;
    onNudge(moved(sheet, handle, { x: handle.at.x + arrow.x * by, y: handle.at.y + arrow.y * by }, true));
  };
  return (
    <button
      type="button"
      className="builder-handle"
      data-part={handle.part}
      data-chosen={chosen}
      style={{ left: px, top: py }}
      aria-label={places.handle(name, handle.part, handle.corner + 1)}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={cancel}
      onFocus={() => onChoose(handle.place)}
      onKeyDown={press}
    />
  );
}
