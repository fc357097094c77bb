import { builder } from './builder.ts';
import { calibration } from './calibration.ts';
import { desk } from './desk.ts';
import { beside, driving } from './drive.ts';
import { evidence } from './evidence.ts';
import { fitting } from './fitting.ts';
import { es } from './index.ts';
import { kept } from './kept.ts';
import { kit } from './kit.ts';
import { learning } from './learning.ts';
import { lessonPlan } from './lesson-plan.ts';
import { library } from './library.ts';
import { outlook } from './outlook.ts';
import { par } from './par.ts';
import { prepCheck } from './prep-check.ts';
import { print } from './print.ts';
import { report } from './report.ts';
import { rota } from './rota.ts';
import { supplies } from './supplies.ts';

/** All that is said, at the desk and on paper too. */
export const whole = {
  ...es,
  beside,
  driving,
  evidence,
  fitting,
  kit,
  learning,
  library,
  par,
  outlook,
  print,
  report,
  rota,
  calibration,
  prepCheck,
  supplies,
  lessonPlan,
  kept,
  builder,
  desk,
};
