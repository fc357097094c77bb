import { type Action, actionOf, type Kit, reversed } from '../../shared/documents/kit.ts';
import { directionAt, pointAt } from '../../shared/geometry/path.ts';
import type { Direction } from '../../shared/geometry/piece.ts';
import type { PaperPoint, ScreenPoint } from '../../shared/geometry/units.ts';
import type { Layout } from '../../shared/track/layout.ts';
import { covers, type Place } from './placement.ts';
import { toScreen, type View } from './view.ts';

/** An arrow beside a mark for those who travel its way, and what the mark tells them. */
export interface ReadingNote {
  readonly mark: string;
  /** Where the arrow lies and where it points. */
  readonly at: PaperPoint;
  readonly along: Direction;
  /** null where there is no room for it, or where the other arrow says it already. */
  readonly text: {
    readonly said: string;
    readonly at: ScreenPoint;
    readonly align: 'left' | 'middle' | 'right';
  } | null;
}

export interface NotesSource {
  readonly layout: Layout;
  readonly kit: Kit;
  readonly view: View;
  /** What should stay visible: samples along the ink, names. */
  readonly clear: readonly ScreenPoint[];
  /** The name of what a mark does; of nothing where the chart has no such word. */
  readonly nameOf: (action: Action | undefined) => string;
  /** Of the letters, CSS pixels. */
  readonly size: number;
  /** The mark whose bands have handles beside the line. */
  readonly chosen: string | null;
}

/** From the line's edge to an arrow and on to its words, CSS pixels. */
const ARROW_OFF = 9;
const WORDS_OFF = 8;
/** So much further words stand where handles are, CSS pixels. */
const PAST_HANDLES = 20;
/** Mean width of a letter, in text sizes. */
const LETTER = 0.55;

/**
 * Two notes a mark, each on the right of those who read it so. Words that would cover ink, a name or other
 * words are left out; the arrows always stand.
 */
export function readingNotes(source: NotesSource): ReadingNote[] {
  const { layout, kit, view, nameOf } = source;
  const taken: Place[] = [];
  const notes: ReadingNote[] = [];
  for (const mark of layout.marks) {
    const line = layout.lines.find((each) => each.id === mark.line);
    if (!line) continue;
    const way = (mark.from + mark.to) / 2;
    const middle = pointAt(line.path, way);
    const along = directionAt(line.path, way);
    const there = nameOf(actionOf(kit, mark.word));
    const back = nameOf(actionOf(kit, reversed(mark.word)));
    const off = line.width / 2 + ARROW_OFF / view.scale;
    const wordsOff = mark.id === source.chosen ? WORDS_OFF + PAST_HANDLES : WORDS_OFF;
    let said = false;
    for (const [heading, name] of [
      [along, there],
      [{ x: -along.x, y: -along.y }, back],
    ] as const) {
      const right = { x: -heading.y, y: heading.x };
      const at = { x: middle.x + right.x * off, y: middle.y + right.y * off };
      const text = said && there === back ? null : textBeside(name, at, right, wordsOff, source, taken);
      if (text) said = true;
      notes.push({ mark: mark.id, at, along: heading, text });
    }
  }
  return notes;
}

/** Level words beyond an arrow, where nothing is under them. Takes their place. */
function textBeside(
  said: string,
  arrow: PaperPoint,
  right: Direction,
  wordsOff: number,
  { view, clear, size }: NotesSource,
  taken: Place[],
): ReadingNote['text'] {
  const { px, py } = toScreen(view, arrow);
  const width = said.length * size * LETTER;
  const level = right.x > 0.5 || right.x < -0.5;
  const align = !level ? 'middle' : right.x > 0 ? 'left' : 'right';
  const away = wordsOff + (level ? 0 : size / 2);
  const at = { px: px + right.x * away, py: py + right.y * away };
  const left = at.px - (align === 'middle' ? width / 2 : align === 'right' ? width : 0);
  const place: Place = { left, top: at.py - size / 2, width, height: size };
  const meets = (other: Place) =>
    place.left < other.left + other.width + 4 &&
    other.left < place.left + place.width + 4 &&
    place.top < other.top + other.height + 2 &&
    other.top < place.top + place.height + 2;
  if (clear.some((point) => covers(place, point, 3)) || taken.some(meets)) return null;
  taken.push(place);
  return { said, at, align };
}
