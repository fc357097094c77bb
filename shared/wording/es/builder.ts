import type { Variant } from '../../documents/challenge.ts';
import type { Difficulty, FreshMarks, FreshTopic } from '../../documents/fresh.ts';
import type { Misread, Misreading } from '../../documents/misread.ts';
import type { Ask } from '../../documents/question.ts';
import type { Units } from '../../documents/values.ts';
import type { PlaceKind } from '../en/builder.ts';
import { wish } from './builder-wishes.ts';
import { numbers } from './numbers.ts';

/** Para docentes: construir un reto propio. */

const marks = (n: number): string => numbers.some(n, 'f', 'marca', 'marcas');

const PLACES: Readonly<Record<PlaceKind, string>> = {
  start: 'amarre de salida',
  finish: 'amarre final',
  gate: 'puerta',
  area: 'zona',
  'keep-out': 'zona prohibida',
  box: 'recuadro para marcas',
};

const cornerOf = (kind: PlaceKind, n: number): string =>
  kind === 'gate' ? `extremo ${n}, ` : kind === 'area' || kind === 'keep-out' ? `esquina ${n}, ` : '';

const places = {
  title: 'La hoja',
  paper: 'Papel',
  otherPaper: 'otro tamaño',
  width: 'Ancho',
  height: 'Alto',
  listed: 'Amarres, puertas, zonas y recuadros',
  how: 'Se arrastran en la hoja, o se elige uno y se ponen sus números. En la hoja las flechas mueven 5 mm; con Mayúsculas, 1 mm.',
  picture: 'La hoja que se construye',
  kind: (kind: PlaceKind): string => PLACES[kind],
  name: 'Nombre',
  across: (kind: PlaceKind, n: number): string => numbers.capital(`${cornerOf(kind, n)}desde la izquierda`),
  down: (kind: PlaceKind, n: number): string => numbers.capital(`${cornerOf(kind, n)}desde arriba`),
  heading: 'El robot mira a',
  reach: 'Se alcanza a menos de',
  startOnly: 'De aquí solo salen robots',
  boxWidth: 'Ancho del recuadro',
  boxHeight: 'Alto del recuadro',
  boxes: 'Si la hoja tiene recuadros, los equipos solo ponen marcas dentro de ellos.',
  moreCorners: 'Una esquina más',
  lessCorners: 'Una esquina menos',
  remove: 'Quitar de la hoja',
  handle: (name: string, part: 'all' | 'heading' | 'corner', n: number): string =>
    part === 'all' ? `Mover ${name}` : part === 'heading' ? `Girar ${name}` : `Esquina ${n} de ${name}`,
};

const lines = {
  title: 'Líneas y marcas',
  which: 'Qué se dibuja',
  layer: (layer: 'given' | 'begin' | 'own'): string =>
    ({ given: 'Dado para todos', begin: 'El fallo por arreglar', own: 'La solución propia' })[layer],
  note: (layer: 'given' | 'begin' | 'own'): string =>
    ({
      given: 'Lo que cada equipo encuentra en su hoja.',
      begin: 'Con lo que empieza el dibujo de cada equipo.',
      own: 'Los equipos no lo ven nunca. Muestra que el reto se puede cumplir, y a qué coste.',
    })[layer],
  sheet: 'La hoja para dibujar',
};

const goals = {
  title: 'Objetivos',
  none: 'Todavía no hay objetivos. Se empieza añadiendo uno.',
  add: 'Añadir un objetivo',
  open: (id: string): string => `Cambiar el objetivo ${id}`,
  shut: 'Listo',
  remove: 'Quitar',
  removeThis: (id: string): string => `Quitar el objetivo ${id}`,
  must: 'obligatorio',
  weight: 'Peso',
  whose: 'Para el robot',
  who: (who: 'both' | 'start' | 'finish'): string =>
    ({ both: 'de cualquier amarre', start: 'de la salida', finish: 'del final' })[who],
};

const asking = {
  title: 'Preguntas',
  none: 'Todavía no hay preguntas. Se empieza añadiendo una.',
  add: 'Añadir una pregunta',
  what: 'Preguntar',
  kind: (kind: Ask['kind']): string =>
    ({
      end: 'dónde acaba',
      marks: 'qué dice cada marca',
      pace: 'cómo pasa por una zona',
      'how-many': 'cuántos robots llegan',
    })[kind],
  where: 'Dónde',
  robots: 'De cuántos robots',
  remove: 'Quitar',
  removeThis: (n: number): string => `Quitar la pregunta ${n}`,
};

const rules = {
  title: 'Cómo se juega',
  sentence: 'La frase que leen los niños',
  fromGoals: 'Escribirla con los objetivos',
  play: 'Forma de jugar',
  time: 'Tiempo de un recorrido',
  marks: 'Marcas como mucho',
  ink: 'Línea como mucho',
  starts: 'Los robots salen',
  from: (who: 'both' | 'start' | 'finish'): string =>
    ({ both: 'de los dos amarres', start: 'de la salida', finish: 'del final' })[who],
  weather: 'Tiempo',
  variants: 'Para mesas vecinas',
  variantsNote: 'Si la clase recibe hojas variadas, cada segundo y tercer amarre recibe estas.',
  variant: (variant: Variant): string => (variant === 'mirrored' ? 'en espejo' : 'girada'),
  noVariant: 'Aquí la tabla no puede decir izquierda por derecha, así que la hoja no va en espejo.',
  mirrored: 'Frase de la hoja en espejo, si habla de izquierda o derecha',
  notes: 'Para quien lo enseña',
};

const MISREADINGS: Readonly<Record<Misreading, string>> = {
  'sides-swapped': 'Quien cree que cada marca dice lo que dice desde el otro lado',
  'acts-at-once': 'Quien cree que una marca actúa donde está',
  'ink-mistaken': 'Quien confunde una tinta con otra',
};

const found = {
  title: '¿Se puede cumplir?',
  notReady: 'Todavía no se puede jugar:',
  goal: (n: number): string => `Objetivo ${n}:`,
  looking: 'Buscando',
  stillLooking: 'Sigue buscando',
  stop: 'Parar la búsqueda',
  stopped: 'La búsqueda se ha parado.',
  goOn: 'Buscar otra vez',
  met: (count: number): string =>
    count === 0 ? 'Se cumple sin dibujar nada.' : `Se puede cumplir, con ${marks(count)}.`,
  metByInk: (ink: string, count: number): string =>
    count === 0
      ? `Se puede cumplir, con ${ink} de línea.`
      : `Se puede cumplir, con ${ink} de línea y ${marks(count)}.`,
  ownMeets: 'La solución propia lo cumple.',
  ownUnsteady: 'La solución propia lo cumple, pero no con 19 de 20 robots.',
  ownFails: 'La solución propia no lo cumple.',
  cannot: 'No se puede cumplir.',
  open: (searched: string): string =>
    `No se halló ninguno entre ${searched} dibujos probados. Eso no demuestra nada.`,
  needsOwn:
    'Donde los equipos dibujan líneas, solo una solución propia muestra que se puede cumplir. Se dibuja en “Líneas y marcas”.',
  lookLonger: 'Buscar más tiempo',
  asks: 'No se dibuja nada: los equipos responden preguntas.',
  take: 'Usar este dibujo como solución propia',
  drawing: 'El dibujo más barato que se halló',
  hard: 'Qué dificultad tiene',
  score: (score: number): string => `Dificultad ${numbers.short(score, 0)}`,
  how: 'Dos por cada marca, uno por cada lectura que depende del lado, uno si sobra menos de un punto.',
  counts: ({ marks: count, sided }: Difficulty): string =>
    `${numbers.capital(marks(count))}; ${
      sided === 0 ? 'ninguna se lee' : numbers.some(sided, 'f', 'se lee', 'se leen')
    } de otro modo desde el otro lado.`,
  slack: ({ slack }: Difficulty): string =>
    `Donde menos sobra, sobran ${numbers.short(slack, 1)} puntos (un punto: 1 cm, 1 s o 5 %).`,
  searched: ({ searched }: Difficulty): string =>
    `La búsqueda condujo ${numbers.short(searched, 0)} dibujos.`,
  mistakes: '¿Se notan los errores?',
  misreading: (misreading: Misreading, inks?: readonly [string, string]): string =>
    inks ? `Quien toma ${inks[0]} por ${inks[1]}` : MISREADINGS[misreading],
  misread: ({ design, met }: Misread): string => {
    if (!design) return 'no halla ningún dibujo.';
    return met
      ? 'dibuja esto, y sale bien igualmente: el error no se nota.'
      : 'dibuja esto, y sale mal: el error se nota.';
  },
};

const fresh = {
  title: 'Un reto nuevo',
  open: 'Uno nuevo',
  note: 'Una hoja nueva con líneas dadas. Se resuelve con ese número justo de marcas y nada queda al azar.',
  topic: 'Sobre',
  about: (topic: FreshTopic): string =>
    ({
      park: 'estacionar',
      pace: 'el paso',
      junction: 'cruces que deciden',
      crossing: 'cruces rectos',
      'turn-back': 'media vuelta',
    })[topic],
  marks: 'Dificultad',
  hard: (count: FreshMarks): string => `${{ 1: 'fácil', 2: 'media', 3: 'difícil' }[count]} (${marks(count)})`,
  seed: 'Número de la hoja',
  seedNote: 'El mismo número da otra vez la misma hoja.',
  make: 'Hacerlo',
  making: 'Haciéndolo',
  stop: 'Parar',
  none: 'Ninguno salió bien. Se puede probar otro número u otro tema; quizá a la tabla le falta lo necesario.',
};

const own = {
  title: 'Retos propios',
  note: 'Se guardan en este servidor para esta mesa, para todas sus salas.',
  none: 'Todavía no hay ninguno. Se puede hacer uno, copiar uno listo o leer un archivo.',
  loading: 'Buscando los retos propios',
  make: 'Hacer un reto',
  change: 'Cambiarlo',
  copy: 'Copiar y cambiar',
  save: 'Guardar como archivo',
  read: 'Leer un archivo',
  erase: 'Borrarlo',
  erased: (title: string): string => `“${title}” se ha borrado.`,
  yours: 'propio',
  notReady: 'No se puede jugar todavía: falta algo.',
  notAFile: 'Este archivo no se pudo leer como reto. Hay que elegir uno guardado con “Guardar como archivo”.',
  badValue: (place: string, problem: string): string =>
    `Este archivo de reto tiene un error: ${place} ${problem}.`,
  copyOf: (title: string): string => `${title}, copia`,
};

export const builder = {
  wish,
  places,
  lines,
  goals,
  asking,
  rules,
  found,
  fresh,
  own,
  back: 'Volver a la mesa',
  unit: (units: Units): string => (units === 'in' ? 'pulg' : units),
  name: 'Nombre del reto',
  undo: 'Deshacer',
  redo: 'Rehacer',
  parts: 'Qué se construye',
  saved: 'guardado',
  saving: 'guardando',
  notSaved: 'Aún sin guardar; este navegador lo conserva mientras tanto.',
  loading: 'Buscando el reto',
};
