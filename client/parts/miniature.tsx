import { memo, useMemo } from 'react';
import { type Drawing, EMPTY_DRAWING } from '../../shared/documents/design.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { type SvgPath, type SvgPicture, svgOf } from '../../shared/picture/svg.ts';
import { layOut } from '../../shared/track/layout.ts';
import { useKitOnScreen } from './kit-on-screen.ts';
import { useLocale } from './use-words.ts';
import './miniature.css';

export interface MiniatureProps {
  readonly sheet: Sheet;
  readonly kit: Kit;
  /** Nothing drawn yet where it is absent. */
  readonly drawing?: Drawing | undefined;
  /** Said aloud in the place of the picture; without it the picture is decoration. */
  readonly label?: string;
  /** Names of berths, gates and areas, for a miniature big enough to read them. */
  readonly names?: boolean;
  /** CSS width; the height follows from the sheet. */
  readonly width?: number | string;
}

/** Thinner lines than this, in px of a miniature 200 px wide, can't be seen. */
const LEAST_LINE_MM = 5;

/** A sheet with a drawing on it as a small still picture: a few SVG paths, no canvas. */
export const Miniature = memo(function Miniature(props: MiniatureProps) {
  const { sheet, drawing, label, width, names = false } = props;
  const kit = useKitOnScreen(props.kit);
  const language = useLocale();
  const picture = useMemo(
    () =>
      svgOf(
        pictureOf({ sheet, kit, layout: layOut(sheet, drawing ?? EMPTY_DRAWING), language, still: names }),
      ),
    [sheet, kit, drawing, language, names],
  );
  const named = label === undefined ? {} : { label };
  return <PictureSvg picture={picture} {...named} names={names} width={width ?? '100%'} />;
});

interface PictureSvgProps {
  readonly picture: SvgPicture;
  readonly label?: string;
  readonly names: boolean;
  readonly width: number | string;
}

function PictureSvg({ picture, label, names, width }: PictureSvgProps) {
  const named = label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label };
  // Paths are made anew with each picture and have no state: their place is name enough.
  const numbered = picture.paths.map((path, place) => ({ path, place }));
  const box = { width, aspectRatio: `${picture.w} / ${picture.h}` };
  return (
    <span className="miniature" style={box} {...named}>
      <svg viewBox={`0 0 ${picture.w} ${picture.h}`} aria-hidden="true" focusable="false">
        {numbered.map(({ path, place }) => (
          <path key={place} className={`miniature-${path.role}`} d={path.d} style={looksOf(path, picture)} />
        ))}
        {names &&
          picture.labels.map(({ text, at, align, baseline }) => (
            <text
              key={`${text} ${at.x} ${at.y}`}
              className="miniature-name"
              x={at.x}
              y={baseline === 'bottom' ? at.y - picture.w / 200 : at.y}
              textAnchor={ANCHOR[align]}
              dominantBaseline={BASELINE[baseline]}
              fontSize={picture.w / 34}
            >
              {text}
            </text>
          ))}
      </svg>
    </span>
  );
}

const ANCHOR = { left: 'start', middle: 'middle', right: 'end' } as const;
const BASELINE = { top: 'hanging', middle: 'central', bottom: 'auto' } as const;

/** Big sheets get thicker lines, or a drawing of 3 m would vanish in a picture of 200 px. */
function looksOf(path: SvgPath, picture: SvgPicture) {
  const least = Math.max(LEAST_LINE_MM, picture.w / 70);
  if (path.width !== undefined) return { strokeWidth: Math.max(path.width, least) };
  // Colours of bands are the kit's data, so they can't stand in the style sheet.
  if (path.color !== undefined) return { fill: path.color };
  return {};
}
