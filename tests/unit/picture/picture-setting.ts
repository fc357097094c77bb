import type { Drawing } from '../../../shared/documents/design.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';

/** A made-up sheet with everything that can stand on one. */
export const FULL_SHEET: Sheet = {
  w: 300,
  h: 200,
  start: { name: { en: 'Boathouse', es: 'Cobertizo' }, at: { x: 50, y: 150 }, heading: 0, r: 15 },
  finish: { name: { en: 'Lighthouse' }, at: { x: 250, y: 50 }, heading: Math.PI / 2, r: 15 },
  gates: [{ id: 'g', name: { en: 'Bakery' }, a: { x: 150, y: 130 }, b: { x: 150, y: 170 } }],
  areas: [
    {
      id: 'a',
      name: { en: 'Pier' },
      polygon: [
        { x: 100, y: 20 },
        { x: 140, y: 20 },
        { x: 140, y: 40 },
        { x: 100, y: 40 },
      ],
    },
  ],
  keepOut: [
    {
      id: 'k',
      name: { en: 'Sandbank' },
      polygon: [
        { x: 200, y: 120 },
        { x: 230, y: 120 },
        { x: 215, y: 150 },
      ],
    },
  ],
  given: { lines: [], marks: [] },
};

/** One straight of 200 mm, with a mark of two bands 40 mm along it. */
export const STRAIGHT: Drawing = {
  lines: [{ id: 'l1', width: 5, from: { x: 50, y: 150 }, pieces: [{ to: { x: 250, y: 150 }, bulge: 0 }] }],
  marks: [
    {
      id: 'm1',
      line: 'l1',
      at: 40,
      bands: [
        { ink: 'C', length: 5.5, gap: 0 },
        { ink: 'A', length: 5.5, gap: 0.5 },
      ],
    },
  ],
};
