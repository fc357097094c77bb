import type { Challenge } from '../documents/challenge.ts';
import type { Design, Line, Mark } from '../documents/design.ts';
import type { Formula } from '../documents/formula.ts';
import type { Kit } from '../documents/kit.ts';
import type { Weather } from '../documents/outlook.ts';
import type { Area, Berth, Sheet } from '../documents/sheet.ts';
import type { Locale } from '../documents/values.ts';
import { radians } from '../geometry/exact-math.ts';
import type { Mm } from '../geometry/units.ts';
import { type ActionName, type MarkWish, markFor, wordFor } from './chart-words.ts';
import { drawLine, type PenStart, type Step } from './pen.ts';
import { type PlaceName, placeNamed } from './places.ts';

/** What a recipe cooks with: the kit's line width, and marks by the names of their actions. */
export interface Tools {
  readonly line: (start: Omit<PenStart, 'width'>, steps: readonly Step[]) => Line;
  /** None where the chart lacks the action; it is then noted as missing. */
  readonly marks: (wishes: readonly MarkWish[]) => Mark[];
  readonly missing: ReadonlySet<ActionName>;
}

export function toolsFor(kit: Kit): Tools {
  const missing = new Set<ActionName>();
  return {
    line: (start, steps) => drawLine({ ...start, width: kit.rules.lineWidth.nominal }, steps),
    marks: (wishes) =>
      wishes.flatMap((wish) => {
        const mark = markFor(kit, wish);
        if (!mark) noteMissing(missing, kit, wish);
        return mark ? [mark] : [];
      }),
    missing,
  };
}

/** Of a mark with two meanings, the one that the chart lacks, or both where it has them apart only. */
function noteMissing(missing: Set<ActionName>, kit: Kit, { action, back }: MarkWish): void {
  const wanted = back === undefined ? [action] : [action, back];
  const lacking = wanted.filter((name) => wordFor(kit, name) === undefined);
  for (const name of lacking.length > 0 ? lacking : wanted) missing.add(name);
}

/** What is ready speaks every language; what somebody wrote may speak one. */
export type InEveryLanguage = Readonly<Record<Locale, string>>;

/** A ready challenge before it meets a kit. */
export interface Recipe {
  readonly key: string;
  readonly topic: number;
  readonly title: InEveryLanguage;
  readonly sentence: InEveryLanguage;
  /** What the sentence becomes on a mirrored sheet, where it speaks of left or right. */
  readonly mirrored?: InEveryLanguage;
  readonly play: Challenge['play'];
  readonly note: {
    readonly teaches: InEveryLanguage;
    readonly mistakes: InEveryLanguage;
    readonly ask: InEveryLanguage;
  };
  readonly seconds: number;
  readonly goals: Challenge['goals'];
  /** What to do is what a robot that goes straight on at unmarked junctions does by itself. */
  readonly goingStraightSolves?: true;
  /** Absent: from the start berth alone. */
  readonly starts?: Challenge['starts'];
  /** Absent: calm. */
  readonly weather?: Weather;
  /** The questions of a `predict`. */
  readonly asks?: Challenge['asks'];
  readonly cook: (tools: Tools) => {
    readonly sheet: Sheet;
    readonly begin?: Design;
    /** None where there is nothing to draw. */
    readonly model?: Design;
  };
}

/** A second wish that counts only together with the first, so that an empty drawing gets nothing for it. */
export const both = (first: Formula, second: Formula): Formula => ({ kind: 'and', of: [first, second] });

export const A4 = { w: 297, h: 210 } as const;

/** Heading in degrees from +x, clockwise on the sheet. */
export const berth = (name: PlaceName, x: Mm, y: Mm, heading: number, r: Mm = 15): Berth => ({
  name: placeNamed(name),
  at: { x, y },
  heading: radians(heading),
  r,
});

/** A berth that robots only set out from; others may drive through it. */
export const startBerth = (name: PlaceName, x: Mm, y: Mm, heading: number): Berth => ({
  ...berth(name, x, y, heading),
  startOnly: true,
});

/** A named place by its corners. */
export const polygon = (id: string, name: PlaceName, corners: readonly (readonly [Mm, Mm])[]): Area => ({
  id,
  name: placeNamed(name),
  polygon: corners.map(([x, y]) => ({ x, y })),
});

/** A named place between two opposite corners. */
export const rectangle = (id: string, name: PlaceName, x0: Mm, y0: Mm, x1: Mm, y1: Mm): Area =>
  polygon(id, name, [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);

export const bareSheet = (start: Berth, finish?: Berth): Sheet => ({
  ...A4,
  start,
  ...(finish ? { finish } : {}),
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
});

export const design = (lines: readonly Line[], marks: readonly Mark[]): Design => ({
  version: 1,
  drawing: { lines: [...lines], marks: [...marks] },
});
