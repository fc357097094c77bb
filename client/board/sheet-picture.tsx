import { useMemo } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Drawing, EMPTY_DRAWING } from '../../shared/documents/design.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { layOut } from '../../shared/track/layout.ts';
import { SheetView } from '../canvas/sheet-view.tsx';
import { useFitted } from '../canvas/use-fitted.ts';
import { useKitOnScreen } from '../parts/kit-on-screen.ts';
import { useLocale } from '../parts/use-words.ts';
import { useRem } from './use-rem.ts';
import './sheet-picture.css';

export interface SheetPictureProps {
  readonly challenge: Pick<Challenge, 'sheet' | 'kit' | 'begin'>;
  readonly drawing?: Drawing;
  readonly label: string;
}

/** A sheet as large as its place allows, with names that can be read from the back. */
export function SheetPicture({ challenge, drawing, label }: SheetPictureProps) {
  const { sheet, begin } = challenge;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const rem = useRem();
  const { frame, box, view } = useFitted(sheet, 4);
  const shown = drawing ?? begin?.drawing ?? EMPTY_DRAWING;
  const picture = useMemo(
    () => pictureOf({ sheet, layout: layOut(sheet, shown), kit, language }),
    [sheet, shown, kit, language],
  );
  return (
    <div className="sheet-picture" ref={frame} style={{ aspectRatio: `${sheet.w} / ${sheet.h}` }}>
      {box && view && <SheetView picture={picture} box={box} view={view} textSize={rem} label={label} />}
    </div>
  );
}
