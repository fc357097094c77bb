import type { Kit } from '../documents/kit.ts';
import { linearLight } from '../kit/light.ts';

/** Shares of light that come back, in a sensor's three colour channels. */
export type Reflectance = readonly [red: number, green: number, blue: number];

/** Chosen: paper and line marker, alike in every channel; the table beside the paper is a middling grey. */
export const WHITE = 0.85;
export const BLACK = 0.06;
export const TABLE = 0.45;
/** Chosen: ink returns this share of the light even where its colour is 0, and so much more per linear light. */
const INK_BASE = 0.04;
const INK_SPAN = 0.81;
/** Chosen: how the broad-band channel of the outer sensors sees the three colours. */
const GREY_MIX: Reflectance = [0.3, 0.5, 0.2];

/** What the grey channel sees of a colour. */
export const greyOf = (red: number, green: number, blue: number): number =>
  GREY_MIX[0] * red + GREY_MIX[1] * green + GREY_MIX[2] * blue;

/** Reflectance of an ink from its colour `#RRGGBB`. */
export function inkReflectance(color: string): Reflectance {
  const channel = (at: number): number =>
    INK_BASE + INK_SPAN * linearLight(Number.parseInt(color.slice(at, at + 2), 16));
  return [channel(1), channel(3), channel(5)];
}

/** Inks of a kit, in its order. */
export const kitReflectances = (kit: Kit): Reflectance[] => kit.inks.map((ink) => inkReflectance(ink.color));
