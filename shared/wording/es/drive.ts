import type { Seconds } from '../../geometry/units.ts';
import type { PaceOffer } from '../../prep/foretold.ts';
import type { Outcome } from '../../room/driving.ts';
import { onClock } from '../clock.ts';
import { numbers } from './numbers.ts';

const { counted, short, time } = numbers;

const OUTCOMES: Readonly<Record<Outcome['kind'], string>> = {
  'as-predicted': 'como se predijo',
  lost: 'perdido',
  'other-branch': 'otro camino',
  'time-up': 'se acabó el tiempo',
};

const percent = (share: number): string => `${short(share * 100, 0)} %`;
const between = (low: number, high: number): string => `${percent(low)} a ${percent(high)}`;

function offer(found: PaceOffer, enough: { trials: number; robots: number }): string {
  const seen = `${counted(found.trials, 'prueba con reloj', 'pruebas con reloj')} con ${counted(found.robots, 'robot', 'robots')}`;
  if (found.kind === 'few')
    return `${seen}, con el kit de ahora. A partir de ${enough.trials} con ${enough.robots} robots se pueden proponer otros pasos.`;
  const { times, spread } = found;
  const said = `${seen}: tardan ${short(times, 3)} veces lo anunciado (95 %: ${short(spread.low, 3)} a ${short(spread.high, 3)}).`;
  return found.kind === 'alike' ? `${said} Los pasos del kit valen.` : `${said} Los pasos del kit no valen.`;
}

/** The desk's step with real robots. */
export const driving = {
  title: 'Robots en el papel',
  robots: 'Robots que conducen',
  robotsNote: 'Los números de los robots. Tocar uno que descansa; tocarlo otra vez cuando vuelva.',
  more: 'Un robot más',
  noRobots: 'No conduce ningún robot. Tocar los números de los que sí.',
  noTeams: 'No hay ningún equipo en la sala.',
  minutes: 'Minutos por turno',
  turn: (n: number) => `Turno ${n}`,
  now: 'ahora',
  inMinutes: (n: number) => `en ${n} min`,
  over: 'hecho',
  next: 'Turno siguiente',
  before: 'Turno anterior',
  go: 'A conducir',
  robot: (n: number) => `robot n.º ${n}`,
  waits: 'por apuntar',
  noEntry: 'nada entregado',
  outcome: (kind: Outcome['kind']) => OUTCOMES[kind],
  timed: (seconds: Seconds) => time(seconds),
  noted: (team: string, robot: number, said: string) => `${team}, robot n.º ${robot}: ${said}.`,
  tookBack: 'Nota quitada.',
  takeBack: 'Quitar esta nota',
  pick: 'Tocar un equipo y luego lo que hizo su robot.',
  whose: (team: string, robot: number) => `${team}, robot n.º ${robot}`,
  whichEntry: 'Qué dibujo está en el papel',
  foretold: (same: number, of: number) => `Anunciado: ${same} de ${of} robots hacen lo mismo que el ideal.`,
  arrives: (share: number) => `Probabilidad de llegar: ${percent(share)}.`,
  takes: (seconds: Seconds) => `Debe tardar ${time(seconds)}.`,
  nothingForetold: 'Para este no hay nada anunciado.',
  lostHere: 'Perdido: tocar el lugar en la hoja',
  lostSomewhere: 'Perdido, lugar no visto',
  setsOff: 'Sale',
  running: (ms: number) => onClock(ms),
  stopClock: 'Parar el reloj',
  sheet: (team: string) => `La hoja de ${team}. Tocar donde se perdió el robot.`,
  views: { turns: 'Turnos', beside: 'Predicción y pruebas' },
};

/** What was foretold beside what came. */
export const beside = {
  title: 'Predicción junto a prueba',
  none: 'Aún no hay ninguna prueba apuntada. Con la primera empieza la imagen.',
  counted: (came: number, of: number, low: number, high: number) =>
    `Como se predijo: ${came} de ${counted(of, 'prueba', 'pruebas')} (95 %: ${between(low, high)}).`,
  brier: (score: number, plain: number) =>
    `Índice de Brier ${short(score, 3)}; 0 es perfecto, y decir en cada prueba lo que salió en toda la clase daría ${short(plain, 3)}.`,
  few: 'Con tan pocas pruebas el azar solo ya da grandes diferencias: hay que mirar los intervalos.',
  bin: (from: number, to: number) => `${between(from, to)}`,
  heads: {
    foretold: 'Firmeza anunciada',
    mean: 'Media',
    came: 'Como se predijo',
    range: 'Intervalo del 95 %',
  },
  came: (came: number, of: number) => `${came} de ${of}`,
  range: between,
  mean: percent,
  picture:
    'Cada punto: de las pruebas con más o menos tanto anunciado, tantas salieron así. Sobre la línea inclinada ambas cosas son iguales.',
  axes: { foretold: 'anunciado', came: 'salió' },
  pacesTitle: 'Pasos según las pruebas',
  offer,
  wholeClass: 'Pruebas de esta sala, también de retos anteriores.',
};

/** On a team's tablet meanwhile. */
export const onPaper = {
  title: 'Los robots van sobre el papel',
  now: (robot: number) => `Tu turno: coge el robot ${robot}.`,
  later: (turn: number, robot: number) => `Tu turno es el ${turn}, con el robot ${robot}.`,
  noRobot: 'Mira cómo conducen los otros.',
  look: '¿Hace lo que dijiste? Mira dónde deja la línea.',
};
