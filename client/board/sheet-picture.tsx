import { useMemo } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Drawing, EMPTY_DRAWING } from '../../shared/documents/design.ts';
import { layOut } from '../../shared/track/layout.ts';
import { paintInk } from '../canvas/paint-ink.ts';
import { paintSheet } from '../canvas/paint-sheet.ts';
import { together } from '../canvas/painter.ts';
import { shownPicture } from '../canvas/shown-picture.ts';
import { StillSheet } from '../canvas/still-sheet.tsx';
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
  const paint = useMemo(() => {
    const layout = layOut(sheet, shown);
    const picture = shownPicture({ sheet, layout, kit, language }, rem, view);
    return together(paintSheet(picture, rem), paintInk(picture));
  }, [sheet, shown, kit, language, rem, view]);
  return (
    <div className="sheet-picture" ref={frame} style={{ aspectRatio: `${sheet.w} / ${sheet.h}` }}>
      {box && view && <StillSheet paint={paint} sheet={sheet} box={box} view={view} label={label} />}
    </div>
  );
}
