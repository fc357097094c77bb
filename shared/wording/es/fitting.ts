import type { Mm } from '../../geometry/units.ts';
import { numbers } from './numbers.ts';

const { counted, short } = numbers;

const percent = (share: number): string => `${short(share * 100, 0)} %`;

/** Before the lesson: the kit's numbers from the class's own robots. */
export const fitting = {
  leaf: 'Ajustar a los robots',
  how: 'Imprimir la línea con reloj, el círculo con reloj y las dos páginas de límites (en «Papel», con una sala abierta). Lo que se escribe aquí queda en este navegador hasta que se borra.',
  first:
    'Primero calibrar los robots, sobre el papel en el que van a conducir, como diga la hoja del fabricante.',
  runsTitle: 'Recorridos con reloj',
  robot: 'N.º de robot',
  pace: 'Paso',
  over: 'Sobre',
  line: 'línea, 500 mm',
  round: (radius: string) => `círculo, radio ${radius}`,
  circle: (laps: number, radius: string) =>
    `círculo de radio ${radius}, ${counted(laps, 'vuelta', 'vueltas')}`,
  laps: 'Vueltas',
  seconds: 'Segundos',
  add: 'Añadir el recorrido',
  remove: (n: number) => `Quitar el recorrido ${n}`,
  removed: 'Recorrido quitado.',
  runs: (n: number) => counted(n, 'recorrido', 'recorridos'),
  noRuns: 'Aún no hay ningún recorrido escrito.',
  clear: 'Borrar todo',
  cleared: 'Recorridos y límites borrados.',
  result: 'Lo que dicen los recorridos',
  heads: {
    what: 'Número',
    kit: 'En el kit',
    found: 'Los robots',
    error: 'Error típico',
    range: 'Intervalo del 95 %',
    runs: 'Recorridos',
  },
  speed: (value: number) => `${short(value, 1)} mm/s`,
  paceNamed: (pace: string) => `paso ${pace}`,
  track: 'ancho entre ruedas',
  wide: (value: Mm) => `${short(value, 1)} mm`,
  range: (low: string, high: string) => `${low} a ${high}`,
  tooFew: 'muy pocos para decirlo',
  from: (runs: number, robots: number) => `${runs} con ${counted(robots, 'robot', 'robots')}`,
  oneRobot:
    'Todos los recorridos son de un solo robot: los otros de la clase pueden variar más de lo que dice el intervalo.',
  trackOpen:
    'El ancho entre ruedas pide vueltas al paso de salida, recorridos sobre la línea al mismo paso y, en total, tres o más.',
  trackNot:
    'Las vueltas no dicen el ancho entre ruedas de este robot: en una curva mantiene el paso su centro y no la rueda de fuera. Medir con una regla del centro de un neumático al centro del otro.',
  limitsTitle: 'Límites',
  tried: 'Robots que probaron',
  corners: 'Cuántos pasaron cada esquina',
  bands: 'Cuántos leyeron cada largo de banda',
  cornerLimit: (degrees: number) => `Esquinas de ${degrees}° o más abiertas: las pasan todos los robots.`,
  bandLimit: (length: string) => `Bandas de ${length} o más: las leen todos los robots.`,
  allOf: (n: number, low: number) =>
    `Todos (${counted(n, 'robot', 'robots')}); de todos los robots así eso dice: al menos ${percent(low)} (95 %).`,
  noLimit: 'Ni lo más fácil lo hicieron todos: revisar antes calibración, tinta y luz.',
  further: 'Aquí acaba la tira: quizá puedan más.',
  useTitle: 'Usar estos números',
  useNote: 'Nada cambia por sí solo. Salas y entregas conservan el kit con el que se juzgaron.',
  named: (kit: string) => `${kit}, ajustado`,
  fromTo: (before: string, after: string) => `${before} → ${after}`,
  cornerRule: 'esquina: el robot puede pararse por debajo de',
  untidyRule: 'esquina: descuidada por debajo de',
  bandRule: 'banda más corta',
  tidyBandRule: 'banda cuidada más corta',
  save: 'Guardarlo como un kit propio',
  saved: 'Está en el estante de kits',
  play: 'Jugar con él desde el próximo reto',
  plays: 'El próximo reto es para el kit ajustado.',
  changes: (n: number) => counted(n, 'número del kit cambia', 'números del kit cambian'),
  noChanges: 'Nada de lo hallado difiere del kit.',
};
