import { actions } from './actions.ts';
import { board } from './board.ts';
import { check } from './check.ts';
import { closing } from './closing.ts';
import { device } from './device.ts';
import { onPaper } from './drive.ts';
import { emblems } from './emblems.ts';
import { findings } from './findings.ts';
import { foretelling } from './foretelling.ts';
import { goals } from './goals.ts';
import { judging } from './judging.ts';
import { keys } from './keys.ts';
import { numbers } from './numbers.ts';
import { points } from './points.ts';
import { questions } from './questions.ts';
import { reading } from './reading.ts';
import { reasons } from './reasons.ts';
import { refusals } from './refusals.ts';
import { replay } from './replay.ts';
import { safety } from './safety.ts';
import { scenes } from './scenes.ts';
import { stage } from './stage.ts';
import { tablet } from './tablet.ts';
import { toPaper } from './to-paper.ts';
import { together } from './together.ts';
import { tracing } from './tracing.ts';

/**
 * What every page says. What only the desk, paper and commands say is in `whole.ts`, so that a tablet does
 * not have to load it.
 */
export const en = {
  onPaper,
  emblems,
  numbers,
  findings,
  foretelling,
  goals,
  keys,
  judging,
  actions,
  points,
  questions,
  reasons,
  reading,
  refusals,
  replay,
  safety,
  scenes,
  check,
  closing,
  device,
  board,
  stage,
  tablet,
  toPaper,
  together,
  tracing,
};
