import { numbers } from './numbers.ts';

/** A part of a sheet that is larger than the glass; rows and columns count from 1. */
export interface PartName {
  readonly number: number;
  readonly count: number;
  readonly column: number;
  readonly row: number;
}

/** The drawing true to size on the glass, with paper on top. */
export const tracing = {
  open: 'Trace it on the glass',
  title: 'Tracing table',
  close: 'Close',
  back: 'Back',
  card: {
    title: 'How large is this glass?',
    how: 'Lay a card on the picture. It must be as large as a bank card: 85.6 mm wide (ISO/IEC 7810).',
    fit: 'Make the picture just as wide as the card.',
    width: 'Width of the picture',
    pixels: (px: number) => `${numbers.short(px, 1)} pixels`,
    less: 'Smaller',
    more: 'Larger',
    use: 'It fits',
  },
  before: {
    title: 'Before you trace',
    how: [
      'Make the screen bright and the room dark.',
      'Wipe the glass. Lay thin paper on it. Tape it at the edge.',
      'Leave the strip at the bottom free. There you unlock the glass.',
      'Draw the thin crosses too. There the parts join.',
    ],
    cautionTitle: 'Take care of the glass',
    cautions: [
      'Press lightly. Glass can break.',
      'Trace with a pencil. Ink that goes through the paper stains the glass.',
      'Fill in with the markers later, on the table.',
      'Keep drinks away.',
      'Wipe the glass at the end, with a dry soft cloth. What its maker says comes first.',
    ],
    by: 'Common practice, no source.',
    other:
      'The zoom or the screen is another one than with the card. Set the zoom back, or hold the card again.',
    again: 'Hold the card again',
    start: 'Lay it out',
  },
  part: ({ number, count, column, row }: PartName): string =>
    count === 1 ? 'The whole sheet' : `Part ${number} of ${count}: column ${column}, row ${row}`,
  previous: 'Previous part',
  next: 'Next part',
  lock: 'Lock the glass',
  locked: 'Locked: trace now.',
  hold: 'Hold for 2 seconds to unlock',
  holdKey: 'With keys: hold Esc.',
  ruler: '100 mm: check it',
};
