import type {
  ClosingAnswer,
  ClosingAsk,
  ClosingChoice,
  ClosingMistake,
  RealTrouble,
} from '../../documents/closing-check.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { numbers } from './numbers.ts';
import { questions } from './questions.ts';
import { reasons } from './reasons.ts';

const { capital, counted, words } = numbers;

/** What teachers read of what a wrong answer may come from. */
const MISTAKES: Readonly<Record<ClosingMistake, string>> = {
  'sees-the-sheet': 'el robot tendría que ver toda la hoja',
  'knows-the-wish': 'el robot tendría que conocer el objetivo',
  'acts-at-once': 'la marca tendría que actuar donde está',
  'same-from-both-sides': 'un lado se tomó por el otro',
  'first-colour-counts': 'solo se miró el primer color',
  'shortest-way': 'el robot tendría que buscar el camino más corto',
  'got-tired': 'no se buscó nada en el papel',
  'one-ink-mistaken': 'una tinta se tomó por otra',
};

const REAL: Readonly<Record<RealTrouble, string>> = {
  lost: 'Un robot real perdió la línea.',
  'other-branch': 'Un robot real tomó otro camino.',
};
const whyAsked = (real: RealTrouble | undefined): string =>
  `${real ? REAL[real] : 'Así aún no sale.'} ¿Por qué?`;
const whySaid = (real: RealTrouble | undefined): string =>
  real ? `${REAL[real]} La razón:` : 'Aún no sale, porque:';

/** The last questions of a lesson, as children read them. */
const check = {
  title: (n: number): string => (n === 1 ? 'Una última pregunta' : `${capital(words(n))} últimas preguntas`),
  which: (n: number, of: number): string => `Pregunta ${n} de ${of}`,
  how: 'Toca una respuesta. La puedes cambiar hasta el final.',
  open: (n: number): string => (n === 1 ? 'Falta 1 pregunta' : `Faltan ${n} preguntas`),
  done: 'Todo contestado. Aún lo puedes cambiar.',
  sheet: (sentence: string): string => `Un dibujo de tu clase. Debería: ${sentence}`,
  ask: (ask: ClosingAsk, sheet: Sheet): string =>
    ask.kind === 'why' ? whyAsked(ask.real) : questions.ask({ id: '', ...ask }, sheet),
  should: (sentence: string): string => `Lo que se pide: ${sentence}`,
  choice: (choice: ClosingChoice, sheet: Sheet): string =>
    choice.kind === 'reason' ? reasons.said(choice.reason) : questions.choice(choice, sheet),
  ended: 'Las respuestas',
  said: (answer: string): string => `Dijiste: ${answer}`,
  nothingSaid: 'Aquí no diste respuesta.',
  right: (answer: string): string => `Es: ${answer}`,
  yes: 'Sí, está bien.',
  /** Why the right answer is right. */
  because: (ask: ClosingAsk, { right }: ClosingAnswer, inks: readonly string[]): string => {
    if (ask.kind === 'mark') return `Encuentra ${numbers.list(inks)}, por este orden.`;
    if (ask.kind === 'why') return ask.at ? 'Mira el círculo: allí se ve.' : 'Lee otra vez lo que se pide.';
    return reasons.said(right === 'chance' ? 'left-to-luck' : 'all-as-drawn');
  },
  /** Why a wrong one can't be. */
  but: (mistake: ClosingMistake): string =>
    mistake === 'one-ink-mistaken' ? 'Mira cada color: uno de ellos es otro.' : reasons.but(mistake),
  onward: 'Seguir',
  again: 'Ver otra vez las preguntas',
};

/** The desk's part. */
const desk = {
  title: 'Preguntas finales',
  note: 'Preguntas que el programa saca de los dibujos de esta clase, sin decir de quién son. Las respuestas falsas vienen de errores conocidos. Una vez hechas, también se pueden imprimir.',
  count: 'Preguntas, como mucho',
  start: 'Preguntar en las tabletas',
  again: 'Hacer otras preguntas',
  making: 'Buscando preguntas',
  answered: (n: number, of: number): string =>
    `${n} de ${counted(of, 'equipo ha', 'equipos han')} contestado todo`,
  ofTeam: (n: number, of: number): string => `${n} de ${of}`,
  end: 'Terminar y decir lo correcto',
  paper: 'Contestado en papel',
  paperTeam: 'Equipo',
  paperHow: 'Tocar lo que el equipo marcó, también después de terminar. El programa lo corrige.',
  toPaper: 'Preguntas y soluciones (PDF)',
  right: (n: number, of: number): string =>
    of === 0 ? 'Nadie contestó' : `${n} de ${counted(of, 'equipo', 'equipos')} bien`,
  mistake: (mistake: ClosingMistake, n: number): string =>
    `${MISTAKES[mistake]}: ${counted(n, 'equipo', 'equipos')}`,
  show: 'Mostrar el resultado en la pizarra, sin equipos',
};

/** The board's part. */
const board = {
  asked: 'Últimas preguntas',
  /** A few words for a question, that the right answer follows. */
  short: (ask: ClosingAsk, sheet: Sheet): string =>
    ask.kind === 'why' ? whySaid(ask.real) : questions.short({ id: '', ...ask }, sheet),
  open: 'Están en las tabletas.',
  result: 'Lo que sabemos',
  right: (n: number, of: number): string => `${n} de ${counted(of, 'equipo', 'equipos')}`,
};

export const closing = { check, desk, board };
