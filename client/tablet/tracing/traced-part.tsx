import { useMemo } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { Mm, PaperPoint } from '../../../shared/geometry/units.ts';
import { pictureOf } from '../../../shared/picture/picture.ts';
import { svgOf } from '../../../shared/picture/svg.ts';
import type { Part } from '../../../shared/picture/tiles.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { useLocale } from '../../parts/use-words.ts';

const CROSS_ARM: Mm = 4;

export interface TracedPartProps {
  readonly challenge: Challenge;
  readonly design: Design;
  readonly part: Part;
  readonly crosses: readonly PaperPoint[];
  readonly pxPerMm: number;
  readonly label: string;
}

/** What lies in one part of the sheet, true to size: all of it, since paper may be blank. */
export function TracedPart({ challenge, design, part, crosses, pxPerMm, label }: TracedPartProps) {
  const { sheet, kit } = challenge;
  const language = useLocale();
  const paths = useMemo(() => {
    const layout = layOut(sheet, design.drawing);
    const { paths: all } = svgOf(pictureOf({ sheet, kit, layout, language }), { hatch: true });
    // Made anew with each picture and without a state: their place is name enough.
    return all.map((path, place) => ({ path, place }));
  }, [sheet, kit, design, language]);
  const { x, y, w, h } = part;
  const joints = crosses.map((at) => crossPath(at)).join('');
  return (
    <svg
      className="traced"
      role="img"
      aria-label={label}
      width={w * pxPerMm}
      height={h * pxPerMm}
      viewBox={`${x} ${y} ${w} ${h}`}
    >
      <rect className="traced-edge" width={sheet.w} height={sheet.h} />
      {paths.map(({ path, place }) => (
        <path
          key={place}
          className={`traced-${path.role}`}
          d={path.d}
          style={{ strokeWidth: path.width, fill: path.color }}
        />
      ))}
      <path className="traced-cross" d={joints} />
    </svg>
  );
}

const crossPath = ({ x, y }: PaperPoint): string =>
  `M${x - CROSS_ARM} ${y}h${2 * CROSS_ARM}M${x} ${y - CROSS_ARM}v${2 * CROSS_ARM}`;

const RULER: Mm = 100;
/** Strokes every 10 mm, longer at both ends and in the middle. */
const TICKS = Array.from({ length: 11 }, (_, i) => `M${i * 10} 5v${i % 5 === 0 ? -4 : -2.5}`).join('');

/** 100 mm to hold a real ruler against, from the middle of its first stroke to the middle of its last. */
export function Ruler({ pxPerMm, label }: { readonly pxPerMm: number; readonly label: string }) {
  const [w, h] = [RULER + 2, 6];
  return (
    <figure className="tracing-ruler">
      {/* Browsers round sizes; what a low picture loses in height must not make it shorter. */}
      <svg
        aria-hidden="true"
        preserveAspectRatio="none"
        width={w * pxPerMm}
        height={h * pxPerMm}
        viewBox={`-1 0 ${w} ${h}`}
      >
        <path className="tracing-ruler-line" d={`M0 5H${RULER}`} />
        <path d={TICKS} />
      </svg>
      <figcaption>{label}</figcaption>
    </figure>
  );
}
