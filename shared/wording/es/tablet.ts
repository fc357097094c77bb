import type { CaughtWhy, EditRefusalCode, Tool } from '../en/tablet.ts';
import { notes } from './notes.ts';
import { numbers } from './numbers.ts';
import { playing } from './playing.ts';

/** What teams read on their tablet. Children from seven on: short sentences, plain words. */

const TOOLS: Readonly<Record<Tool, string>> = {
  straight: 'Recta',
  curve: 'Curva',
  freehand: 'A mano',
  mark: 'Marca',
  bands: 'Bandas',
  move: 'Mover',
  rub: 'Borrar',
};

const HOW: Readonly<Record<Tool, string>> = {
  straight: 'Toca donde empieza la línea y luego donde acaba.',
  curve: 'Toma una línea por el medio y tira de ella. También puedes tirar de una esquina.',
  freehand: 'Dibuja en el papel. La línea se arregla cuando levantas el dedo.',
  mark: 'Elige una marca y toca la línea. Deslízala; tócala para girarla.',
  bands: 'Elige una tinta y pásala por una línea.',
  move: 'Tira de un extremo, una esquina, una marca o una línea. Pasa el dedo por el papel para elegir varias.',
  rub: 'Toca o frota lo que quieras quitar.',
};

const HOW_WITH_MARKS: Readonly<Partial<Record<Tool, string>>> = {
  move: 'Tira de una marca por la línea.',
  rub: 'Toca la marca que quieras quitar.',
};

const NOT_DONE: Readonly<Record<EditRefusalCode, (most: number) => string>> = {
  'only-marks': () => 'Aquí las líneas ya están puestas. Tú pones las marcas.',
  given: () => 'Esto es de la hoja y se queda como está.',
  'no-marks-left': (most) =>
    `Aquí solo puedes usar ${numbers.counted(most, 'marca', 'marcas')}. Borra o desliza una antes.`,
  'too-short': () => 'Así no quedaría línea. Prueba una más larga.',
  'line-too-short-for-mark': () => 'Esta línea es muy corta para esa marca.',
  'too-many-bands': () => 'Son muchas bandas para una marca. Deja blanco entre dos marcas.',
  'drawing-full': () => 'La hoja está llena. Borra algo antes.',
  'not-there': () => 'Eso ya no está.',
};

const CAUGHT: Readonly<Record<Exclude<CaughtWhy, 'berth' | 'angle'>, string | null>> = {
  end: 'en el extremo de una línea',
  line: 'en una línea',
  tangent: 'recta desde la línea',
  parallel: 'al lado de esa línea',
  grid: 'en la cuadrícula',
  free: null,
};

const joining = {
  title: 'Sube a bordo',
  label: 'Palabra de la sala',
  hint: 'Está en la pizarra: una palabra, un guion y un número. Aquí vale también un código de la mesa.',
  go: 'Entrar',
  busy: 'Un momento',
  empty: 'Escribe antes la palabra de la pizarra.',
};

const waiting = {
  looking: 'Buscando la sala',
  lookingLong: 'El ordenador de tu profe aún no responde. Esta página sigue probando.',
  youAre: 'Tu equipo es',
  berth: (n: number) => `Amarre ${n} en el malecón`,
  soon: 'Busca tu emblema en la pizarra. Empieza pronto.',
  swap: 'Otro emblema',
  swapTitle: '¿Qué emblema quieres?',
  swapHow: 'Los que ves aquí están libres.',
  swapClose: 'Dejar el nuestro',
};

const briefing = {
  listen: 'Primero escucha. La hoja se abre cuando tu profe empieza el tiempo.',
  goals: 'Esto se tiene que cumplir',
};

const quiet = {
  title: 'Abierto en otra pestaña',
  sentence: 'Tu equipo sigue allí. Tu dibujo está a salvo.',
  here: 'Seguir aquí',
};

/** What a tablet says that has nothing to do now, and what to do about it. */
const resting = {
  paused: { title: 'Una pausa', sentence: 'Todo espera como está. El tiempo tampoco corre.' },
  removed: {
    title: 'Este equipo está fuera de la sala',
    sentence: 'Tus dibujos están guardados. Pregunta en la mesa de tu profe: allí puede volver tu equipo.',
  },
  freed: {
    title: 'Esta tableta descansa',
    sentence: 'Tu dibujo está guardado. Pregunta en la mesa de tu profe con qué tableta sigue tu equipo.',
  },
  moved: {
    title: 'Tu equipo está ahora en otra tableta',
    sentence: 'Allí está todo lo que has dibujado. Ya puedes guardar esta.',
  },
  anew: 'Entrar como equipo nuevo',
};

const things = (n: number): string =>
  n === 0 ? 'La línea está bien' : `${numbers.counted(n, 'cosa', 'cosas')} que mirar`;

const inkMarks = (n: number): string => numbers.counted(n, 'marca', 'marcas');

const building = {
  tools: 'Herramientas',
  tool: (tool: Tool): string => TOOLS[tool],
  /** What a tool does; where the lines are given, only to marks. */
  how: (tool: Tool, lines: boolean): string => (lines ? HOW[tool] : (HOW_WITH_MARKS[tool] ?? HOW[tool])),
  howInBoxes: 'Elige una marca y toca la línea. Los equipos ponen las marcas en los recuadros.',
  secondTap: 'Ahora toca donde acaba.',
  undo: 'Deshacer',
  redo: 'Rehacer',
  again: 'De nuevo',
  againDone: 'Todo está como al principio. Con «Deshacer» vuelve tu dibujo.',
  marks: 'Marcas',
  flip: 'Girar',
  rubOut: 'Borrar',
  rubPiece: 'Trozo',
  rubLine: 'Línea entera',
  rubWhat: 'Borrar un trozo o una línea entera',
  unknownWord: 'no está en la tabla',
  inks: 'Tintas',
  noBand: 'Sin banda',
  turn: 'Rotar',
  mirror: 'Espejo',
  copy: 'Copiar',
  free: 'Libre',
  freeHow: 'Nada se pega mientras lo mantienes. Tócalo para dejarlo así.',
  larger: 'Más grande',
  smaller: 'Más pequeño',
  wholeSheet: 'Hoja entera',
  fingersDraw: 'Dibujar otra vez con el dedo',
  sheet: (name: string) => `La hoja: ${name}`,
  notDone: (code: EditRefusalCode, most: number): string => NOT_DONE[code](most),
  caught: (why: CaughtWhy, berth: string, degrees: number): string | null => {
    if (why === 'berth') return `en el amarre ${berth}`;
    if (why !== 'angle') return CAUGHT[why];
    return degrees === 45 ? 'inclinada 45°' : degrees === 90 ? 'vertical' : 'horizontal';
  },
  bent: (how: 'straight' | 'quarter' | 'half'): string =>
    ({ straight: 'recta', quarter: 'un cuarto de círculo', half: 'medio círculo' })[how],
  things,
  inkAndMarks: (ink: string, marks: number) => `${ink} de línea · ${inkMarks(marks)}`,
  marksOnly: inkMarks,
  nextThing: 'Siguiente',
  oneOf: (n: number, of: number) => `${n} de ${of}`,
  close: 'Cerrar',
  mend: 'Arreglarlo',
  lookClosely: 'Mira bien aquí',
  mendAfter: (tries: number) =>
    `Después de ${numbers.some(tries, 'f', 'prueba tuya', 'pruebas tuyas')} se puede arreglar por ti.`,
  afterTry: 'Pruébalo antes. Luego esta página dice lo que ve.',
  tryIt: 'Probar',
  handIn: 'Entregar',
  goals: 'Objetivos',
  open: 'abierto',
  met: 'cumplido',
  timeLeft: (seconds: number): string =>
    seconds >= 60 ? `${Math.ceil(seconds / 60)} min` : `${Math.max(0, Math.ceil(seconds))} s`,
  timeOver: 'Se acabó el tiempo',
  timeOverNote: 'Aún puedes entregar tarde',
  lookHere: 'Mira la pizarra',
  lookHereNote: 'Tu dibujo espera aquí.',
  tooLarge: 'Este dibujo es demasiado grande para guardarlo o entregarlo. Quita algo.',
  away: 'Sin conexión. Sigue dibujando, no se pierde nada.',
};

const trying = {
  title: 'Probar',
  back: 'Volver al dibujo',
  play: 'Reproducir',
  pause: 'Pausa',
  restart: 'Otra vez',
  speed: 'Velocidad',
  times: (speed: number) => `${speed}×`,
  at: 'Tiempo del recorrido',
  seconds: (t: number, of: number) => `${numbers.fixed(t, 1)} de ${numbers.fixed(of, 1)} s`,
  pace: 'Paso',
  ending: 'Al final',
  now: 'El robot',
  driving: 'está en marcha',
  goals: 'Cómo queda',
  ways: 'Caminos posibles',
  way: (n: number, chance: string) => `Camino ${n}: ${chance}`,
  wayFrom: (n: number, from: string, chance: string) => `Camino ${n} desde ${from}: ${chance}`,
  chance: (probability: number) => `${numbers.short(probability * 20, 1)} de 20 robots`,
  luck: 'En un cruce sin marca el robot elige solo.',
  everyWay: 'Un objetivo se cumple solo si se cumple en todos los caminos.',
  decides: (ways: readonly number[]) =>
    ways.length === 0
      ? ''
      : `${numbers.plural(ways.length, 'El camino', 'Los caminos')} ${numbers.list(ways.map(String))} ${numbers.plural(ways.length, 'falla', 'fallan')} uno.`,
  acts: 'Una raya azul muestra dónde actúa una marca.',
  working: 'Calculando el recorrido',
  noRun: 'El robot no arranca. Su amarre necesita una línea debajo.',
  robot: (label: string) => `El robot recorre el dibujo: ${label}`,
};

const points = (n: number): string => numbers.counted(n, 'punto', 'puntos');

const handing = {
  title: '¿Entregar este dibujo?',
  scored: (must: string) => `Sus objetivos dan hasta 100 puntos. ${must}`,
  mustAll: 'El reto cuenta como hecho si se cumplen todos.',
  asItIs: 'Así está ahora:',
  best: 'Puedes entregar otra vez. Cuenta lo mejor.',
  late: 'El tiempo ha acabado, así que esta entrega llega tarde. Cuenta si lo dice tu profe.',
  yes: 'Entregar',
  no: 'Aún no',
  empty: 'Aún no hay nada en la hoja.',
  waiting: 'Espera para salir. Sale cuando vuelva la conexión.',
  sending: 'En camino',
  judging: 'Entregado. El robot lo está recorriendo.',
  unjudged: 'Está entregado, pero no se pudo mirar. Dilo a tu profe.',
  entries: 'Entregado',
  entriesTitle: 'Tus dibujos entregados',
  none: 'Aún no has entregado nada.',
  entry: (n: number) => `Dibujo ${n}`,
  points,
  best1: 'el mejor',
  late1: (taken: boolean): string => (taken ? 'tarde, cuenta' : 'tarde, aún no cuenta'),
  done: 'Reto hecho',
  notDone: 'Aún no está hecho',
  mended: 'Algo de este dibujo se arregló con ayuda.',
  takeUp: 'Seguir con este',
  takenUp: 'Está otra vez en tu hoja. Con «Deshacer» vuelve lo de antes.',
  close: 'Volver al dibujo',
};

const predicting = {
  questions: 'Preguntas',
  which: (n: number, of: number) => `Pregunta ${n} de ${of}`,
  before: 'Anterior',
  next: 'Siguiente',
  robots: 'Cuántos robots',
  fewer: 'Uno menos',
  more: 'Uno más',
  chart: 'Qué dicen las marcas',
  answered: (n: number, of: number) => `${n} de ${of} con respuesta`,
  away: 'Sin conexión. Sigue, tus respuestas se guardan aquí.',
  handInTitle: '¿Entregar estas respuestas?',
  scored: 'Cada respuesta buena cuenta igual, hasta 100 puntos en total.',
  empty: 'Aún no hay ninguna respuesta.',
  asked: 'Te vamos a preguntar',
  own: 'Tus mejores respuestas',
  entriesTitle: 'Tus respuestas entregadas',
  back: 'Volver a las preguntas',
};

const showing = {
  title: 'Mira la pizarra',
  own: 'Tu mejor dibujo',
  ownNone: 'Esta vez no has entregado nada. Tu dibujo está guardado.',
  points: (n: number) => `${points(n)} hasta ahora`,
};

const closing = {
  points,
  title: 'Bien hecho',
  robots: 'Lleva el robot a su amarre.',
  caps: 'Pon los tapones a los rotuladores.',
  tablet: 'Devuelve la tableta.',
};

export const tablet = {
  joining,
  waiting,
  briefing,
  quiet,
  resting,
  building,
  trying,
  predicting,
  playing,
  handing,
  notes,
  showing,
  closing,
};
