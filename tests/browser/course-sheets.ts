import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { EMPTY_DRAWING } from '../../shared/documents/design.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { type SvgPath, type SvgRole, svgOf } from '../../shared/picture/svg.ts';
import { layOut } from '../../shared/track/layout.ts';

/** Sheets as a page draws them: given ink dark, the maker's lines in the accent, every name in its place. */

const FACE = new URL(
  '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  import.meta.url,
);

const LOOKS: Readonly<Record<SvgRole, string>> = {
  'grid-fine': 'stroke:#ede5d6;stroke-width:0.2',
  'grid-coarse': 'stroke:#dcd0ba;stroke-width:0.3',
  area: 'fill:#e9edf6;stroke:#24478f;stroke-width:0.7',
  'keep-out': 'fill:#f3ecdd;stroke:#9a5200;stroke-width:1;stroke-dasharray:4 2',
  box: 'stroke:#5b6070;stroke-width:1;stroke-dasharray:2 2',
  'box-corner': 'stroke:#5b6070;stroke-width:1.2',
  gate: 'stroke:#5b6070;stroke-width:1.2;stroke-dasharray:1 3.4',
  berth: 'stroke:#5b6070;stroke-width:1;stroke-dasharray:3.4 2.6',
  bow: 'stroke:#5b6070;stroke-width:1',
  given: 'stroke:#16181d',
  line: 'stroke:#24478f',
  band: 'stroke:#16181d;stroke-width:0.5',
  hatch: 'stroke:#16181d;stroke-width:0.25',
  'hatch-dots': 'stroke:#16181d;stroke-width:0.8',
};

const ANCHOR = { left: 'start', middle: 'middle', right: 'end' } as const;
const BASELINE = { top: 'hanging', middle: 'central', bottom: 'auto' } as const;

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

function pathSvg({ role, d, width, color }: SvgPath): string {
  const size = width === undefined ? '' : `;stroke-width:${width}`;
  return `<path d="${d}" style="${LOOKS[role]}${size}${color === undefined ? '' : `;fill:${color}`}"/>`;
}

/** One sheet with the maker's design on it, in mm. */
function sheetSvg({ sheet, kit, model }: Challenge): string {
  const layout = layOut(sheet, model?.drawing ?? EMPTY_DRAWING);
  const { w, h, paths, labels } = svgOf(pictureOf({ sheet, kit, layout }), { grid: true, hatch: true });
  const names = labels.map(
    ({ text, at, align, baseline }) =>
      `<text x="${at.x}" y="${at.y}" text-anchor="${ANCHOR[align]}" dominant-baseline="${BASELINE[baseline]}" font-size="${w / 36}">${escaped(text)}</text>`,
  );
  return `<svg viewBox="0 0 ${w} ${h}" fill="none" stroke-linecap="round" stroke-linejoin="round">${paths.map(pathSvg).join('')}<g fill="#16181d" font-weight="600">${names.join('')}</g></svg>`;
}

/** A page with all sheets, four in a row. */
export function contactSheet(challenges: readonly (readonly [string, Challenge])[]): string {
  const face = readFileSync(fileURLToPath(FACE)).toString('base64');
  const sheets = challenges.map(
    ([title, challenge]) =>
      `<figure data-key="${challenge.id}"><figcaption><b>${challenge.topic}</b> ${escaped(title)} <i>${challenge.play}</i><br>${escaped(challenge.sentence.en)}</figcaption>${sheetSvg(challenge)}</figure>`,
  );
  return `<!doctype html><meta charset="utf-8"><title>The course</title><style>
@font-face { font-family: Hyperlegible; font-weight: 200 800; src: url(data:font/woff2;base64,${face}) format("woff2"); }
body { margin: 16px; background: #fbf7ef; color: #16181d; font: 15px Hyperlegible; display: grid; grid-template-columns: repeat(4, 1fr); gap: 18px 16px; }
figure { margin: 0; } figcaption { min-height: 3.9em; } i { color: #5b6070; }
svg { display: block; width: 100%; background: #fff; box-shadow: 0 2px 8px rgb(74 58 24 / 0.15); }
text { font-family: Hyperlegible; }
</style>${sheets.join('')}`;
}
