import type { Challenge } from '../../shared/documents/challenge.ts';
import { textIn } from '../../shared/documents/values.ts';
import { type LessonPlan, lessonPlan } from '../../shared/prep/lesson-plan.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { type Block, flowed } from './flow.ts';
import type { Page } from './page.ts';
import type { PrintTools } from './tools.ts';

/** What a plan is for; all but the minutes may be open yet. */
export interface PlanOf {
  readonly minutes: number;
  readonly room?: { readonly word: string; readonly teams: number } | undefined;
  /** Where tablets come in, as it is typed. */
  readonly address: string;
  readonly challenge?: { readonly title: string; readonly challenge: Challenge } | undefined;
}

/** A lesson on paper, for whoever gives it: how the desk is opened, phase by phase, and what to heed. */
export function lessonPlanPages(of: PlanOf, paper: PaperName, tools: PrintTools): Page[] {
  const { lessonPlan: words, safety } = tools.words;
  const plan = lessonPlan(of.minutes);
  return flowed(
    [
      { kind: 'title', text: words.title(of.minutes) },
      ...(of.room ? [{ kind: 'text', text: words.room(of.room.word, of.room.teams) } as const] : []),
      { kind: 'quiet', text: safety.first },
      ...opening(of, tools),
      ...challengeBlocks(of, tools),
      ...phaseBlocks(plan, tools),
      { kind: 'head', text: words.trouble.title },
      ...words.trouble.lines.map((text): Block => ({ kind: 'bullet', text })),
      { kind: 'head', text: safety.stop.title },
      { kind: 'text', text: `${safety.stop.signs.join(' · ')}. ${safety.stop.whatThen} (${safety.stop.by})` },
    ],
    paper,
  );
}

function opening({ room, address }: PlanOf, { words }: PrintTools): Block[] {
  const { open } = words.lessonPlan;
  const steps = [
    open.start,
    room ? open.link(room.word) : open.anyLink,
    open.without(address),
    open.tablets(address),
    open.keys,
  ];
  return [
    { kind: 'head', text: open.title },
    ...steps.map((text): Block => ({ kind: 'tick', text })),
    { kind: 'write', text: open.write },
  ];
}

function challengeBlocks({ challenge }: PlanOf, { words, locale }: PrintTools): Block[] {
  const said = words.lessonPlan.challenge;
  const head: Block = { kind: 'head', text: said.title };
  if (!challenge) return [head, { kind: 'text', text: said.none }];
  const { sentence, play, note } = challenge.challenge;
  const lines = [
    `${textIn(sentence, locale)} ${words.desk.briefing.playSentence(play)}`,
    ...(note
      ? [
          said.teaches(textIn(note.teaches, locale)),
          said.mistakes(textIn(note.mistakes, locale)),
          said.ask(textIn(note.ask, locale)),
        ]
      : []),
  ];
  return [
    { kind: 'head', text: `${said.title}: ${challenge.title}` },
    ...lines.map((text): Block => ({ kind: 'bullet', text })),
  ];
}

function phaseBlocks({ phases, questions }: LessonPlan, { words }: PrintTools): Block[] {
  const said = words.lessonPlan;
  const head: Block = {
    kind: 'row',
    shares: [2, 7],
    cells: [
      [{ text: `${said.phaseHead}, ${said.minuteHead.toLowerCase()}`, bold: true }],
      [{ text: said.doHead, bold: true }],
    ],
  };
  const rows = phases.map(
    ({ phase, minutes, from, to }): Block => ({
      kind: 'row',
      shares: [2, 7],
      cells: [
        [
          { text: said.phase(phase), bold: true, size: 4.6 },
          { text: said.lasts(minutes) },
          { text: said.span(from, to), quiet: true, size: 3.6 },
        ],
        [
          ...(phase === 'close' ? [{ text: said.questions(questions), bold: true }] : []),
          { text: said.does(phase) },
          { text: said.say(phase), bold: true },
          { text: said.materials(phase), size: 3.6, quiet: true },
          { text: said.careful(phase), size: 3.6 },
        ],
      ],
    }),
  );
  return [{ kind: 'space' }, head, ...rows];
}
