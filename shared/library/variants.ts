import { Challenge, type Variant } from '../documents/challenge.ts';
import { type Band, type Design, type Drawing, type Mark, wordOf } from '../documents/design.ts';
import { type Action, actionOf, type Kit, reversed } from '../documents/kit.ts';
import type { Area, Berth, MarkBox, Sheet } from '../documents/sheet.ts';
import { parseDocument, writeDocument } from '../documents/values.ts';
import { boxOf } from '../geometry/box.ts';
import type { Mm, PaperPoint, Rad } from '../geometry/units.ts';
import { boxCorners } from '../track/mark-boxes.ts';

/**
 * Fair variants of a challenge, for neighbouring tables: the same sheet as in a mirror, or turned by half
 * a turn. Goals, limits and par stay; a drawing copied from the other table does not do. (A sheet that
 * looks the same after half a turn is turned in vain; none looks the same in a mirror.) Where the kit's chart
 * can't say left for right, nothing is mirrored.
 */
export function challengeIn(variant: Variant | null, challenge: Challenge): Challenge {
  const cannot = variant === 'mirrored' && !canMirror(challenge.kit);
  return (variant !== null && !cannot && variantOf(challenge, variant)) || challenge;
}

/**
 * Whether the chart has for every word that takes left or right the word that does so in the mirror. It is asked
 * instead of what a challenge needs, since teams are not told the maker's design and must come to the same.
 */
const canMirror = (kit: Kit): boolean => kit.chart.every(({ word }) => swappedWord(word, kit) !== undefined);

/**
 * The variant, in the numbers that its file holds. Undefined where a mark that is given, begun with or
 * part of the model chooses left or right and the chart has no word for the other choice that reads
 * the same from the other side. A variant of a variant of one kind is the challenge again but for its id.
 */
export function variantOf(challenge: Challenge, variant: Variant): Challenge | undefined {
  const { sheet, kit, begin, model, sentence, mirroredSentence } = challenge;
  const frame = frameOf(variant, sheet);
  const turned = {
    given: drawingIn(sheet.given, frame, kit),
    begin: begin && drawingIn(begin.drawing, frame, kit),
    model: model && drawingIn(model.drawing, frame, kit),
  };
  if (!turned.given || (begin && !turned.begin) || (model && !turned.model)) return undefined;
  const said =
    variant === 'mirrored' && mirroredSentence
      ? { sentence: mirroredSentence, mirroredSentence: sentence }
      : {};
  return asFiled({
    ...challenge,
    ...said,
    id: `${challenge.id.slice(0, 30)}-${variant[0]}`,
    sheet: { ...sheetIn(sheet, frame), given: turned.given },
    ...(turned.begin ? { begin: { version: 1, drawing: turned.begin } } : {}),
    ...(turned.model ? { model: { version: 1, drawing: turned.model } } : {}),
  });
}

/** A design for one sheet as it has to be on the variant of the sheet; undefined as with the variant itself. */
export function designIn(variant: Variant, { sheet, kit }: Challenge, design: Design): Design | undefined {
  const drawing = drawingIn(design.drawing, frameOf(variant, sheet), kit);
  return drawing && { version: 1, drawing };
}

/**
 * A design for one sheet of a challenge as it has to be on another; null is the sheet as it is. Each variant is its
 * own way back. Of the challenge only the kit and the sheet's size count, which all its sheets have in common.
 */
export function designOn(
  from: Variant | null,
  to: Variant | null,
  challenge: Challenge,
  design: Design,
): Design {
  if (from === to) return design;
  const steps = [from, to].filter((one) => one !== null && (one !== 'mirrored' || canMirror(challenge.kit)));
  return steps.reduce<Design>((on, step) => (step && designIn(step, challenge, on)) ?? on, design);
}

/** How places, headings and bends of a sheet become those of its variant. */
interface Frame {
  readonly place: (p: PaperPoint) => PaperPoint;
  readonly heading: (angle: Rad) => Rad;
  readonly mirrors: boolean;
}

function frameOf(variant: Variant, { w, h }: Sheet): Frame {
  if (variant === 'turned') {
    const place = ({ x, y }: PaperPoint) => ({ x: hundredth(w - x), y: hundredth(h - y) });
    return { place, heading: (angle) => (angle > 0 ? angle - Math.PI : angle + Math.PI), mirrors: false };
  }
  const place = ({ x, y }: PaperPoint) => ({ x: hundredth(w - x), y });
  return {
    place,
    heading: (angle) => (angle > 0 ? Math.PI - angle : -Math.PI - angle),
    mirrors: true,
  };
}

const hundredth = (value: Mm): Mm => Math.round(value * 100) / 100;

function sheetIn(sheet: Sheet, { place, heading }: Frame): Sheet {
  const berthIn = (berth: Berth): Berth => ({
    ...berth,
    at: place(berth.at),
    heading: heading(berth.heading),
  });
  const areaIn = (area: Area): Area => ({ ...area, polygon: area.polygon.map(place) });
  // The corner that comes to lie top left is the one that lay diagonally opposite, or beside it.
  const boxIn = (box: MarkBox): MarkBox => {
    const { minX, minY } = boxOf(boxCorners(box).map(place));
    return { ...box, at: { x: minX, y: minY } };
  };
  return {
    ...sheet,
    start: berthIn(sheet.start),
    ...(sheet.finish ? { finish: berthIn(sheet.finish) } : {}),
    gates: sheet.gates.map((gate) => ({ ...gate, a: place(gate.a), b: place(gate.b) })),
    areas: sheet.areas.map(areaIn),
    keepOut: sheet.keepOut.map(areaIn),
    ...(sheet.boxes ? { boxes: sheet.boxes.map(boxIn) } : {}),
  };
}

function drawingIn({ lines, marks }: Drawing, frame: Frame, kit: Kit): Drawing | undefined {
  const swapped = frame.mirrors ? marks.map((mark) => mirroredMark(mark, kit)) : marks;
  if (swapped.some((mark) => mark === undefined)) return undefined;
  return {
    lines: lines.map((line) => ({
      ...line,
      from: frame.place(line.from),
      pieces: line.pieces.map(({ to, bulge }) => ({
        to: frame.place(to),
        bulge: frame.mirrors && bulge !== 0 ? -bulge : bulge,
      })),
    })),
    marks: swapped.filter((mark) => mark !== undefined),
  };
}

/** A mark keeps its place, its side and how its bands are painted; left and right change places. */
function mirroredMark(mark: Mark, kit: Kit): Mark | undefined {
  const wanted = swappedWord(wordOf(mark), kit);
  if (wanted === undefined) return undefined;
  const inks = [...wanted];
  return { ...mark, bands: mark.bands.map((band, i): Band => ({ ...band, ink: inks[i]! })) };
}

/** The word of so many bands that says from either side what this one says in the mirror. */
function swappedWord(word: string, kit: Kit): string | undefined {
  const [there, back] = [actionOf(kit, word), actionOf(kit, reversed(word))];
  if (!isSided(there) && !isSided(back)) return word;
  const says = (candidate: string, action: Action | undefined) =>
    JSON.stringify(swapped(actionOf(kit, candidate))) === JSON.stringify(action);
  const words = kit.chart.flatMap((row) => [row.word, reversed(row.word)]);
  return words.find(
    (candidate) =>
      candidate.length === word.length && says(candidate, there) && says(reversed(candidate), back),
  );
}

const isSided = (action: Action | undefined): boolean =>
  action?.kind === 'choose' && action.way !== 'straight';

const OTHER = { left: 'right', right: 'left', straight: 'straight' } as const;

const swapped = (action: Action | undefined): Action | undefined =>
  action?.kind === 'choose' ? { ...action, way: OTHER[action.way] } : action;

/** The value that reading its own file gives. */
function asFiled(challenge: Challenge): Challenge {
  const read = parseDocument(Challenge, writeDocument(Challenge, challenge));
  if (!read.ok) throw new RangeError(`no challenge: ${JSON.stringify(read.problems[0])}`);
  return read.value;
}
