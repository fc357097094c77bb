import { numbersIn } from '../numbers.ts';

/** How a noun counts: "un tramo", "una marca". */
export type Gender = 'm' | 'f';

const WORDS = ['cero', 'uno', 'dos', 'tres', 'cuatro', 'cinco', 'seis'] as const;
const ONE: Readonly<Record<Gender, string>> = { m: 'un', f: 'una' };
const NONE: Readonly<Record<Gender, string>> = { m: 'ningún', f: 'ninguna' };

const usual = numbersIn({ region: 'es-ES', inch: 'pulgadas' });

/** Small counts as words, as they are said aloud, alone: "uno", "dos", "12". */
const words = (n: number): string => WORDS[n] ?? String(n);

/** A count before its noun, as it is said aloud: "una marca", "dos marcas", "12 marcas". */
const some = (n: number, gender: Gender, one: string, many: string): string => {
  if (n === 0) return `${NONE[gender]} ${one}`;
  return n === 1 ? `${ONE[gender]} ${one}` : `${words(n)} ${many}`;
};

/** "falta 1 cm", "faltan 7,7 cm", "falta una": the verb goes with what is lacking. */
const lacking = (what: string): string => `${/^(1|un|una|uno)( |$)/.test(what) ? 'falta' : 'faltan'} ${what}`;

export const numbers = { ...usual, words, some, lacking };
