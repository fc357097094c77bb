import {
  type DescribedLine,
  describeDrawing,
  type Spot,
  type Step,
} from '../../../shared/description/describe.ts';
import { actionOf, type Kit, reversed } from '../../../shared/documents/kit.ts';
import type { Area, Sheet } from '../../../shared/documents/sheet.ts';
import { type Locale, textIn } from '../../../shared/documents/values.ts';
import { degrees, meanOf } from '../../../shared/geometry/exact-math.ts';
import type { Layout } from '../../../shared/track/layout.ts';
import { boxCorners } from '../../../shared/track/mark-boxes.ts';
import type { PageWording } from '../../../shared/wording/wording.ts';

/** A drawing in words: what the paper holds, then each line with what is met along it. */
export interface SheetInWords {
  readonly places: readonly string[];
  readonly lines: readonly { readonly line: string; readonly steps: readonly string[] }[];
}

export interface Setting {
  readonly sheet: Sheet;
  readonly kit: Kit;
  readonly words: PageWording;
  readonly locale: Locale;
}

export function inWords(layout: Layout, setting: Setting): SheetInWords {
  const { sheet, kit } = setting;
  return {
    places: placesInWords(setting),
    lines: describeDrawing(layout, sheet, kit).map((line) => ({
      line: lineInWords(line, setting),
      steps: line.steps.map((step) => stepInWords(step, setting)),
    })),
  };
}

/** In the order in which they would be heard, as one text. */
export const asText = ({ places, lines }: SheetInWords): string =>
  [...places, ...lines.flatMap(({ line, steps }) => [line, ...steps])].join(' ');

function placesInWords({ sheet, words, locale }: Setting): string[] {
  const { reading } = words;
  const { start, finish, gates, areas, keepOut, boxes = [] } = sheet;
  const middle = (area: Area) => meanOf(area.polygon);
  return [
    reading.start(textIn(start.name, locale), start.at),
    ...(finish ? [reading.finish(textIn(finish.name, locale), finish.at)] : []),
    ...gates.map(({ name, a, b }) => reading.gate(textIn(name, locale), meanOf([a, b]))),
    ...areas.map((area) => reading.area(textIn(area.name, locale), middle(area))),
    ...keepOut.map((area) => reading.keepOut(textIn(area.name, locale), middle(area))),
    ...boxes.map((box) => {
      const [from, , to] = boxCorners(box);
      return reading.box(textIn(box.name, locale), from, to);
    }),
  ];
}

function lineInWords({ number, given, from, to, length }: DescribedLine, setting: Setting): string {
  const { reading } = setting.words;
  return reading.line(number, given, spotInWords(from, setting), spotInWords(to, setting), length);
}

function spotInWords(spot: Spot, { sheet, words, locale }: Setting): string {
  if (spot.kind === 'line') return words.reading.lineNumber(spot.number);
  if (spot.kind === 'paper') return words.reading.place(spot.at);
  return textIn((spot.which === 'finish' && sheet.finish ? sheet.finish : sheet.start).name, locale);
}

function stepInWords(step: Step, { kit, words }: Setting): string {
  const { reading, actions } = words;
  const name = (word: string): string => {
    const action = actionOf(kit, word);
    return action ? actions.name(action) : actions.unknown;
  };
  switch (step.kind) {
    case 'mark': {
      const back = reversed(step.word);
      return reading.mark(step.way, name(step.word), back === step.word ? null : name(back));
    }
    case 'corner':
      return reading.corner(step.way, 180 - Math.abs(degrees(step.turn)), step.turn);
    case 'curve':
      return reading.curve(step.way, degrees(step.turn), step.radius);
    case 'junction':
      return reading.junction(step.way, step.numbers);
  }
}
