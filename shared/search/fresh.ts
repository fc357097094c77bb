import type { Challenge } from '../documents/challenge.ts';
import type { Difficulty, FreshMarks, FreshTopic, FreshWords } from '../documents/fresh.ts';
import type { Kit } from '../documents/kit.ts';
import type { RuleId } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import { pathOf, pointAt } from '../geometry/path.ts';
import { judge } from '../judge/judge.ts';
import { sceneOf } from '../judge/scene.ts';
import { oddsOf } from '../odds/odds.ts';
import { MARK_COST } from '../points/cost.ts';
import { sfc32 } from '../run/random.ts';
import { SAME_LIGHT } from '../run/world.ts';
import { findingsOnGiven } from './certainty.ts';
import { staysSteady } from './confirm.ts';
import { difficultyOf } from './difficulty.ts';
import { type Room, TOPICS } from './fresh-topics.ts';
import { parOf } from './par.ts';

export interface FreshWish {
  readonly topic: FreshTopic;
  /** How many marks it has to take: no fewer do it. */
  readonly marks: FreshMarks;
  /** Any whole number; equal wishes give equal challenges. */
  readonly seed: number;
  readonly kit: Kit;
  readonly words: FreshWords;
  /** Asked between steps; false ends the making. */
  readonly goOn?: () => boolean;
}

export type FreshResult =
  | {
      readonly kind: 'fresh';
      /** With the solution as its model, and its par. */
      readonly challenge: Challenge;
      readonly difficulty: Difficulty;
      /** Sheets that were laid until one did. */
      readonly attempts: number;
    }
  /** The kit's chart lacks what the topic needs, or no sheet came out right. */
  | { readonly kind: 'none'; readonly attempts: number }
  | { readonly kind: 'cancelled'; readonly attempts: number };

/** Sheets that are laid at most: most of them leave the paper. */
const MOST_SHEETS = 40_000;
/** Of these, sheets that are searched at most. */
const MOST_SEARCHED = 12;
/** Drawings driven on the rails for one sheet: those with room for their marks need far fewer. */
const EFFORT = 20_000;

/** What fits: one decision on A4, anything longer on A3. */
const SHEETS = { small: { w: 297, h: 210 }, large: { w: 420, h: 297 } } as const;
const LIMIT = 90;

const sheetFor = ({ topic, marks }: FreshWish) =>
  marks === 1 && topic !== 'pace' && topic !== 'turn-back' ? SHEETS.small : SHEETS.large;

/**
 * A new fill-in challenge from a seed: lines from straights, right-angle corners, arcs and junctions, with
 * goals that just so many marks meet, as an exhaustive search on the graph says; its solution leaves
 * nothing to chance, and most robots of any twenty drive it. Deterministic.
 */
export function freshChallenge(wish: FreshWish): FreshResult {
  const { marks, seed, kit, words, goOn = () => true } = wish;
  const room: Room = { die: sfc32(seed), kit, marks, words, ...sheetFor(wish) };
  let searched = 0;
  for (let attempts = 1; attempts <= MOST_SHEETS && searched < MOST_SEARCHED; attempts++) {
    if (!goOn()) return { kind: 'cancelled', attempts };
    const draft = challengeOf(wish, room);
    if (!isSound(draft)) continue;
    searched++;
    const par = parOf(draft, { goOn, most: EFFORT });
    if (par.kind === 'cancelled') return { kind: 'cancelled', attempts };
    if (par.kind !== 'par' || par.proof !== 'exhaustive' || par.cost !== MARK_COST * marks) continue;
    const challenge = { ...draft, model: par.design, par: par.cost };
    if (leavesToChance(challenge) || !staysSteady(challenge, par.design)) continue;
    return {
      kind: 'fresh',
      challenge,
      difficulty: difficultyOf(challenge, par.design, par.searched),
      attempts,
    };
  }
  return { kind: 'none', attempts: searched };
}

function challengeOf({ topic, marks, seed, kit, words }: FreshWish, room: Room): Challenge {
  const { sheet, goals } = TOPICS[topic](room);
  return {
    version: 1,
    id: `fresh-${topic}-${marks}-${seed}`,
    topic: TOPIC_OF_COURSE[topic],
    sentence: words.sentences[topic],
    play: 'fill-in',
    kit,
    sheet,
    starts: ['start'],
    goals: [...goals],
    limits: { time: LIMIT },
  };
}

/** Where in the course a topic is first met. */
const TOPIC_OF_COURSE: Readonly<Record<FreshTopic, number>> = {
  park: 6,
  pace: 9,
  junction: 13,
  crossing: 14,
  'turn-back': 22,
};

/** mm from the paper's edge, and between the berths. */
const EDGE = 28;
const BERTHS_APART = 60;

/** Lines that lead nowhere belong to the task, and whether marks bring the robot home is the search's business. */
const MEANT: readonly RuleId[] = ['R-loose-end', 'R-finish-reachable'];

/** Whether the lines lie well on the paper: no other drawing rule would speak if a team had drawn them. */
function isSound(challenge: Challenge): boolean {
  const { given, finish, start, w, h } = challenge.sheet;
  const within = given.lines.every((line) => {
    const path = pathOf(line);
    for (let way = 0; way <= path.length; way += 10) {
      const { x, y } = pointAt(path, way);
      if (x < EDGE || y < EDGE || x > w - EDGE || y > h - EDGE) return false;
    }
    const last = pointAt(path, path.length);
    return last.x >= EDGE && last.y >= EDGE && last.x <= w - EDGE && last.y <= h - EDGE;
  });
  if (!within || (finish && distance(finish.at, start.at) < BERTHS_APART)) return false;
  return findingsOnGiven(challenge).every(({ rule }) => MEANT.includes(rule));
}

/** Whether the solution's odds are other than one certain ending. */
function leavesToChance(challenge: Challenge): boolean {
  const { limits, model, light = SAME_LIGHT } = challenge;
  const scene = sceneOf(challenge, model!);
  const { traces } = judge(challenge, model!, 'live', () => scene);
  const question = { start: 'start', limit: limits.time, ambient: light, runs: traces } as const;
  const odds = oddsOf(scene.world, scene.track, question);
  return traces.length !== 1 || odds?.endings.length !== 1;
}
