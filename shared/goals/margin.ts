import type { Unit } from '../documents/verdict.ts';

/** What a predicate says of one run or of the design: met when at least 0, in the predicate's own unit. */
export interface Margin {
  readonly value: number;
  readonly unit: Unit;
  /** The kind of the predicate that decided. */
  readonly by: string;
  /** Which end of a two-sided wish decided. */
  readonly side?: Side | undefined;
}

export type Side = 'below' | 'above';

/** Margins of different units are compared in steps of this size, one step about as hard to win as another. */
const SCALE: Readonly<Record<Unit, number>> = { mm: 10, s: 1, count: 1, degrees: 10, ratio: 0.05 };

/** A margin that nothing limits; 4 m of sheet and an hour of run stay below it. */
export const UNLIMITED = 9999;

export const scaled = (margin: Margin): number => margin.value / SCALE[margin.unit];

export const isMet = (margin: Margin): boolean => scaled(margin) >= 0;

const bounded = (value: number): number => Math.max(-UNLIMITED, Math.min(UNLIMITED, value));

/** A margin with its value kept finite, so that it can be written to a document. */
export function marginOf(by: string, unit: Unit, value: number, side?: Side): Margin {
  const kept = bounded(value);
  return { by, unit, value: kept === 0 ? 0 : kept, side };
}

/** Of a wish with two ends: the nearer one decides. `below` is the way to its lower end. */
export const twoSided = (by: string, unit: Unit, below: number, above: number): Margin =>
  below <= above ? marginOf(by, unit, below, 'below') : marginOf(by, unit, above, 'above');

/** Of a wish for one whole number: how far `counted` is from it. */
export const exactly = (by: string, counted: number, wanted: number): Margin =>
  twoSided(by, 'count', Math.min(0, counted - wanted), Math.min(0, wanted - counted));

/** The margin that is nearest to failing. The earlier one of two equal ones. */
export const smallest = (margins: readonly Margin[]): Margin =>
  margins.reduce((best, next) => (scaled(next) < scaled(best) ? next : best));

/** The margin that is furthest from failing. The earlier one of two equal ones. */
export const largest = (margins: readonly Margin[]): Margin =>
  margins.reduce((best, next) => (scaled(next) > scaled(best) ? next : best));

/**
 * The margin of the opposite wish. A count is a whole number, so "at most 2" with 2 used has 0 to
 * spare and its opposite, "3 or more", lacks 1.
 */
export const opposite = (margin: Margin): Margin =>
  marginOf(margin.by, margin.unit, margin.unit === 'count' ? -1 - margin.value : -margin.value, margin.side);
