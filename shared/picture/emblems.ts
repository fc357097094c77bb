/** Emblems that the icon library lacks, as strokes on its square of 24 units. */
export const DRAWN_EMBLEMS = {
  kite: ['M14 2 21 9l-10 6-3-6z', 'M21 9 8 9M14 2l-3 13', 'M11 15c-1 2-3 1-4 3s-3 1-4 4'],
  lantern: [
    'M9 6a3 3 0 0 1 6 0M7 9 8.5 6h7L17 9zM8 9v9M16 9v9M6.5 18h11v3h-11z',
    'M12 16.2c-1.5-.7-1.7-2.2 0-4.2 1.7 2 1.5 3.5 0 4.2z',
  ],
  candle: [
    'M12 8c-1.7-.8-2-2.8 0-5.5 2 2.7 1.7 4.7 0 5.5zM12 8v2.5',
    'M9 10.5h6V19H9zM5 19h14l-1.5 2.5h-11z',
  ],
  ladder: ['M8 2v20M16 2v20M8 6h8M8 10.5h8M8 15h8M8 19.5h8'],
  bucket: ['M4.5 9 7 21h10l2.5-12M4.5 9a7.5 2.2 0 0 0 15 0a7.5 2.2 0 0 0-15 0', 'M4.5 9a7.5 7 0 0 1 15 0'],
  teapot: [
    'M6.5 10h11v5a5 5 0 0 1-5 5h-1a5 5 0 0 1-5-5zM8.5 10a3.5 3 0 0 1 7 0M12 7V5.5',
    'M6.5 16.5C4 16 4 12.5 2 11.5M17.5 11.5h1.5a2.5 2.5 0 0 1 0 5h-1.7',
  ],
} as const;
export type DrawnEmblem = keyof typeof DRAWN_EMBLEMS;
