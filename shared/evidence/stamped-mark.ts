import type { Challenge } from '../documents/challenge.ts';
import { EMPTY_DRAWING, type Mark } from '../documents/design.ts';
import { type Action, actionOf, type Kit, reversed } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';
import { type LaidLine, type Layout, layOut } from '../track/layout.ts';

/**
 * A challenge in which all is given, with one more mark: where a class drew none that says different things from
 * its two sides, it can still be asked about one. It lies in the middle of the longest straight that has
 * room for it; undefined where none has, or where the chart has no such word.
 */
export function withStampedMark(
  given: Challenge,
): { readonly challenge: Challenge; readonly mark: string } | undefined {
  const { sheet, kit } = given;
  const word = oneWayWord(kit);
  const place = word === undefined ? undefined : longestFree(layOut(sheet, EMPTY_DRAWING), kit, word);
  if (word === undefined || !place) return undefined;
  const mark: Mark = {
    id: freeId(sheet.given.marks),
    line: place.line,
    at: hundredth((place.from + place.to - lengthOf(word, kit)) / 2),
    bands: [...word].map((ink) => ({ ink, length: kit.robot.bandUnit, gap: 0 })),
  };
  const marks = [...sheet.given.marks, mark];
  return { challenge: { ...given, sheet: { ...sheet, given: { ...sheet.given, marks } } }, mark: mark.id };
}

/** Actions after which the robot goes on along its line. */
const GOES_ON: readonly Action['kind'][] = ['pace-by', 'pace-to', 'choose', 'nothing'];

/** The first word of the chart that says one thing from here and another from there, and stops no robot. */
const oneWayWord = (kit: Kit): string | undefined =>
  kit.chart.find(({ word, action }) => {
    const back = actionOf(kit, reversed(word));
    return word !== reversed(word) && back && [action, back].every(({ kind }) => GOES_ON.includes(kind));
  })?.word;

const lengthOf = (word: string, { robot }: Kit): Mm => word.length * robot.bandUnit;
const hundredth = (value: Mm): Mm => Math.round(value * 100) / 100;

const freeId = (marks: readonly Mark[]): string => {
  let id = 'asked';
  while (marks.some((mark) => mark.id === id)) id = `${id}-`;
  return id;
};

interface Stretch {
  readonly line: string;
  readonly from: Mm;
  readonly to: Mm;
}

/** The longest straight without a mark, with plain line before and after from either side. */
function longestFree({ lines, marks }: Layout, kit: Kit, word: string): Stretch | undefined {
  const { beforeMark, afterMark } = kit.rules;
  const needed = lengthOf(word, kit) + 2 * Math.max(beforeMark, afterMark);
  return lines
    .flatMap(straightsOf)
    .filter(({ from, to }) => to - from >= needed)
    .filter(
      ({ line, from, to }) => !marks.some((mark) => mark.line === line && mark.to > from && mark.from < to),
    )
    .sort((a, b) => b.to - b.from - (a.to - a.from))[0];
}

function straightsOf({ id, path }: LaidLine): Stretch[] {
  let way = 0;
  return path.pieces.flatMap((piece) => {
    const from = way;
    way += piece.length;
    return piece.kind === 'straight' ? [{ line: id, from, to: way }] : [];
  });
}
