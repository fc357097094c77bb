import { useMemo } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { EMPTY_DRAWING } from '../../../shared/documents/design.ts';
import { pictureOf } from '../../../shared/picture/picture.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { paintPointed } from '../../canvas/paint-question.ts';
import { together } from '../../canvas/painter.ts';
import { SheetView } from '../../canvas/sheet-view.tsx';
import { useFitted } from '../../canvas/use-fitted.ts';
import { useKitOnScreen } from '../../parts/kit-on-screen.ts';
import { useLocale } from '../../parts/use-words.ts';
import { type Pointing, pointedBy, travellerOf } from './pointed.ts';

export interface GivenSheetProps {
  readonly challenge: Pick<Challenge, 'sheet' | 'kit'>;
  readonly question: Pointing;
  readonly label: string;
}

/** What is given, with the traveller of the question waiting, and the place that it is about. */
export function GivenSheet({ challenge, question, label }: GivenSheetProps) {
  const { sheet } = challenge;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const { frame, box, view } = useFitted(sheet, 14);
  const layout = useMemo(() => layOut(sheet, EMPTY_DRAWING), [sheet]);
  const picture = useMemo(() => pictureOf({ sheet, kit, layout, language }), [sheet, kit, layout, language]);
  const over = useMemo(
    () => together(travellerOf(question, challenge), paintPointed(pointedBy(question, challenge, layout))),
    [challenge, question, layout],
  );
  return (
    <div className="surface-frame" ref={frame}>
      {box && view && (
        <SheetView picture={picture} box={box} view={view} textSize={16} over={over} label={label} />
      )}
    </div>
  );
}
