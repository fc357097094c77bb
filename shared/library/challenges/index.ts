import type { Recipe } from '../recipe.ts';
import { bakeryAndBack } from './bakery-and-back.ts';
import { ferryJunction } from './ferry-junction.ts';
import { firstLine } from './first-line.ts';
import { lateChoice } from './late-choice.ts';
import { longPier } from './long-pier.ts';
import { oneFastStretch } from './one-fast-stretch.ts';
import { parkOnTheLanding } from './park-on-the-landing.ts';
import { sharpCorner } from './sharp-corner.ts';

/** In the order of the course. A new one is a file and a line here. */
export const RECIPES: readonly Recipe[] = [
  firstLine,
  sharpCorner,
  parkOnTheLanding,
  longPier,
  ferryJunction,
  lateChoice,
  oneFastStretch,
  bakeryAndBack,
];
