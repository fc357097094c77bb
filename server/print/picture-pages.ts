import type { Challenge } from '../../shared/documents/challenge.ts';
import {
  type ClassPicture,
  failedPlaces,
  type Minutes,
  type RuleTrips,
  type TeamWork,
} from '../../shared/evidence/class-picture.ts';
import type { TeamId } from '../../shared/room/state.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { titleOfRule, worstOfRule } from '../../shared/wording/rule-title.ts';
import { COUNT_RADIUS, pictureBlock, pictureScale } from './blocks.ts';
import { type Block, flowed } from './flow.ts';
import { type Page, paperSize } from './page.ts';
import type { PrintTools } from './tools.ts';

export interface PrintedRound {
  readonly title: string;
  /** On the sheet as it is, whatever variants teams had. */
  readonly challenge: Challenge;
  readonly picture: ClassPicture;
}

export interface PrintedPicture {
  /** In the order in which they were played. */
  readonly rounds: readonly PrintedRound[];
  /** Of the whole lesson. */
  readonly whole: Minutes;
  readonly word: string;
  /** ISO date of the lesson. */
  readonly date: string;
  readonly emblemOf: (team: TeamId) => string;
}

const MOST_PICTURE = 100;

/** What the desk shows as the picture of the class with one challenge, for a file or a talk: nobody is ranked. */
export function picturePages(
  round: PrintedRound,
  { whole, word, date, emblemOf }: PrintedPicture,
  paper: PaperName,
  tools: PrintTools,
): Page[] {
  const { desk, evidence } = tools.words;
  const { picture, challenge, title } = round;
  const any = picture.teams.some(({ entries }) => entries > 0);
  const isDrawn = challenge.play !== 'predict';
  return flowed(
    [
      { kind: 'title', text: `${desk.picture.title}: ${title}` },
      { kind: 'quiet', text: evidence.title(word, date) },
      ...(any ? [] : [{ kind: 'text', text: desk.picture.none } as const]),
      ...(any && isDrawn ? sheetBlocks(round, paper, tools) : []),
      ...(any && !isDrawn ? [{ kind: 'text', text: desk.picture.predicted } as const] : []),
      ...(any && isDrawn ? ruleBlocks(picture.rules, tools) : []),
      ...minuteBlocks(picture.minutes, whole, tools),
      ...(any ? teamBlocks(picture.teams, emblemOf, tools) : []),
    ],
    paper,
  );
}

/** The sheet with numbers where runs failed; those that would lie over one another are counted together. */
function sheetBlocks({ picture, challenge }: PrintedRound, paper: PaperName, tools: PrintTools): Block[] {
  const words = tools.words.desk.picture;
  const { w } = paperSize(paper, false);
  const apart = (2 * COUNT_RADIUS) / pictureScale(challenge.sheet, w, MOST_PICTURE);
  const counted = failedPlaces(picture.failures, apart).map(({ at, teams }) => ({ at, count: teams }));
  const drawing = challenge.begin?.drawing;
  return [
    { kind: 'head', text: words.where },
    { kind: 'text', text: counted.length === 0 ? words.nowhere : words.counted },
    { kind: 'space' },
    pictureBlock({ challenge, drawing, counted, most: MOST_PICTURE }, w, tools),
  ];
}

function ruleBlocks(rules: readonly RuleTrips[], { words }: PrintTools): Block[] {
  const said = words.desk.picture;
  const head: Block = { kind: 'head', text: said.rules };
  if (rules.length === 0) return [head, { kind: 'text', text: said.noRules }];
  const rows = rules.map(
    ({ worst, teams, entries }): Block => ({
      kind: 'row',
      shares: [3, 2],
      cells: [
        [{ text: titleOfRule(worst, words), bold: true }, { text: worstOfRule(worst, words) }],
        [{ text: said.trips(teams, entries) }],
      ],
    }),
  );
  return [head, ...rows];
}

function minuteBlocks(round: Minutes, whole: Minutes, { words }: PrintTools): Block[] {
  const said = words.desk.picture;
  const row = (label: string, { screen, paper }: Minutes): Block => ({
    kind: 'row',
    shares: [2, 2, 2],
    cells: [
      [{ text: label, bold: true }],
      [{ text: `${said.clock(screen)} ${said.screen}` }],
      [{ text: `${said.clock(paper)} ${said.paper}` }],
    ],
  });
  return [{ kind: 'head', text: said.times }, row(said.which, round), row(said.whole, whole)];
}

function teamBlocks(
  teams: readonly TeamWork[],
  emblemOf: (team: TeamId) => string,
  { words }: PrintTools,
): Block[] {
  const { picture: said } = words.desk;
  const row = (bold: boolean, ...cells: readonly string[]): Block => ({
    kind: 'row',
    shares: [3, 2, 2, 2, 3],
    cells: cells.map((text, i) => [{ text, bold: bold || i === 0 }]),
  });
  const work = teams.map(({ team, points, entries, tries, onTask }) =>
    row(
      false,
      words.emblems.name(emblemOf(team)),
      points === null ? '–' : String(points),
      String(entries),
      String(tries),
      onTask === null ? '–' : said.clock(onTask),
    ),
  );
  return [
    { kind: 'space' },
    row(true, said.team, said.points, said.entries, said.tries, said.onTask),
    ...work,
    { kind: 'quiet', text: said.onTaskHow },
  ];
}
