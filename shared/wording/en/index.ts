import { actions } from './actions.ts';
import { board } from './board.ts';
import { builder } from './builder.ts';
import { calibration } from './calibration.ts';
import { check } from './check.ts';
import { closing } from './closing.ts';
import { desk } from './desk.ts';
import { device } from './device.ts';
import { beside, driving, onPaper } from './drive.ts';
import { emblems } from './emblems.ts';
import { evidence } from './evidence.ts';
import { findings } from './findings.ts';
import { fitting } from './fitting.ts';
import { foretelling } from './foretelling.ts';
import { goals } from './goals.ts';
import { judging } from './judging.ts';
import { kept } from './kept.ts';
import { keys } from './keys.ts';
import { kit } from './kit.ts';
import { learning } from './learning.ts';
import { lessonPlan } from './lesson-plan.ts';
import { library } from './library.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';
import { par } from './par.ts';
import { points } from './points.ts';
import { prepCheck } from './prep-check.ts';
import { print } from './print.ts';
import { questions } from './questions.ts';
import { reading } from './reading.ts';
import { reasons } from './reasons.ts';
import { refusals } from './refusals.ts';
import { replay } from './replay.ts';
import { report } from './report.ts';
import { rota } from './rota.ts';
import { safety } from './safety.ts';
import { scenes } from './scenes.ts';
import { stage } from './stage.ts';
import { supplies } from './supplies.ts';
import { tablet } from './tablet.ts';
import { toPaper } from './to-paper.ts';
import { together } from './together.ts';
import { tracing } from './tracing.ts';

export const en = {
  beside,
  driving,
  onPaper,
  emblems,
  numbers,
  evidence,
  findings,
  fitting,
  foretelling,
  goals,
  keys,
  judging,
  kit,
  learning,
  library,
  actions,
  par,
  outlook,
  points,
  print,
  questions,
  reasons,
  reading,
  refusals,
  replay,
  report,
  rota,
  calibration,
  prepCheck,
  supplies,
  lessonPlan,
  kept,
  safety,
  scenes,
  builder,
  check,
  closing,
  device,
  desk,
  board,
  stage,
  tablet,
  toPaper,
  together,
  tracing,
};
