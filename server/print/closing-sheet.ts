import type { ClosingAnswer, ClosingAsk, ClosingQuestion } from '../../shared/documents/closing-check.ts';
import { textIn } from '../../shared/documents/values.ts';
import type { MadeCheck } from '../../shared/evidence/closing-check.ts';
import { ANSWER_LETTERS } from '../../shared/evidence/letters.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { paragraph, pictureBlock } from './blocks.ts';
import { type Block, flowed, type Laid, SIDE } from './flow.ts';
import { COLORS, type Page, paperSize } from './page.ts';
import { line, path, rectangle, text } from './shapes.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

const MOST_PICTURE: Mm = 100;

export interface ClosingLook {
  readonly paper: PaperName;
  readonly key: boolean;
}

/** The closing check to be ticked on paper; where it is wanted, with the key on pages of its own. */
export function closingPages({ check, key }: MadeCheck, look: ClosingLook, tools: PrintTools): Page[] {
  const size = paperSize(look.paper, false);
  const { closing, print } = tools.words;
  const { questions } = check;
  const title = closing.check.title(questions.length);
  const asked = questions.flatMap((question, i) => [
    ...pictureOnce(questions, i, size.w, tools),
    paragraph(askedOf(question, i, tools), size.w, { bold: true }),
    ...(question.ask.kind === 'why' ? [shouldOf(question, size.w, tools)] : []),
    ...question.ask.choices.map((_, n) => choiceBlock(question, n, size.w, tools)),
    paragraph('', size.w, { after: 5 }),
  ]);
  const answers = questions.flatMap((question, i) => [
    paragraph(askedOf(question, i, tools), size.w, { color: COLORS.quiet, after: 0 }),
    ...keyBlocks(question, key[i]!, size.w, tools),
  ]);
  const head = [paragraph(title, size.w, { size: 7.5, bold: true }), teamBlock(size.w, tools)];
  const keyHead = [
    paragraph(print.questions.key(title), size.w, { size: 6, bold: true }),
    paragraph(print.questions.keyNote, size.w, { color: COLORS.quiet, after: 4 }),
  ];
  const { paper } = look;
  return [
    ...flowed([...head, ...asked], paper),
    ...(look.key ? flowed([...keyHead, ...answers], paper) : []),
  ];
}

/** The number of a mark in its picture stands before the question about it. */
function askedOf({ ask, sheet }: ClosingQuestion, i: number, { words }: PrintTools): string {
  const said = words.closing.check.ask(ask, sheet);
  const mark = ask.kind === 'mark' ? sheet.given.marks.findIndex(({ id }) => id === ask.mark) + 1 : 0;
  return `${i + 1}. ${mark > 0 ? words.print.questions.mark(mark, said) : said}`;
}

const shouldOf = ({ sentence }: ClosingQuestion, w: Mm, { words, locale }: PrintTools): Block =>
  paragraph(words.closing.check.should(textIn(sentence, locale)), w, { color: COLORS.quiet });

/** Two questions about one drawing, one after the other, share its picture. */
function pictureOnce(questions: readonly ClosingQuestion[], i: number, w: Mm, tools: PrintTools): Block[] {
  const { sheet, kit, ask } = questions[i]!;
  const before = questions[i - 1];
  const ring = ask.kind === 'why' ? ask.at : undefined;
  if (before && !ring && JSON.stringify(before.sheet) === JSON.stringify(sheet)) return [];
  const ends = endsOf(ask);
  return [pictureBlock({ challenge: { sheet, kit }, ends, ring, most: MOST_PICTURE }, w, tools)];
}

const endsOf = (ask: ClosingAsk) => (ask.kind === 'end' ? ask.choices : []);

const TEAM_LINE: Mm = 60;

function teamBlock(w: Mm, { words }: PrintTools): Laid {
  return {
    kind: 'laid',
    high: 13,
    items: [
      text(words.closing.desk.paperTeam, { x: SIDE, y: 6 }, { size: 4.2, color: COLORS.quiet }),
      line(
        { x: SIDE + 18, y: 7 },
        { x: Math.min(w - SIDE, SIDE + 18 + TEAM_LINE), y: 7 },
        { color: COLORS.quiet, width: 0.25 },
      ),
    ],
  };
}

const BOX: Mm = 4.6;
const CHOICE: Mm = 4.2;

/** A box to tick, a letter, and an answer. */
function choiceBlock({ ask, sheet }: ClosingQuestion, n: number, w: Mm, { words }: PrintTools): Laid {
  const said = words.closing.check.choice(ask.choices[n]!, sheet);
  const left = SIDE + 2 * BOX + 6;
  const rows = wrapped(said, w - SIDE - left, CHOICE);
  return {
    kind: 'laid',
    high: rows.length * 5.9 + 1.6,
    items: [
      path(rectangle(SIDE + 2, 0, BOX, BOX), { color: COLORS.ink, width: 0.4 }),
      text(ANSWER_LETTERS[n] ?? '', { x: SIDE + BOX + 4, y: 3.8 }, { size: CHOICE, bold: true }),
      ...rows.map((row, i) => text(row, { x: left, y: 3.8 + i * 5.9 }, { size: CHOICE })),
    ],
  };
}

/** The right answer with its letter and why; then what each other one comes from. */
function keyBlocks(
  { ask, sheet, kit }: ClosingQuestion,
  answer: ClosingAnswer,
  w: Mm,
  { words, locale }: PrintTools,
): Block[] {
  const { check } = words.closing;
  const lettered = (key: string): string => {
    const at = ask.choices.findIndex((choice) => choice.key === key);
    return at < 0 ? key : `${ANSWER_LETTERS[at]}  ${check.choice(ask.choices[at]!, sheet)}`;
  };
  const inks = [...(answer.word ?? '')].map((letter) => {
    const ink = kit.inks.find(({ id }) => id === letter);
    return ink ? textIn(ink.name, locale) : letter;
  });
  return [
    paragraph(lettered(answer.right), w, { bold: true, indent: 6, after: 0 }),
    paragraph(check.because(ask, answer, inks), w, { indent: 6 }),
    ...answer.mistakes.map(({ choice, mistake }) =>
      paragraph(`${lettered(choice)} · ${check.but(mistake)}`, w, {
        indent: 6,
        size: 3.6,
        color: COLORS.quiet,
        after: 1,
      }),
    ),
    paragraph('', w, { after: 4 }),
  ];
}
