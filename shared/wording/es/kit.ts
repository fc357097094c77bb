import type { ConventionName, KitSection, SightName } from '../en/kit.ts';
import { fields, tolerances } from './kit-fields.ts';
import { rules } from './kit-rules.ts';
import { library } from './library.ts';
import { numbers } from './numbers.ts';

const { counted } = numbers;

const SECTIONS: Readonly<Record<KitSection, string>> = {
  robot: 'Robot',
  paces: 'Pasos',
  inks: 'Tintas',
  chart: 'Tabla',
  rules: 'Reglas de dibujo',
};

const SIGHTS: Readonly<Record<SightName, string>> = {
  normal: 'vista normal',
  protan: 'sin conos rojos',
  deutan: 'sin conos verdes',
  tritan: 'sin conos azules',
};

const CONVENTIONS: Readonly<Record<ConventionName, string>> = {
  linear: 'en luz',
  gamma: 'en valores de pantalla',
};

const lookOf = (sight: SightName, convention: ConventionName): string =>
  sight === 'normal' ? SIGHTS[sight] : `${SIGHTS[sight]}, ${CONVENTIONS[convention]}`;

const shelf = {
  title: 'Kit',
  first:
    'Lo que tiene la clase: robots, rotuladores y la tabla de marcas. Lo que vino con los robots dice sus medidas y velocidades; una regla dice el resto.',
  loading: 'Buscando kits',
  none: 'Aún no hay kit propio. Se puede copiar el de demostración y cambiarlo, empezar uno nuevo o abrir un archivo.',
  notKept:
    'Este enlace es para una sola sala. Aquí los kits se pueden cambiar, usar y guardar como archivo, pero no quedan para otras salas.',
  demo: 'viene con el programa',
  saved: (when: string) => `guardado ${when}`,
  sound: 'supera sus comprobaciones',
  draft: (n: number) => `borrador: ${counted(n, 'cosa', 'cosas')} por arreglar`,
  used: 'esta sala juega con él',
  usedEarlier: 'esta sala juega con una versión anterior',
  nowPlays: (name: string) => `Esta sala juega con «${name}».`,
  fromNext: 'Un reto ya elegido conserva el kit con el que se eligió.',
  use: 'Usar en esta sala',
  chooseThis: (name: string) => `Usar «${name}» en esta sala`,
  edit: 'Cambiar',
  editThis: (name: string) => `Cambiar «${name}»`,
  copy: 'Copiar',
  copyThis: (name: string) => `Copiar «${name}»`,
  copyOf: (name: string) => `Copia de ${name}`,
  file: 'Guardar como archivo',
  fileThis: (name: string) => `Guardar «${name}» como archivo`,
  remove: 'Quitar',
  removeThis: (name: string) => `Quitar «${name}»`,
  removed: (name: string) => `«${name}» ya no está en la lista. Las salas que lo usan lo conservan.`,
  earlier: (n: number) => `Versiones anteriores (${n})`,
  lookAt: (when: string) => `Seguir desde ${when}`,
  make: 'Kit nuevo',
  newName: 'Kit nuevo',
  open: 'Abrir un archivo de kit',
  notAKit:
    'Este archivo no se ha podido leer como kit. Hay que elegir uno guardado con «Guardar como archivo».',
  tooLarge:
    'Este archivo es demasiado grande para un kit. Hay que elegir uno guardado con «Guardar como archivo».',
  unsaved: (name: string) => `«${name}» tiene cambios sin guardar.`,
  goOn: 'Seguir con ellos',
  throwAway: 'Descartarlos',
  thrownAway: (name: string) => `Los cambios de «${name}» se han descartado.`,
  challenges: (playable: number, of: number) => `Se puede jugar a ${playable} de ${of} retos preparados`,
  standing: library.standing,
};

const editor = {
  name: 'Nombre del kit',
  back: 'Volver a los kits',
  save: 'Guardar',
  saving: 'Guardando',
  saved: 'Guardado.',
  undo: 'Deshacer',
  redo: 'Rehacer',
  sections: 'Partes de este kit',
  section: (section: KitSection): string => SECTIONS[section],
  problems: (n: number) => counted(n, 'problema', 'problemas'),
  draft: (n: number) =>
    `${counted(n, 'cosa impide', 'cosas impiden')} que una sala juegue con este kit. Se puede guardar como borrador.`,
  sound: 'Este kit supera sus comprobaciones.',
  between: (least: string, most: string) => `Un número de ${least} a ${most}. Hasta entonces vale el último.`,
};

const inks = {
  line: 'Línea',
  paper: 'Papel',
  letter: 'Letra',
  letterOf: (n: number) => `Letra de la tinta ${n}`,
  name: 'Nombre',
  colour: 'Color',
  colourOf: (what: string) => `Color: ${what}`,
  codeOf: (what: string) => `Código de color: ${what}`,
  codeHow: 'Un color se escribe con # y seis cifras de 0 a F. Hasta entonces vale el último.',
  hatch: 'Trama',
  hatches: { diagonal: 'inclinada', cross: 'vertical', dots: 'puntos', along: 'a lo largo' },
  add: 'Otra tinta',
  newName: 'tinta nueva',
  removeThis: (letter: string) => `Quitar la tinta ${letter}`,
  equal: 'Puede haber dos bandas juntas de una misma tinta',
  equalNote: 'Solo los robots que miden el largo de una banda distinguen dos de una.',
  table: 'Cuánto se diferencian los colores',
  how: 'CIEDE2000; desde 20, más o menos, nadie toma uno por otro. La vista sin algún cono se imita por completo con matrices publicadas, que se aplican a la luz o a los valores de pantalla: no hay acuerdo sobre cuál es lo correcto, y por eso están las dos.',
  pair: 'Dos colores',
  sight: (sight: SightName): string => SIGHTS[sight],
  look: lookOf,
  convention: (convention: ConventionName): string => CONVENTIONS[convention],
  least: (
    one: string,
    two: string,
    difference: number,
    sight: SightName,
    convention: ConventionName,
  ): string =>
    `Los más cercanos: ${one} y ${two}, ${numbers.fixed(difference, 1)}, ${lookOf(sight, convention)}.`,
  close: 'se confunden',
};

const chart = {
  how: 'Una fila por marca: sus bandas con sus letras, qué significa y qué significa desde el otro lado. Intro pasa a la fila siguiente; en un significado basta una letra o dos para encontrarlo.',
  keys: 'Una marca vacía quita su fila. Arriba y abajo cambian el significado.',
  mark: 'Marca',
  markOf: (row: number) => `Marca ${row}`,
  picture: 'Bandas',
  meaning: 'Significa',
  meaningOf: (row: number) => `Significado de la marca ${row}`,
  back: 'Desde el otro lado',
  backOf: (row: number) => `Significado de la marca ${row} desde el otro lado`,
  same: 'lo mismo',
  noMeaning: 'aún sin significado',
  secondsOf: (row: number) => `Segundos de la marca ${row}`,
  secondsBackOf: (row: number) => `Segundos de la marca ${row} desde el otro lado`,
  lasting: (name: string) => `${name} un rato`,
  removeThis: (word: string) => `Quitar la marca ${word}`,
  count: (marks: number, words: number) =>
    `${counted(marks, 'marca', 'marcas')}, ${counted(words, 'palabra', 'palabras')}`,
  none: 'Aún no hay marcas. Se puede escribir la primera.',
  csv: 'Guardar como CSV',
  json: 'Guardar como JSON',
  open: 'Abrir un archivo de tabla',
  opened: (marks: number) =>
    `Tabla leída: ${counted(marks, 'marca', 'marcas')}. Deshacer recupera la de antes.`,
  trouble: {
    'no-chart': () => 'En este archivo no hay marcas. Hay que elegir un CSV o JSON guardado aquí.',
    'too-long': ({ most }: { readonly most: number }) =>
      `En una tabla caben ${most} palabras como mucho. Hay que quitar filas del archivo.`,
    'no-word': ({ row, cell }: { readonly row: number; readonly cell: string }) =>
      `Línea ${row}: «${cell}» no es una marca. Una marca tiene de una a ocho letras de tintas.`,
    'no-meaning': ({ row, cell }: { readonly row: number; readonly cell: string }) =>
      `Línea ${row}: «${cell}» no es un significado que conozcan los robots. Hay que escribirlo como en la tabla de esta página.`,
  },
};

export const kit = { shelf, editor, fields, tolerances, rules, inks, chart };
