import type { LineLook, MarkLook, PaperName, PrintKind } from '../../wire/print.ts';
import { fitPaper } from './fit.ts';
import { numbers } from './numbers.ts';

const { capital } = numbers;

/** The poster of the chart. */
const chart = {
  title: 'Qué dicen las marcas',
  how: 'El robot lee primero la banda que encuentra primero. Las palabras están al lado por el que viene.',
  foot: (inks: readonly string[], kit: string) =>
    `${capital(inks.join(' · '))}. ${kit}. Las marcas que no están aquí no le dicen nada a este robot.`,
};

const WIDTHS = { least: 'mínimo', nominal: 'dibuja así', most: 'máximo' } as const;

const gauge = {
  title: 'Tarjetas de medida',
  how: 'Recortar por las líneas de trazos y por la muesca. Poner una tarjeta sobre el dibujo antes de que pase un robot.',
  width: (length: string, which: 'least' | 'nominal' | 'most') => `línea ${length}: ${WIDTHS[which]}`,
  band: (length: string) => `una banda, ${length} de largo`,
  plain: (length: string) => `${length} de línea lisa antes y después de una marca`,
  corner: ['vale la esquina', 'que llena la muesca', 'o es más abierta'],
};

const patch = {
  title: 'Parches de calibración',
  how: 'Calibrar cada robot donde va a conducir, con la luz de la clase y como diga la hoja del fabricante: sobre el parche oscuro, o sobre el parche oscuro y sobre el papel en blanco de al lado. Calibrar otra vez cuando cambie la luz.',
  paper: 'papel en blanco',
};

const strip = {
  title: 'Tira de prueba',
  how: 'Los colores de la impresora y de los rotuladores son distintos. Conviene pasar primero por esta tira: poner un robot en la flecha, al principio de la línea, y mirar si hace lo que está escrito. Si no, imprimir hojas con marcas vacías y pintarlas con los rotuladores que venían con los robots. La hoja está plana y pegada a 10 cm del borde de la mesa.',
  should: (does: string) => `debe hacer: ${does}`,
};

const slips = {
  columns: ['creemos', 'hizo', 'porque'],
  challenge: 'reto:',
};

const QUESTION_TITLES = {
  predict: '¿Qué hará el robot?',
  'two-travellers': 'Dos viajeros',
  mend: 'Encuentra el fallo y arréglalo',
} as const;

const questions = {
  title: (kind: keyof typeof QUESTION_TITLES): string => QUESTION_TITLES[kind],
  how: {
    predict: 'La imagen es más pequeña que la hoja. Decide con tu equipo y luego escribe.',
    'two-travellers':
      'Dos robots pasan por las mismas marcas, uno desde cada extremo. ¿Qué le dice cada marca a cada uno?',
    mend: 'En este dibujo el robot no hace lo que debe. Arréglalo en la imagen; cambia lo menos que puedas.',
  },
  mark: (number: number, ask: string) => `Marca ${number}: ${ask}`,
  choose: 'Elige entre:',
  should: 'El robot debe:',
  wrong: '¿Qué está mal y dónde?',
  mended: '¿Cómo lo has arreglado?',
  key: (title: string) => `Solución: ${title}`,
  keyNote:
    'Calculado por el motor. Conduce un modelo: un robot real puede hacer otra cosa, y entonces vale la pena buscar la razón.',
  robots: (n: number, of: number) => `${n} de ${of} robots`,
  found: 'Lo que dicen las reglas de dibujo del dibujo con fallo',
  missed: 'Objetivos que no cumple',
  sound: 'Un dibujo que vale',
  nothingFound: 'No se rompe ninguna regla de dibujo: las marcas dicen otra cosa de lo que se quería.',
};

const packs = {
  title: (word: string) => `Juego de hojas de la sala ${word}`,
  team: (name: string) => `Hojas del equipo ${name}`,
  contents: 'En este archivo',
  first: 'Antes de repartirlas',
  steps: [
    'Imprimir al 100 %, sin «ajustar a la página». La regla de cada hoja debe medir 100 mm; medio milímetro arriba o abajo vale.',
    'Calibrar los robots en el parche, con la luz de la propia sala.',
    'Pasar por la tira de prueba: los colores de impresora y rotuladores son distintos.',
    'Pegar las hojas planas a 10 cm del borde de la mesa; dejar secar la tinta antes de que pase un robot.',
    'Primero van las instrucciones del fabricante y las normas del centro.',
  ],
  lines: {
    chart: 'la tabla para la pared',
    patch: 'parches de calibración',
    strip: 'la tira de prueba',
    gauge: 'tarjetas de medida para recortar',
    teams: (n: number) =>
      `${numbers.counted(n, 'equipo', 'equipos')}: un dibujo o una hoja por la que conducir, y papeletas`,
    noTeams: 'aún no hay ningún equipo en la sala: va solo la hoja por la que conducir',
  },
};

const KINDS: Readonly<Record<PrintKind, string>> = {
  sheet: 'Hoja de un reto',
  drawing: 'El dibujo de un equipo',
  chart: 'Tabla para la pared',
  gauge: 'Tarjetas de medida',
  patch: 'Parches de calibración',
  strip: 'Tira de prueba',
  'timed-line': 'Línea con reloj',
  'timed-circle': 'Círculo con reloj',
  limits: 'Límites de los robots',
  slips: 'Papeletas',
  predict: 'Preguntas: predecir',
  'two-travellers': 'Preguntas: dos viajeros',
  mend: 'Preguntas: arreglar',
  supplies: 'Material',
  'lesson-plan': 'Plan de la clase',
  closing: 'Preguntas finales',
  evidence: 'Evidencias',
  picture: 'Imagen de la clase',
  pack: 'Hojas de un equipo',
  class: 'Hojas de la clase',
};

const KIND_NOTES: Readonly<Record<PrintKind, string>> = {
  sheet: 'A tamaño real, para que conduzcan los robots: amarres, puertas y líneas dadas.',
  drawing: 'Una entrega, o lo que hay ahora en la tableta, a tamaño real.',
  chart: 'Una fila por marca, con sus dos lados.',
  gauge: 'Ancho de línea, línea lisa, una banda y una esquina, para poner sobre un dibujo.',
  patch: 'Donde se calibran los robots, junto al papel en blanco.',
  strip:
    'Si los robots leen los colores de esta impresora. Conviene probarla antes de imprimir hojas en color.',
  'timed-line': '500 mm entre dos trazos a cada paso, para medir con reloj. En varias páginas, para pegar.',
  'timed-circle': 'Un círculo de radio conocido para medir con reloj.',
  limits: 'Esquinas cada vez más cerradas y bandas cada vez más cortas: lo que hacen todos los robots.',
  slips: 'Creemos · hizo · porque: cuatro o más en una hoja.',
  predict: 'Todo está puesto; los equipos escriben lo que va a pasar.',
  'two-travellers': 'Las mismas marcas, leídas desde los dos extremos.',
  mend: 'Un dibujo con un fallo, y una solución que dice qué está mal.',
  supplies: 'Lo que hace falta en las mesas, contado por equipos, con sus cuidados.',
  'lesson-plan': 'Fase por fase: qué hacer, qué decir y qué cuidar, también para quien sustituye.',
  closing:
    'Las últimas preguntas, sobre dibujos de esta clase, para marcar; las soluciones las saca el programa. Primero hay que hacerlas: solo entonces existen.',
  evidence:
    'Lo que han mostrado la clase y cada equipo, una página por equipo, con referencias a marcos publicados.',
  picture:
    'Con qué reglas de dibujo tropiezan los equipos, dónde fallaron los recorridos, puntos y tiempos: una página por reto.',
  pack: 'El dibujo del equipo, o la hoja si aún no hay nada dibujado, y papeletas.',
  class:
    'Cuidados, tabla, parches, tira de prueba, tarjetas de medida y las hojas de cada equipo, en un archivo.',
};

const LINES: Readonly<Record<LineLook, string>> = {
  ink: 'como líneas llenas',
  dots: 'como puntos para repasar',
};
const MARKS: Readonly<Record<MarkLook, string>> = {
  colour: 'en color',
  paint: 'vacías, para pintar',
};

/** The desk's and the tablet's part about paper. */
const page = {
  open: 'Papel',
  title: 'Al papel, a tamaño real',
  what: 'Qué imprimir',
  groups: {
    drive: 'Para conducir',
    fit: 'Para ajustar el kit',
    room: 'Para la sala',
    write: 'Para escribir',
    plan: 'Para preparar',
    all: 'Todo junto',
  },
  kind: (kind: PrintKind) => KINDS[kind],
  note: (kind: PrintKind) => KIND_NOTES[kind],
  paper: 'Papel',
  paperName: (paper: PaperName): string =>
    paper === 'Letter' ? 'Carta' : paper === 'Tabloid' ? 'Tabloide' : paper,
  challenge: 'Reto',
  playing: (title: string) => `${title} (en juego)`,
  team: 'Equipo',
  drawing: 'Dibujo',
  newest: 'lo más nuevo',
  lines: 'Líneas',
  line: (look: LineLook) => LINES[look],
  marks: 'Marcas',
  mark: (look: MarkLook) => MARKS[look],
  dotsNote: 'Con puntos las marcas van vacías: aún no hay línea sobre la que pintar colores.',
  key: 'Con la solución',
  pdf: 'Guardar como PDF',
  svg: 'Guardar como SVG',
  making: (done: number, of: number) =>
    of === 1 ? 'Creando el archivo' : `Creando el archivo: parte ${done} de ${of}`,
  stop: 'Parar',
  preview: 'Vista previa',
  previewOf: (page: number, of: number) => `Página ${page} de ${of}`,
  before: 'Página anterior',
  next: 'Página siguiente',
  looking: 'Dibujando la página',
  noTeams: 'Aún no hay ningún equipo en la sala. Cuando lo haya, se podrán imprimir sus dibujos.',
  scale:
    'Imprimir al 100 %, sin «ajustar a la página», y medir luego la regla de la hoja: debe medir 100 mm.',
  colours:
    'Los colores de impresora y rotuladores son distintos. Conviene imprimir primero la tira de prueba y pasar por ella; donde los robots no la lean, imprimir marcas vacías y pintarlas.',
  toStrip: 'Primero la tira de prueba',
};

const EDGES = { left: 'izquierdo', upper: 'superior' } as const;

/** What stands on printed pages, and what the pages say about printing. */
export const print = {
  measure: 'debe medir 100 mm: imprimir al 100 %',
  inksDiffer: 'Los colores impresos no son los de los rotuladores: probar antes la tira.',
  entry: (number: number) => `entrega ${number}`,
  about: (title: string) => `Va con la hoja «${title}»`,
  tile: (number: number, of: number, row: number, column: number) =>
    `Parte ${number} de ${of}: fila ${row}, columna ${column}`,
  joining: (left: boolean, above: boolean) => {
    const sides = [...(left ? [EDGES.left] : []), ...(above ? [EDGES.upper] : [])];
    const rest = 'poner cruz sobre cruz y pegar por detrás.';
    return sides.length === 0
      ? `Recortar las partes vecinas por los trazos de las esquinas, ${rest}`
      : `Recortar ${sides.length === 1 ? 'el borde' : 'los bordes'} ${sides.join(' y ')} por los trazos de las esquinas, ${rest}`;
  },
  chart,
  gauge,
  patch,
  strip,
  fit: fitPaper,
  slips,
  questions,
  packs,
  page,
};
