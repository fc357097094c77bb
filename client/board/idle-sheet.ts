import type { Drawing } from '../../shared/documents/design.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';

/** A picture for the time before a room is open. No challenge of the library, so it gives nothing away. */
export const IDLE_SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'Pier' }, at: { x: 45, y: 160 }, heading: 0, r: 15 },
  finish: { name: { en: 'Lighthouse' }, at: { x: 245, y: 50 }, heading: 0, r: 15 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

const QUARTER = Math.SQRT2 - 1;
const BAND = 5.5;

export const IDLE_DRAWING: Drawing = {
  lines: [
    {
      id: 'way',
      width: 5,
      from: { x: 45, y: 160 },
      pieces: [
        { to: { x: 120, y: 160 }, bulge: 0 },
        { to: { x: 148, y: 132 }, bulge: -QUARTER },
        { to: { x: 148, y: 78 }, bulge: 0 },
        { to: { x: 176, y: 50 }, bulge: QUARTER },
        { to: { x: 245, y: 50 }, bulge: 0 },
      ],
    },
  ],
  marks: [
    {
      id: 'first',
      line: 'way',
      at: 42,
      bands: [
        { ink: 'C', length: BAND, gap: 0 },
        { ink: 'A', length: BAND, gap: 0 },
      ],
    },
    {
      id: 'second',
      line: 'way',
      at: 242,
      bands: [
        { ink: 'A', length: BAND, gap: 0 },
        { ink: 'V', length: BAND, gap: 0 },
        { ink: 'A', length: BAND, gap: 0 },
      ],
    },
  ],
};
