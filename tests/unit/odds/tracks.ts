import type { Drawing } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { Odds } from '../../../shared/documents/outlook.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { oddsFrom } from '../../../shared/odds/odds.ts';
import { roadMap } from '../../../shared/odds/roads.ts';
import { type TrackChain, trackChain } from '../../../shared/odds/track-chain.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { Pen } from '../../sweeps/pen.ts';

/** An A3 sheet with the boathouse at the left; where the lighthouse stands is the drawing's matter. */
export const SHEET: Sheet = {
  w: 420,
  h: 297,
  start: { name: { en: 'Boathouse' }, at: { x: 40, y: 150 }, heading: 0, r: 12 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

export const lighthouseAt = (x: number, y: number): Sheet => ({
  ...SHEET,
  finish: { name: { en: 'Lighthouse' }, at: { x, y }, heading: 0, r: 12 },
});

export const BANDS = [5.5, 5.5, 5.5, 5.5] as const;

/** A line from the boathouse to the right. */
export const fromStart = (): Pen => new Pen().to(30, 150);

export interface Scene {
  readonly drawing: Drawing;
  readonly sheet: Sheet;
  readonly kit?: Kit;
  readonly start?: 'start' | 'finish';
}

/** The track as a chain, without any run. */
export function chainOn({ drawing, sheet, kit = DEMO_KIT, start = 'start' }: Scene): TrackChain {
  const track = buildTrack(layOut(sheet, drawing), kit);
  const chain = trackChain(roadMap(track, sheet, kit), start);
  if (!chain) throw new Error('too much to work out');
  return chain;
}

export const LIMIT = 90;
export const oddsOn = (scene: Scene, limit = LIMIT): Odds =>
  oddsFrom(chainOn(scene), 'track', scene.start ?? 'start', limit);

/** Endings as text, most likely first: `finished 0.50`. */
export const endingsOf = (odds: Odds): string[] =>
  odds.endings.map(({ ending, probability }) => `${ending} ${probability.toFixed(4)}`);

/** A fork at x = 160: to the left it leads to the lighthouse, to the right it ends. */
export const FORK: Scene = {
  sheet: lighthouseAt(340, 60),
  drawing: fromStart()
    .straight(130)
    .to(160, 150, -90)
    .straight(60)
    .arc(30, 90)
    .straight(150)
    .to(160, 150, 90)
    .straight(60)
    .drawing(),
};

/** A ring: the stem from the boathouse on its left, the stem to the lighthouse on its right. */
export const RING: Scene = {
  sheet: lighthouseAt(360, 150),
  drawing: fromStart()
    .straight(110)
    .to(140, 150, -90)
    .arc(60, 180)
    .arc(60, 180)
    .to(260, 150, 0)
    .straight(110)
    .drawing(),
};

/** Three crossings on the way to the lighthouse: the first two left open, a mark decides the third. */
export const STREET: Scene = {
  sheet: lighthouseAt(380, 150),
  drawing: new Pen()
    .to(160, 70, 90)
    .straight(160)
    .to(250, 70, 90)
    .straight(160)
    .to(320, 90, 90)
    .straight(120)
    .to(30, 150)
    .straight(360)
    .mark(45, 'CA', BANDS)
    .mark(175, 'ACA', BANDS)
    .drawing(),
};

/**
 * The ring with a mark in its upper half: a pace faster clockwise, one slower the other way. Junctions as they
 * are come to, with the pace (creep 0 to fast 3): the stem at 1; clockwise the far side at 2 and 3 and the near
 * side at 2 and 3; the other way the far side at 1 and 0 and the near side at 0. That makes 8.
 */
export const WHIRL: Scene = {
  sheet: RING.sheet,
  drawing: fromStart()
    .straight(110)
    .to(140, 150, -90)
    .arc(60, 180)
    .arc(60, 180)
    .mark(60, 'CA', BANDS)
    .to(260, 150, 0)
    .straight(110)
    .drawing(),
};
export const WHIRL_FORKS = 8;
