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

/**
 * Spanish. To children it says "tú", in short sentences; to teachers it uses infinitives and speaks of
 * nobody. One word for one thing:
 *
 * | English | español | | English | español |
 * | --- | --- | --- | --- | --- |
 * | room, room word | sala, palabra de la sala | | line, loose end, gap | línea, cabo suelto, hueco |
 * | desk, board, tablet | mesa, pizarra, tableta | | corner, curve, junction | esquina, curva, cruce |
 * | team, emblem | equipo, emblema | | mark, band, ink | marca, banda, tinta |
 * | challenge, goal | reto, objetivo | | way (of a run) | camino |
 * | sheet, drawing | hoja, dibujo | | pace: tiptoe, steady | paso: de puntillas, normal |
 * | entry, hand in | entrega, entregar | | pace: brisk, fast | paso: ligero, rápido |
 * | berth, harbour wall | amarre, malecón | | stretch | tramo |
 * | gate, keep-out | puerta, zona prohibida | | chance, left to luck | azar, al azar |
 * | chart | tabla (de marcas) | | margin: to spare, missing | de sobra, falta |
 * | draw, fill in | dibujar, completar | | predict, mend | predecir, arreglar |
 */
export const es = {
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
