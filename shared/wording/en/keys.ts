const UNDER = {
  end: 'an end',
  corner: 'a corner',
  middle: 'the middle of a curve',
  line: 'a line',
  paper: 'paper',
} as const;

/** Drawing with keys. */
export const keys = {
  title: 'Keys',
  close: 'Close',
  /** Said of the paper when the focus comes to it. */
  how: 'Arrows move a cursor over the paper. Enter takes hold and lets go. The question mark shows all keys.',
  place: (across: string, down: string): string => `${across} across, ${down} down`,
  under: (kind: keyof typeof UNDER): string => UNDER[kind],
  mark: (name: string): string => `mark ${name}`,
  inBox: (name: string): string => `inside ${name}`,
  holds: 'held',
  noFreehand: 'Freehand needs a finger. Keys draw straights; Curve bends them.',
  rows: [
    ['← → ↑ ↓', 'move the cursor by 5 mm'],
    ['Shift + ← → ↑ ↓', 'move it by 1 mm'],
    ['N', 'to the next end, corner, middle or mark; with Shift to the one before'],
    ['Enter', 'begin and end a straight; place a mark; rub out; take hold and let go'],
    ['Shift + Enter', 'choose one thing more, with Move'],
    ['1 … 7', 'choose a tool, in the order on the page'],
    ['F', 'flip the chosen mark'],
    ['Delete', 'rub out what is chosen'],
    ['Esc', 'let go; then put the cursor away'],
    ['G', 'to the next thing to look at'],
    ['R', 'the sheet in words'],
    ['T', 'try it'],
    ['+ −', 'closer, further away'],
    ['0', 'whole sheet'],
    ['Ctrl + Z, Ctrl + Y', 'undo, redo'],
    ['Ctrl + A, Ctrl + D', 'choose all, copy what is chosen'],
    ['?', 'these keys'],
  ] as readonly (readonly [string, string])[],
};
