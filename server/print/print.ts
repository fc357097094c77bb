import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import type { MadeCheck } from '../../shared/evidence/closing-check.ts';
import { PERIOD } from '../../shared/prep/lesson-plan.ts';
import { USUAL_TEAMS } from '../../shared/prep/supplies.ts';
import type { PrintAsk } from '../../shared/wire/print.ts';
import type { CannotPrint } from '../../shared/wire/protocol.ts';
import { gaugePage, patchPage, slipsPage } from './aids.ts';
import { chartPages } from './chart.ts';
import { closingPages } from './closing-sheet.ts';
import { coverPage } from './cover.ts';
import { drivingPages } from './driving.ts';
import { classEvidencePages, type PrintedEvidence, teamEvidencePages } from './evidence-pages.ts';
import { lessonPlanPages } from './lesson-plan.ts';
import { limitPages } from './limits.ts';
import type { Page } from './page.ts';
import { type PrintedPicture, picturePages } from './picture-pages.ts';
import { questionSheet } from './questions.ts';
import { stripPage } from './strip.ts';
import { suppliesPages } from './supplies.ts';
import { timedCirclePage, timedLinePages } from './timed.ts';
import type { PrintTools } from './tools.ts';
import { worksheetPages } from './worksheet.ts';

/** A challenge with its name and the id of its document. */
export interface PrintedChallenge {
  readonly title: string;
  readonly id: string;
  readonly challenge: Challenge;
}

/** A drawing as it is on a tablet or was handed in. */
export interface PrintedDrawing {
  readonly drawing: Drawing;
  /** Of the design; the code on the sheet says it. */
  readonly id: string;
  /** The challenge that it was drawn for. */
  readonly on: PrintedChallenge;
  readonly entry?: number | undefined;
}

export interface PrintedTeam {
  readonly emblem: string;
  /** What is being played, on the team's own sheet; otherwise what was asked for. */
  readonly challenge?: PrintedChallenge | undefined;
  readonly drawing?: PrintedDrawing | undefined;
}

/** What a room has for paper. */
export interface PrintSource {
  /** Of the room; null before there is one. */
  readonly word: string | null;
  /** How many teams are in the room. */
  readonly teamCount: number;
  /** Where tablets come in, as it is typed. */
  readonly address: string;
  readonly kit: Kit;
  readonly challenge?: PrintedChallenge | undefined;
  /** The team that is asked for: its emblem, and the drawing that is meant. */
  readonly team?: PrintedTeam | undefined;
  /** Everybody, for a pack of the class. */
  readonly teams: readonly PrintedTeam[];
  /** Where it is wanted and has been asked. */
  readonly closing?: MadeCheck | undefined;
  readonly evidence?: PrintedEvidence | undefined;
  readonly picture?: PrintedPicture | undefined;
}

/** A print in parts, each made when its turn comes. */
export type Printed =
  | { readonly ok: true; readonly title: string; readonly parts: readonly (() => readonly Page[])[] }
  | { readonly ok: false; readonly why: CannotPrint };

type Asked = Pick<PrintAsk, 'kind' | 'paper' | 'lines' | 'marks' | 'key' | 'teams' | 'minutes'>;

const cannot = (why: CannotPrint): Printed => ({ ok: false, why });

/** The front door of print: what was asked for, as pages; or why there is nothing to put on them. */
export function printed(ask: Asked, source: PrintSource, tools: PrintTools): Printed {
  const { kind, paper } = ask;
  const { kit, challenge, team } = source;
  const { print } = tools.words;
  const all = (pages: () => readonly Page[]): Printed => ({
    ok: true,
    title: print.page.kind(kind),
    parts: [pages],
  });
  const one = (page: () => Page): Printed => all(() => [page()]);
  switch (kind) {
    case 'chart':
      return { ok: true, title: print.chart.title, parts: [() => chartPages(kit, paper, tools)] };
    case 'gauge':
      return one(() => gaugePage(kit, paper, tools));
    case 'patch':
      return one(() => patchPage(kit, paper, tools));
    case 'strip':
      return one(() => stripPage(kit, paper, tools));
    case 'timed-line':
      return all(() => timedLinePages(kit, paper, tools));
    case 'timed-circle':
      return one(() => timedCirclePage(kit, paper, tools));
    case 'limits':
      return all(() => limitPages(kit, paper, tools));
    case 'slips':
      return one(() => slipsPage(paper, team?.emblem, tools));
    case 'supplies':
      return suppliesOf(ask, source, tools);
    case 'lesson-plan':
      return planOf(ask, source, tools);
    case 'sheet':
      return challenge ? sheetOf(challenge, team?.emblem, ask, tools) : cannot('no-challenge');
    case 'drawing':
      return team?.drawing ? drawingOf(team.drawing, team.emblem, ask, tools) : cannot('no-drawing');
    case 'closing':
      return source.closing ? closingOf(source.closing, ask, tools) : cannot('not-asked');
    case 'evidence':
      return source.evidence ? evidencePack(source.evidence, ask, tools) : cannot('no-challenge');
    case 'picture':
      return source.picture?.rounds.length ? pictureOf(source.picture, ask, tools) : cannot('no-challenge');
    case 'pack':
      return team ? packOf(team, ask, source, tools) : cannot('no-drawing');
    case 'class':
      return classPack(ask, source, tools);
    default:
      return challenge ? questionsOf(challenge, kind, ask, source, tools) : cannot('no-challenge');
  }
}

function suppliesOf({ teams, paper }: Asked, { kit, teamCount }: PrintSource, tools: PrintTools): Printed {
  const count = teams === undefined ? teamCount || USUAL_TEAMS : Number(teams);
  const { title } = tools.words.supplies;
  return { ok: true, title, parts: [() => suppliesPages(kit, count, paper, tools)] };
}

function planOf({ minutes, paper }: Asked, source: PrintSource, tools: PrintTools): Printed {
  const { word, teamCount, address, challenge } = source;
  const long = minutes === undefined ? PERIOD.usual : Number(minutes);
  const room = word === null ? undefined : { word, teams: teamCount };
  const plan = { minutes: long, room, address, challenge };
  const title = tools.words.lessonPlan.title(long);
  return { ok: true, title, parts: [() => lessonPlanPages(plan, paper, tools)] };
}

function sheetOf(of: PrintedChallenge, emblem: string | undefined, ask: Asked, tools: PrintTools): Printed {
  const { challenge, title, id } = of;
  const sheet = { challenge, title, id, drawing: challenge.begin?.drawing, emblem, begun: true };
  return { ok: true, title, parts: [() => drivingPages(sheet, ask, tools)] };
}

function drawingOf(
  { drawing, id, on, entry }: PrintedDrawing,
  emblem: string,
  ask: Asked,
  tools: PrintTools,
): Printed {
  const { challenge, title } = on;
  const sheet = { challenge, title, id, drawing, emblem, entry };
  return { ok: true, title: `${title}, ${emblem}`, parts: [() => drivingPages(sheet, ask, tools)] };
}

function questionsOf(
  { challenge, title }: PrintedChallenge,
  kind: 'predict' | 'two-travellers' | 'mend',
  { paper, key }: Asked,
  { team }: PrintSource,
  tools: PrintTools,
): Printed {
  const sheet = questionSheet(challenge, kind);
  if (typeof sheet === 'string') return cannot(sheet);
  const look = { paper, title, key: key === 'yes', emblem: team?.emblem };
  return {
    ok: true,
    title: tools.words.print.page.kind(kind),
    parts: [() => worksheetPages(kind, sheet, look, tools)],
  };
}

const closingOf = (made: MadeCheck, { kind, paper, key }: Asked, tools: PrintTools): Printed => ({
  ok: true,
  title: tools.words.print.page.kind(kind),
  parts: [() => closingPages(made, { paper, key: key === 'yes' }, tools)],
});

/** The class first, then each team. */
const evidencePack = (printed: PrintedEvidence, { kind, paper }: Asked, tools: PrintTools): Printed => ({
  ok: true,
  title: tools.words.print.page.kind(kind),
  parts: [
    () => classEvidencePages(printed, paper, tools),
    ...printed.evidence.teams.map((team) => () => teamEvidencePages(team, printed, paper, tools)),
  ],
});

/** A part for each challenge that was played. */
const pictureOf = (printed: PrintedPicture, { kind, paper }: Asked, tools: PrintTools): Printed => ({
  ok: true,
  title: tools.words.print.page.kind(kind),
  parts: printed.rounds.map((round) => () => picturePages(round, printed, paper, tools)),
});

/** What a team gets: its drawing, or the sheet where there is none, and slips. */
function packOf(team: PrintedTeam, ask: Asked, source: PrintSource, tools: PrintTools): Printed {
  const { emblem, drawing, challenge = source.challenge } = team;
  const toDrive = drawing
    ? drawingOf(drawing, emblem, ask, tools)
    : challenge && sheetOf(challenge, emblem, ask, tools);
  const title = tools.words.print.packs.team(tools.words.emblems.name(emblem));
  const drive = toDrive?.ok ? toDrive.parts : [];
  return {
    ok: true,
    title,
    parts: [() => [...drive.flatMap((part) => part()), slipsPage(ask.paper, emblem, tools)]],
  };
}

function classPack(ask: Asked, source: PrintSource, tools: PrintTools): Printed {
  const { kit, teams, challenge } = source;
  const word = source.word ?? '';
  const { paper } = ask;
  const packs = teams.map((team) => packOf(team, ask, source, tools));
  const alone = challenge && teams.length === 0 ? [sheetOf(challenge, undefined, ask, tools)] : [];
  return {
    ok: true,
    title: tools.words.print.packs.title(word),
    parts: [
      () => [
        coverPage(word, teams.length, paper, tools),
        ...chartPages(kit, paper, tools),
        patchPage(kit, paper, tools),
        stripPage(kit, paper, tools),
        gaugePage(kit, paper, tools),
      ],
      ...[...packs, ...alone].flatMap((pack) => (pack.ok ? pack.parts : [])),
    ],
  };
}
