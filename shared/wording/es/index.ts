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
 * | gate, keep-out, box | puerta, zona prohibida, recuadro | | chance, left to luck | azar, al azar |
 * | chart | tabla (de marcas) | | margin: to spare, missing | de sobra, falta |
 * | draw, fill in | dibujar, completar | | predict, mend | predecir, arreglar |
 */
export const es = {
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
