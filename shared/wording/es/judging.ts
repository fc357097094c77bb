import type {
  ChallengeProblemCode,
  DesignRefusal,
  DesignRefusalCode,
  DocumentPath,
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
};

const PROBLEMS: Readonly<Record<Exclude<ChallengeProblemCode, DesignRefusalCode>, string>> = {
  'finish-missing': 'Un objetivo o una salida pide un amarre del final, y la hoja no lo tiene.',
  'unknown-gate': 'Un objetivo nombra una puerta que la hoja no tiene.',
  'unknown-area': 'Un objetivo nombra una zona que la hoja no tiene.',
  'gates-missing': 'Un objetivo pide todas las puertas, y la hoja no tiene ninguna.',
  'keep-out-missing': 'Un objetivo pide no tocar zonas prohibidas, y la hoja no tiene ninguna.',
  'same-id-twice': 'Dos cosas tienen el mismo id.',
  'sheet-too-large': 'La hoja mide más de 4 m × 2 m.',
  'off-the-sheet': 'Algo queda fuera de la hoja.',
  'given-lines-missing': 'En «Completar» la hoja trae las líneas, y esta no tiene ninguna.',
  'begin-missing': 'En «Arreglar» el dibujo empieza con un fallo, y no hay dibujo con el que empezar.',
  'goals-missing': 'No hay ningún objetivo.',
  'asks-missing': 'En «Predecir» hay preguntas que responder, y no hay ninguna.',
  'start-missing': 'Esto trata de un robot que sale de un amarre del que no sale ninguno.',
  'window-empty': 'El plazo acaba antes de empezar.',
  'window-unfair':
    'El plazo es más estrecho que la diferencia de velocidad entre robots: conviene dar un 6 % a cada lado.',
  'too-much-ink': 'Hay más línea de la permitida.',
};

const DESIGN_PROBLEMS: Readonly<Record<DesignRefusalCode, string>> = {
  'mark-without-line': 'Una marca está en una línea que no existe.',
  'mark-past-end': 'Una marca está más allá del final de su línea.',
  'id-already-given': 'Una línea o marca dibujada tiene el id de una de la hoja.',
  'unknown-ink': 'Una marca tiene una banda de una tinta que el kit no tiene.',
  'too-many-pieces': 'Hay más rectas y curvas de las que caben.',
  'too-many-marks': 'Hay más marcas de las permitidas.',
  'too-much-line': 'Hay más línea de la que cabe en la hoja.',
  'too-many-meetings': 'Las líneas se cruzan o se tocan en más sitios de los permitidos.',
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
  challengeProblem: (code: ChallengeProblemCode): string => ({ ...DESIGN_PROBLEMS, ...PROBLEMS })[code],
  /** What is wrong with a value of a document, after its place: "es demasiado grande". */
  form: (code: string): string => FORM[code] ?? code,
  place,
  severity: { stops: 'para al robot', 'may-stop': 'puede parar al robot', untidy: 'poco limpio' },
};
