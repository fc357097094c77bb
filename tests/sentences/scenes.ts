import { CAUSES, WEATHERS } from '../../shared/documents/outlook.ts';
import { BOARD_SCENES, BOARD_SETTINGS } from '../../shared/room/board.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const COUNTS = [0, 1, 2, 12] as const;
const TEAM = 'Ancla';

/** What the board's scenes say, and the desk of them. */
export function ofScenes({ scenes }: Wording): void {
  const { fleet, foretell, closing } = scenes;
  each(BOARD_SCENES, scenes.name);
  each(BOARD_SETTINGS, (setting) => [scenes.setting(setting), scenes.settingNote(setting)]);
  each(['building', 'no-challenge', 'no-drawings', 'no-marks', 'step'] as const, scenes.hindered);
  each(WEATHERS, fleet.title);
  each(CAUSES, (cause) => fleet.cause(3, cause));
  fleet.cause(1, 'lost');
  scenes.drawingOf(TEAM, 2);
  foretell.hands('A', '…');
  for (const n of COUNTS) {
    each([scenes.gallery, closing.grown, closing.grownShort, closing.drawings], (f) => f(n));
    for (const of of [2, 12] as const) {
      each([scenes.page, fleet.ready, fleet.soFar, foretell.mark, foretell.right], (f) => f(n, of));
      each([closing.robots, closing.caps], (f) => f(n, of));
      each([true, false], (met) => fleet.made(n, of, met));
    }
  }
  closing.robots(1, 1);
  closing.caps(1, 1);
}
