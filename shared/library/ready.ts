import type { Challenge } from '../documents/challenge.ts';
import type { Action, Kit } from '../documents/kit.ts';
import { DEMO_KIT } from '../kit/demo-kit.ts';
import { RECIPES } from './challenges/index.ts';
import { actionNamed } from './chart-words.ts';
import { PARS } from './pars.ts';
import { type InEveryLanguage, type Recipe, toolsFor } from './recipe.ts';
import { drivesAlike } from './same-kit.ts';

/** A challenge of the library as it stands with one kit. */
export type ReadyChallenge = {
  /** Names it in rooms and commands. */
  readonly key: string;
  readonly topic: number;
  /** A few words for a list. */
  readonly title: InEveryLanguage;
} & (
  | {
      readonly playable: true;
      readonly challenge: Challenge;
      /**
       * Known with a kit that drives and reads as the one that the challenges were made with. With
       * another the model is a drawing that may or may not do.
       */
      readonly par: 'known' | 'not-known';
    }
  | {
      readonly playable: false;
      /** The kit's chart has no word for these actions. */
      readonly missing: readonly Action[];
      /** Nothing is missing: the kit's robot does by itself what is to be learned. */
      readonly doneByItself?: true;
    }
);

/** Every ready challenge in the order of the course, made for a kit. */
export const readyChallenges = (kit: Kit): ReadyChallenge[] => RECIPES.map((recipe) => ready(recipe, kit));

function ready(recipe: Recipe, kit: Kit): ReadyChallenge {
  const { key, topic, title, starts, asks, weather } = recipe;
  const tools = toolsFor(kit);
  const { sheet, begin, model } = recipe.cook(tools);
  if (tools.missing.size > 0)
    return { key, topic, title, playable: false, missing: [...tools.missing].map(actionNamed) };
  if (recipe.goingStraightSolves && kit.robot.unmarkedJunction === 'straight')
    return { key, topic, title, playable: false, missing: [], doneByItself: true };
  const asMade = drivesAlike(kit, DEMO_KIT);
  const cost = asMade ? PARS[key] : undefined;
  const challenge: Challenge = {
    version: 1,
    id: key,
    topic,
    sentence: recipe.sentence,
    ...(recipe.mirrored === undefined ? {} : { mirroredSentence: recipe.mirrored }),
    play: recipe.play,
    kit,
    sheet,
    starts: starts ?? ['start'],
    goals: recipe.goals,
    limits: { time: recipe.seconds },
    ...(asks ? { asks } : {}),
    ...(weather ? { weather } : {}),
    ...(begin ? { begin } : {}),
    ...(model ? { model } : {}),
    ...(cost === undefined ? {} : { par: cost }),
    note: recipe.note,
  };
  const par = asMade ? 'known' : 'not-known';
  return { key, topic, title, playable: true, challenge, par };
}
