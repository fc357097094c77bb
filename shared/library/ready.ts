import type { Challenge } from '../documents/challenge.ts';
import type { Action, Kit } from '../documents/kit.ts';
import { RECIPES } from './challenges/index.ts';
import { actionNamed } from './chart-words.ts';
import { type Recipe, toolsFor } from './recipe.ts';

/** A challenge of the library as it stands with one kit. */
export type ReadyChallenge = {
  /** Names it in rooms and commands. */
  readonly key: string;
  readonly topic: number;
  /** A few words for a list. */
  readonly title: string;
} & (
  | { readonly playable: true; readonly challenge: Challenge }
  /** The kit's chart has no word for these actions. */
  | { readonly playable: false; readonly missing: readonly Action[] }
);

/** Every ready challenge in the order of the course, made for a kit. */
export const readyChallenges = (kit: Kit): ReadyChallenge[] => RECIPES.map((recipe) => ready(recipe, kit));

function ready(recipe: Recipe, kit: Kit): ReadyChallenge {
  const { key, topic, title } = recipe;
  const tools = toolsFor(kit);
  const { sheet, begin, model } = recipe.cook(tools);
  if (tools.missing.size > 0)
    return { key, topic, title, playable: false, missing: [...tools.missing].map(actionNamed) };
  const { teaches, mistakes, ask } = recipe.note;
  const challenge: Challenge = {
    version: 1,
    id: key,
    topic,
    sentence: { en: recipe.sentence },
    play: recipe.play,
    kit,
    sheet,
    starts: ['start'],
    goals: recipe.goals,
    limits: { time: recipe.seconds },
    ...(begin ? { begin } : {}),
    model,
    note: { teaches: { en: teaches }, mistakes: { en: mistakes }, ask: { en: ask } },
  };
  return { key, topic, title, playable: true, challenge };
}
