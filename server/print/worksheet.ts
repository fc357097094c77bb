import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Drawing, EMPTY_DRAWING } from '../../shared/documents/design.ts';
import type { Choice, Question } from '../../shared/documents/question.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { layOut } from '../../shared/track/layout.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { textIn } from '../../shared/wording/wording.ts';
import { emblemItem } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize, type Size, type Stroke } from './page.ts';
import { type QuestionKind, type QuestionSheet, rightChoice } from './questions.ts';
import { circle, filled, group, line, path, rectangle, text } from './shapes.ts';
import { sheetItems } from './sheet.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

const SIDE: Mm = 18;
const BODY: Mm = 4.2;
const RULE: Stroke = { color: COLORS.ink, width: 0.25 };

/** A piece of a page: how high it is, and its things when it stands at `y`. */
interface Block {
  readonly high: Mm;
  readonly at: (y: Mm) => readonly Item[];
}

/** Blocks one below the other, on as many pages as they need. */
function flow(size: Size, blocks: readonly Block[]): Page[] {
  const pages: Item[][] = [[]];
  let y = SIDE;
  for (const block of blocks) {
    if (y > SIDE && y + block.high > size.h - SIDE) {
      pages.push([]);
      y = SIDE;
    }
    pages.at(-1)!.push(...block.at(y));
    y += block.high;
  }
  return pages.map((items) => ({ ...size, items }));
}

interface Look {
  readonly size?: Mm;
  readonly bold?: boolean;
  readonly color?: string;
  readonly indent?: Mm;
  readonly after?: Mm;
}

function paragraph(
  words: string,
  w: Mm,
  { size = BODY, bold = false, color = COLORS.ink, indent = 0, after = 2 }: Look = {},
): Block {
  const rows = wrapped(words, w - 2 * SIDE - indent, size, bold);
  const step = size * 1.4;
  return {
    high: rows.length * step + after,
    at: (y) =>
      rows.map((row, i) => text(row, { x: SIDE + indent, y: y + size + i * step }, { size, bold, color })),
  };
}

const writingLines = (count: number, w: Mm, indent = 0): Block => ({
  high: count * 9 + 2,
  at: (y) =>
    Array.from({ length: count }, (_, i) =>
      line(
        { x: SIDE + indent, y: y + 8 + i * 9 },
        { x: w - SIDE, y: y + 8 + i * 9 },
        { color: COLORS.quiet, width: 0.25 },
      ),
    ),
});

const MOST_PICTURE: Mm = 104;

/** The sheet as a smaller picture, to look at; loose ends that may be answered have their letter. */
function pictureBlock(
  challenge: Challenge,
  drawing: Drawing,
  w: Mm,
  ends: readonly Choice[],
  tools: PrintTools,
): Block {
  const { sheet, kit } = challenge;
  const layout = layOut(sheet, drawing);
  const picture = pictureOf({ sheet, kit, layout, language: tools.locale, still: true });
  const scale = Math.min((w - 2 * SIDE) / sheet.w, MOST_PICTURE / sheet.h);
  const left = (w - sheet.w * scale) / 2;
  const items = [
    ...sheetItems(picture, layout, kit, { driven: false, larger: 1.4 }),
    ...ends.flatMap((end) => (end.kind === 'loose-end' ? endItems(end.letter, end.at) : [])),
    path(rectangle(0, 0, sheet.w, sheet.h), RULE),
  ];
  return { high: sheet.h * scale + 6, at: (y) => [group(left, y, items, scale)] };
}

const endItems = (letter: string, { x, y }: { x: Mm; y: Mm }): Item[] => [
  filled(circle({ x, y: y - 8 }, 4), COLORS.white),
  path(circle({ x, y: y - 8 }, 4), { color: COLORS.ink, width: 0.4 }),
  text(letter, { x, y: y - 6.2 }, { size: 5, bold: true, align: 'middle' }),
];

function headBlocks(
  kind: QuestionKind,
  challenge: Challenge,
  w: Mm,
  emblem: string | undefined,
  tools: PrintTools,
): Block[] {
  const { questions } = tools.words.print;
  const badge: Block = {
    high: 0,
    at: (y) => emblemItem(tools.emblems, emblem ?? '', { x: w - SIDE - 12, y: y - 3 }, 12),
  };
  const said = textIn(challenge.sentence, tools.locale);
  return [
    badge,
    paragraph(questions.title(kind), w, { size: 7.5, bold: true }),
    paragraph(questions.how[kind], w, { color: COLORS.quiet, after: kind === 'mend' ? 2 : 4 }),
    ...(kind === 'mend' ? [paragraph(`${questions.should} ${said}`, w, { bold: true, after: 4 })] : []),
  ];
}

export interface WorksheetLook {
  readonly paper: PaperName;
  readonly key: boolean;
  readonly title: string;
  readonly emblem?: string | undefined;
}

/** The questions, and the key on pages of its own where it is wanted. */
export function worksheetPages(
  kind: QuestionKind,
  sheet: QuestionSheet,
  look: WorksheetLook,
  tools: PrintTools,
): Page[] {
  const size = paperSize(look.paper, false);
  const head = headBlocks(kind, sheet.challenge, size.w, look.emblem, tools);
  const [asked, key] =
    sheet.kind === 'mend' ? mendBlocks(sheet, size.w, tools) : askedBlocks(sheet, size.w, tools);
  const { questions } = tools.words.print;
  const keyHead = [
    paragraph(questions.key(`${questions.title(kind)} (${look.title})`), size.w, { size: 6, bold: true }),
    paragraph(questions.keyNote, size.w, { color: COLORS.quiet, after: 4 }),
  ];
  return [...flow(size, [...head, ...asked]), ...(look.key ? flow(size, [...keyHead, ...key]) : [])];
}

type Asked = Extract<QuestionSheet, { kind: 'asked' }>;

function askedBlocks(sheet: Asked, w: Mm, tools: PrintTools): [Block[], Block[]] {
  const { challenge, questions, key } = sheet;
  const { words } = tools;
  const said = questions.map((question, i) => `${i + 1}. ${askedOf(question, challenge, tools)}`);
  const picture = pictureBlock(challenge, EMPTY_DRAWING, w, questions.flatMap(choicesOf), tools);
  const asked = said.flatMap((each, i) => {
    const first = questions[i - 1]?.kind !== questions[i]!.kind;
    return [
      ...(first ? bankOf(questions[i]!, challenge, w, tools) : []),
      paragraph(each, w, { after: 0 }),
      writingLines(1, w, 6),
    ];
  });
  const answers = questions.flatMap((question, i) => [
    paragraph(said[i]!, w, { after: 0, color: COLORS.quiet }),
    paragraph(answerOf(question), w, { bold: true, indent: 6 }),
  ]);
  function answerOf(question: Question): string {
    const right = rightChoice(question, key);
    if (right) return words.questions.choice(right, challenge.sheet);
    const of = question.kind === 'how-many' ? question.of : 0;
    return words.print.questions.robots(Number(key.get(question.id) ?? 0), of);
  }
  return [
    [picture, ...asked],
    [picture, ...answers],
  ];
}

const choicesOf = (question: Question): readonly Choice[] =>
  question.kind === 'end' ? question.choices : [];

function askedOf(question: Question, { sheet }: Challenge, { words }: PrintTools): string {
  const asked = words.questions.ask(question, sheet);
  if (question.kind !== 'mark') return asked;
  return words.print.questions.mark(sheet.given.marks.findIndex(({ id }) => id === question.mark) + 1, asked);
}

/** What may be answered, once before the first question of a kind. */
function bankOf(question: Question, { sheet }: Challenge, w: Mm, { words }: PrintTools): Block[] {
  if (question.kind === 'how-many') return [];
  const choices = question.choices.map((choice) => words.questions.choice(choice, sheet));
  return [
    paragraph(`${words.print.questions.choose} ${choices.join(' · ')}`, w, {
      size: 3.4,
      color: COLORS.quiet,
      after: 2,
    }),
  ];
}

type Mend = Extract<QuestionSheet, { kind: 'mend' }>;

function mendBlocks(sheet: Mend, w: Mm, tools: PrintTools): [Block[], Block[]] {
  const { challenge, faulty, sound, findings, missed } = sheet;
  const { words } = tools;
  const said = words.print.questions;
  const found = findings.map((finding) => {
    const remedy = words.findings.remedy(finding);
    return `${words.findings.said(finding).sentence}${remedy === undefined ? '' : ` ${remedy}`}`;
  });
  const goals = challenge.goals.filter(({ id }) => missed.includes(id));
  const bullet = (each: string) => paragraph(`• ${each}`, w, { indent: 2, after: 1 });
  return [
    [
      pictureBlock(challenge, faulty, w, [], tools),
      paragraph(said.wrong, w, { bold: true, after: 0 }),
      writingLines(2, w),
      paragraph(said.mended, w, { bold: true, after: 0 }),
      writingLines(2, w),
    ],
    [
      paragraph(said.found, w, { bold: true }),
      ...(found.length === 0 ? [said.nothingFound] : found).map(bullet),
      ...(goals.length === 0 ? [] : [paragraph(said.missed, w, { bold: true })]),
      ...goals.map(({ formula, start }) => bullet(words.goals.sentence(formula, challenge.sheet, start))),
      paragraph(said.sound, w, { bold: true }),
      pictureBlock(challenge, sound, w, [], tools),
    ],
  ];
}
