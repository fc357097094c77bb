/**
 * What a class needs on its tables, counted from the number of teams. Counts are common practice, no
 * source: one of what a team holds in its hands, and a spare for every few.
 */

export const SUPPLIES = [
  'robots',
  'tablets',
  'line-markers',
  'band-markers',
  'sheets',
  'paper-under',
  'tape',
  'gauge-cards',
  'slips',
  'patches',
  'chart',
  'cloths',
  'box',
] as const;
export type Supply = (typeof SUPPLIES)[number];

export interface Supplied {
  readonly supply: Supply;
  /** With `spare`; of band markers, one is a set with every ink of the kit; of tape, one is a roll. */
  readonly count: number;
  /** How many of them are spare. */
  readonly spare: number;
}

/** A class of 24 in threes. */
export const USUAL_TEAMS = 8;
const TEAMS_A_SPARE = 5;
/** A first try, a clean one, and one for what goes wrong. */
const SHEETS_A_TEAM = 3;
/** Four corners of three sheets, a hand long each, dm. */
const TAPE_A_TEAM = 12;
const TAPE_A_ROLL = 100;
const TEAMS_A_PATCH = 4;

/** Of the groups of cautions, those that go with what lies on the tables. */
export const HEEDED_CAUTIONS: readonly string[] = ['small-parts', 'tables', 'markers'];

/** `teams` is a whole number from 1. */
export function suppliesFor(teams: number): Supplied[] {
  const spares = Math.ceil(teams / TEAMS_A_SPARE);
  const one = (supply: Supply, count: number, spare = 0): Supplied => ({
    supply,
    count: count + spare,
    spare,
  });
  return [
    one('robots', teams, spares),
    one('tablets', teams),
    one('line-markers', teams, spares),
    one('band-markers', teams, spares),
    one('sheets', SHEETS_A_TEAM * teams, spares),
    one('paper-under', teams, spares),
    one('tape', Math.ceil((TAPE_A_TEAM * teams) / TAPE_A_ROLL)),
    one('gauge-cards', teams, spares),
    one('slips', SHEETS_A_TEAM * teams),
    one('patches', Math.ceil(teams / TEAMS_A_PATCH)),
    one('chart', 1),
    one('cloths', teams),
    one('box', 1),
  ];
}
