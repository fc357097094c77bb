import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Choice, Question } from '../../shared/documents/question.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { textIn } from '../../shared/wording/wording.ts';
import { badge, paragraph, pictureBlock, writingLines } from './blocks.ts';
import { type Block, flowed } from './flow.ts';
import { COLORS, type Page, paperSize } from './page.ts';
import { type QuestionKind, type QuestionSheet, rightChoice } from './questions.ts';
import type { PrintTools } from './tools.ts';

function headBlocks(
  kind: QuestionKind,
  challenge: Challenge,
  w: Mm,
  emblem: string | undefined,
  tools: PrintTools,
): Block[] {
  const { questions } = tools.words.print;
  const said = textIn(challenge.sentence, tools.locale);
  return [
    badge(emblem ?? '', 12, w, tools),
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
  const { paper } = look;
  return [...flowed([...head, ...asked], paper), ...(look.key ? flowed([...keyHead, ...key], paper) : [])];
}

type Asked = Extract<QuestionSheet, { kind: 'asked' }>;

function askedBlocks(sheet: Asked, w: Mm, tools: PrintTools): [Block[], Block[]] {
  const { challenge, questions, key } = sheet;
  const { words } = tools;
  const said = questions.map((question, i) => `${i + 1}. ${askedOf(question, challenge, tools)}`);
  const picture = pictureBlock({ challenge, ends: questions.flatMap(choicesOf) }, w, tools);
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
      pictureBlock({ challenge, drawing: faulty }, w, tools),
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
      pictureBlock({ challenge, drawing: sound }, w, tools),
    ],
  ];
}
