import type { Challenge } from '../documents/challenge.ts';
import { type Action, PACES } from '../documents/kit.ts';
import type { Ask, Choice, Question, StandingPlace } from '../documents/question.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { buildTrack } from '../track/graph.ts';
import { layOut } from '../track/layout.ts';
import { canonicalGiven, placeNamed } from './standing-places.ts';

/**
 * The questions of a challenge with all that may be answered, in the order of its asks. Of a robot from a
 * finish berth that the sheet lacks nothing is asked: none sets out from there.
 */
export const questionsOf = (challenge: Challenge): Question[] =>
  (challenge.asks ?? [])
    .filter(({ start }) => start === 'start' || challenge.sheet.finish)
    .flatMap((ask) => questionsFor(challenge, ask));

function questionsFor(challenge: Challenge, ask: Ask): Question[] {
  const { sheet } = challenge;
  const { start } = ask;
  switch (ask.kind) {
    case 'end':
      return [{ id: `end-${start}`, start, kind: 'end', choices: endChoices(challenge) }];
    case 'marks': {
      const choices = markChoices(challenge);
      return sheet.given.marks.map(
        ({ id }): Question => ({ id: `mark-${start}-${id}`, start, kind: 'mark', mark: id, choices }),
      );
    }
    case 'pace': {
      const choices = [...PACES.map((pace): Choice => ({ key: pace, kind: 'pace', pace })), NEVER, CHANCE];
      return [{ id: `pace-${start}-${ask.area}`, start, kind: 'pace', area: ask.area, choices }];
    }
    case 'how-many': {
      const { place, of } = ask;
      return [{ id: `many-${start}-${keyOf(place)}`, start, kind: 'how-many', place, of }];
    }
  }
}

export const NEVER: Choice = { key: 'never', kind: 'never' };
export const CHANCE: Choice = { key: 'chance', kind: 'chance' };
export const ELSEWHERE: Choice = { key: 'elsewhere', kind: 'elsewhere' };

export const keyOf = (place: StandingPlace): string =>
  place.kind === 'berth' ? `berth:${place.berth}` : `area:${place.area}`;

/** Berths, areas, and the ends of given lines that lie in none of them. */
function endChoices({ sheet, kit }: Challenge): Choice[] {
  const named: StandingPlace[] = [
    { kind: 'berth', berth: 'start' },
    ...(sheet.finish ? [{ kind: 'berth', berth: 'finish' } as const] : []),
    ...sheet.areas.map(({ id }) => ({ kind: 'area', area: id }) as const),
  ];
  const track = buildTrack(layOut(sheet, canonicalGiven(sheet)), kit);
  const ends = track.nodes
    .filter((node) => node.kind === 'end' && placeNamed(sheet, node.at) === undefined)
    .map((node) => node.at)
    .sort((a, b) => a.y - b.y || a.x - b.x);
  return [
    ...named.map((place): Choice => ({ key: keyOf(place), ...place })),
    ...ends.map(looseEnd),
    ELSEWHERE,
    CHANCE,
  ];
}

function looseEnd(at: PaperPoint, i: number): Choice {
  const letter = String.fromCharCode('A'.charCodeAt(0) + (i % 26)) + (i < 26 ? '' : Math.floor(i / 26));
  return { key: `end:${letter}`, kind: 'loose-end', letter, at };
}

/** The chart's actions, each once, in the order of the chart. */
function markChoices({ kit }: Challenge): Choice[] {
  const actions = new Map(kit.chart.map(({ action }) => [actionKey(action), action]));
  return [...[...actions].map(([key, action]): Choice => ({ key, kind: 'action', action })), NEVER, CHANCE];
}

/** Stands for an action in answers; times in hundredths of a second. */
export function actionKey(action: Action): string {
  switch (action.kind) {
    case 'pace-by':
      return `pace-by:${action.steps}`;
    case 'pace-to':
      return `pace-to:${action.pace}`;
    case 'pace-for':
      return `pace-for:${action.pace}:${Math.round(action.time * 100)}`;
    case 'choose':
      return `choose:${action.way}`;
    case 'wait':
    case 'signal':
      return `${action.kind}:${Math.round(action.time * 100)}`;
    default:
      return action.kind;
  }
}
