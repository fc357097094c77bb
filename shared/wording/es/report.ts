import { numbers } from './numbers.ts';

type What = 'Challenge' | 'Design' | 'Kit';

const BERTHS = { start: 'la salida', finish: 'el final' } as const;
const WHAT: Readonly<Record<What, string>> = { Challenge: 'Reto', Design: 'Dibujo', Kit: 'Kit' };

/** What the judge says on the command line, beside the sentences that pages say too. */
export const report = {
  result: (met: boolean, points: number): string =>
    `${met ? 'Cumplido' : 'Sin cumplir'}: ${points} de 100 puntos`,
  goals: 'Objetivos',
  inRun: (run: number): string => ` en el recorrido ${run}`,
  margin: (value: string): string => `(margen ${value})`,
  points: (got: number, of: number): string => `${got} de ${of} puntos`,
  answers: 'Aquí los equipos responden preguntas, y ningún dibujo lo puede cumplir',
  answer: (answer: string): string => `Respuesta: ${answer}.`,
  merit: (name: string, points: string, because: string): string => `${name}: ${points} puntos. ${because}`,
  run: (run: number, of: number): string => (of === 1 ? 'Recorrido' : `Recorrido ${run} de ${of}`),
  from: (start: 'start' | 'finish'): string => `desde ${BERTHS[start]}`,
  chance: (percent: string): string => `, probabilidad ${percent} %`,
  ended: (ending: string, time: string): string => `${ending}, a los ${time}`,
  mark: (mark: string): string => ` (marca ${mark})`,
  reads: (bands: string): string => `lee ${bands}`,
  acts: (place: string, time: string): string => `actúa en ${place} a los ${time}`,
  actsNot: 'no actúa antes del final',
  nothing: 'Nada que mirar.',
  things: (n: number): string => `${numbers.counted(n, 'cosa', 'cosas')} que mirar`,
  finding: (title: string, place: string, severity: string): string =>
    `${title} en ${place} mm (${severity})`,
  odds: (start: 'start' | 'finish', sure: boolean, endings: string): string =>
    `Probabilidades desde ${BERTHS[start]}: ${sure ? 'seguro que ' : ''}${endings}`,
  decides: (place: string, come: string, arms: string): string =>
    `En ${place} decide solo (llega allí el ${come}): ${arms}`,
  steadiness: (said: string): string => `Firmeza: ${said}`,
  strays: (n: number, cause: string, mark: string, place: string): string =>
    `${numbers.counted(n, 'robot', 'robots')} ${cause}${mark} cerca de ${place}`,
  what: (what: What): string => WHAT[what],
  noFile: (file: string, orKey: boolean): string =>
    `no hay ningún archivo ${file} que se pueda leer${orKey ? ', y ningún reto listo tiene esa clave' : ''}.`,
  notJson: (file: string, why: string): string => `${file} no es JSON (${why}).`,
};
