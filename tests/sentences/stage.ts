import { WEATHERS } from '../../shared/documents/outlook.ts';
import { ENDINGS } from '../../shared/documents/trace.ts';
import { OTHER_LIGHTS } from '../../shared/documents/what-if.ts';
import { STAGE_SPEEDS } from '../../shared/wire/stage.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

/** What is said of the stage. */
export function ofStage({ stage }: Wording): void {
  const of = { from: 'Faro', word: 'CAV' };
  each(OTHER_LIGHTS, (light) => stage.supposed({ kind: 'light', light }, of));
  each(WEATHERS, (weather) => stage.supposed({ kind: 'weather', weather, robot: 7 }, of));
  stage.supposed({ kind: 'start' }, of);
  stage.supposed({ kind: 'band', mark: 'm', band: 1, ink: 'A' }, of);
  each(['other-engine', 'otherwise'] as const, stage.replayed);
  each(STAGE_SPEEDS, stage.speed);
  each([0.25, 0.5], stage.slow);
  each([1, 2, 3, 4], (place) => stage.finished(place, 7.2));
  each([...ENDINGS, null], stage.notThere);
  each([0, 1, 2], (met) => stage.goalsMet(met, 2));
  stage.goalsMet(1, 1);
  each([0.5, 0.35], (chance) => stage.controls.way(2, chance));
  stage.whatIf.robot(7);
  stage.whatIf.changeBand('CAV', 2, 'aqua');
}
