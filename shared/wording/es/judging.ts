import type {
  ChallengeProblemCode,
  DesignRefusal,
  DesignRefusalCode,
  DocumentPath,
  KitProblemCode,
} from '../../documents/refusal.ts';
import { numbers } from './numbers.ts';

type Sentences = {
  readonly [C in DesignRefusalCode]: (refusal: Extract<DesignRefusal, { code: C }>) => string;
};

const metres = (mm: number): string => numbers.fixed(mm / 1000, 1);

const REFUSALS: Sentences = {
  'mark-without-line': () => 'Una marca está en una línea que ya no existe. Quítala o llévala a una línea.',
  'mark-past-end': () => 'Una marca está más allá del final de su línea. Vuelve a ponerla en la línea.',
  'id-already-given': () =>
    'Una línea o marca dibujada se llama igual que una de la hoja. Dibújala otra vez.',
  'unknown-ink': (r) =>
    `Una marca tiene una banda de tinta ${r.ink}, y este kit no la tiene. Elige otra tinta.`,
  'too-many-pieces': (r) =>
    `El dibujo tiene ${r.measured} rectas y curvas, y caben ${r.allowed} como mucho. Quita algunas líneas.`,
  'too-many-marks': (r) => `Hay ${r.measured} marcas, y se permiten ${r.allowed} como mucho. Quita algunas.`,
  'too-much-line': (r) =>
    `Hay ${metres(r.measured)} m de línea, y en esta hoja caben ${metres(r.allowed)} m como mucho. Quita algunas líneas.`,
  'too-many-meetings': (r) =>
    `Las líneas se cruzan o se tocan en más de ${r.allowed} sitios. Quita algunas líneas.`,
  'finish-missing': () => 'Un robot sale de un amarre del final, y la hoja no lo tiene. Elige otro reto.',
  'start-missing': () =>
    'Un objetivo trata de un robot que sale de un amarre del que no sale ninguno. Elige otro reto.',
  'size-zero': () => 'Una medida o velocidad del robot es 0, así que no puede andar. Elige otro kit.',
};

const PROBLEMS: Readonly<Record<Exclude<ChallengeProblemCode, DesignRefusalCode | KitProblemCode>, string>> =
  {
    'unknown-gate': 'Un objetivo nombra una puerta que la hoja no tiene.',
    'unknown-area': 'Un objetivo nombra una zona que la hoja no tiene.',
    'gates-missing': 'Un objetivo pide todas las puertas, y la hoja no tiene ninguna.',
    'keep-out-missing': 'Un objetivo pide no tocar zonas prohibidas, y la hoja no tiene ninguna.',
    'same-id-twice': 'Dos cosas tienen el mismo id.',
    'sheet-too-large': 'La hoja mide más de 4 m × 2 m.',
    'off-the-sheet': 'Algo queda fuera de la hoja.',
    'box-too-small': 'Un recuadro para marcas es más pequeño que la marca más pequeña.',
    'given-lines-missing': 'En «Completar» la hoja trae las líneas, y esta no tiene ninguna.',
    'begin-missing': 'En «Arreglar» el dibujo empieza con un fallo, y no hay dibujo con el que empezar.',
    'goals-missing': 'No hay ningún objetivo.',
    'asks-missing': 'En «Predecir» hay preguntas que responder, y no hay ninguna.',
    'window-empty': 'El plazo acaba antes de empezar.',
    'window-unfair':
      'El plazo es más estrecho que la diferencia de velocidad entre robots: conviene dar un 6 % a cada lado.',
    'too-much-ink': 'Hay más línea de la permitida.',
  };

const DESIGN_PROBLEMS: Readonly<Record<Exclude<DesignRefusalCode, KitProblemCode>, string>> = {
  'mark-without-line': 'Una marca está en una línea que no existe.',
  'mark-past-end': 'Una marca está más allá del final de su línea.',
  'id-already-given': 'Una línea o marca dibujada tiene el id de una de la hoja.',
  'unknown-ink': 'Una marca tiene una banda de una tinta que el kit no tiene.',
  'too-many-pieces': 'Hay más rectas y curvas de las que caben.',
  'too-many-marks': 'Hay más marcas de las permitidas.',
  'too-much-line': 'Hay más línea de la que cabe en la hoja.',
  'too-many-meetings': 'Las líneas se cruzan o se tocan en más sitios de los permitidos.',
  'finish-missing': 'Un objetivo o una salida pide un amarre del final, y la hoja no lo tiene.',
  'start-missing': 'Esto trata de un robot que sale de un amarre del que no sale ninguno.',
};

const KIT_PROBLEMS: Readonly<Record<KitProblemCode, string>> = {
  'word-twice': 'La tabla dice dos veces qué significa esta palabra.',
  'reverse-without-meaning': 'Las mismas bandas leídas desde el otro lado no tienen significado en la tabla.',
  'equal-neighbours': 'Hay dos bandas de una misma tinta juntas, y este kit no las distingue.',
  'two-way-turns-back':
    'Esta palabra se lee igual desde los dos lados y hace dar la vuelta: el robot la encontraría una y otra vez.',
  'ink-not-in-kit': 'Una palabra de la tabla tiene una tinta que el kit no tiene.',
  'too-few-bands': 'Esta palabra tiene menos bandas de las que permite el kit.',
  'too-many-bands': 'Esta palabra tiene más bandas de las que permite el kit.',
  'ink-letter-twice': 'Dos tintas tienen la misma letra.',
  'colours-too-close': 'Este color se confunde fácilmente con otro del kit.',
  'size-zero': 'Esta medida o velocidad es 0, y tiene que ser mayor.',
  'out-of-order': 'Esto no puede ser menos que el número anterior.',
  'out-of-range': 'Este número no es posible aquí.',
};

/** Codes of the schemas and of values that are wrong in themselves. Others are said as they are. */
const FORM: Readonly<Record<string, string>> = {
  invalid_type: 'falta o es de otro tipo',
  invalid_value: 'no es ninguno de los valores posibles',
  invalid_union: 'no es ninguna de las formas posibles',
  invalid_format: 'está escrito de una forma que no vale aquí',
  too_big: 'es demasiado grande',
  too_small: 'es demasiado pequeño',
  unrecognized_keys: 'tiene entradas que no van ahí',
  'line-of-length-zero': 'tiene una línea con los dos extremos en el mismo punto',
  'too-many-pieces': 'tiene más rectas y curvas de las que caben',
  'same-id-twice': 'usa dos veces el mismo id',
};

/** `drawing.marks[3].line`; the document itself where the path is empty. */
function place(path: DocumentPath): string {
  const text = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`)).join('');
  return text === '' ? 'el documento' : text.replace(/^\./, '');
}

export const judging = {
  /** Why a drawing is not judged, and what to do. */
  refusal: (refusal: DesignRefusal): string =>
    (REFUSALS[refusal.code] as (r: DesignRefusal) => string)(refusal),
  /** What is wrong with a challenge, or with a kit. */
  challengeProblem: (code: ChallengeProblemCode): string =>
    ({ ...DESIGN_PROBLEMS, ...KIT_PROBLEMS, ...PROBLEMS })[code],
  /** What is wrong with a value of a document, after its place: "es demasiado grande". */
  form: (code: string): string => FORM[code] ?? code,
  place,
  severity: { stops: 'para al robot', 'may-stop': 'puede parar al robot', untidy: 'poco limpio' },
  stands: {
    outOf: (got: number, of: number) => `${got} de ${of}`,
    met: 'cumplido',
    notMet: 'sin cumplir',
    luck: 'al azar',
  },
};
