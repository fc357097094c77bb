import type { FindingVariant, RuleId } from '../../documents/verdict.ts';
import type { Said, Values } from '../en/finding-values.ts';
import { least, measured, most, percent, said } from './finding-values.ts';
import { of } from './names.ts';
import { numbers } from './numbers.ts';

const times = (ratio: number, places: 0 | 1 | 2 = 1): string => {
  const said = numbers.short(ratio, places);
  return `${said} ${said === '1' ? 'vez' : 'veces'}`;
};

/** What the plain line beside a mark comes up against. */
const BESIDE: Readonly<Partial<Record<FindingVariant, string>>> = {
  start: 'el amarre',
  mark: 'la otra marca',
  junction: 'el cruce',
  corner: 'la esquina',
  curve: 'la curva',
  end: 'el final de la línea',
};
const barrier = (v: Values): string => BESIDE[v.variant ?? 'end'] ?? 'lo que sigue';

function beforeMark(v: Values): Said {
  if (v.variant === 'mark') {
    return said(
      'Marcas muy juntas',
      measured(v),
      `El robot puede no ver una: deja ${least(v)} de línea lisa entre dos marcas.`,
    );
  }
  return said(
    'Poca línea antes',
    measured(v),
    `El robot puede no ver esta marca: deja ${least(v)} de línea recta después ${of(barrier(v))}.`,
  );
}

const OVER: Readonly<Partial<Record<FindingVariant, string>>> = {
  junction: 'Marca en un cruce',
  corner: 'Marca en una esquina',
  end: 'Marca tras el final',
};

const NO_WAY: Readonly<Partial<Record<FindingVariant, string>>> = {
  'no-left': 'Nada a la izquierda',
  'no-straight': 'Nada de frente',
  'no-right': 'Nada a la derecha',
};

/** What is said of marks and their bands. */
export const MARKS = {
  'R-before-mark': beforeMark,
  'R-after-mark': (v) =>
    said(
      'Poca línea después',
      measured(v),
      `La marca puede actuar tarde: deja ${least(v)} de línea antes ${of(barrier(v))}.`,
    ),
  'R-band-count': (v) =>
    v.variant === 'few'
      ? said(
          'Faltan bandas',
          String(v.measured),
          `Para el robot no es una marca: una marca tiene al menos ${numbers.some(v.allowed, 'f', 'banda', 'bandas')}.`,
        )
      : said(
          'Sobran bandas',
          String(v.measured),
          `Para el robot no es una marca: una marca tiene como mucho ${numbers.some(v.allowed, 'f', 'banda', 'bandas')}.`,
        ),
  'R-band-length': (v) =>
    v.variant === 'short'
      ? said('Banda muy corta', measured(v), `El robot puede no verla: una banda mide ${least(v)}.`)
      : said('Banda muy larga', measured(v), `El robot puede creer que son dos: una banda mide ${most(v)}.`),
  'R-band-equality': (v) =>
    said(
      'Bandas desiguales',
      percent(v.measured),
      `El robot puede leer mal la marca: haz las bandas casi iguales. Pueden variar un ${percent(v.allowed)}.`,
    ),
  'R-band-gap': (v) =>
    v.variant === 'overlap'
      ? said(
          'Una banda pisa otra',
          measured(v),
          `Dos tintas juntas parecen otra banda: pueden pisarse ${most(v)}.`,
        )
      : said(
          'Blanco entre bandas',
          measured(v),
          `El robot puede creer que la marca ya acabó: deja ${most(v)} de blanco.`,
        ),
  'R-ink-darkness': (v) =>
    said(
      'Tinta oscura',
      numbers.beside(v.measured, v.allowed, times),
      `El robot puede creer que es línea: una tinta es al menos ${times(v.allowed)} más clara que la línea.`,
    ),
  'R-unknown-mark': (v) =>
    v.variant === 'single-ink'
      ? said(
          'Una sola tinta',
          measured(v),
          `No es marca ni línea de color: una línea de color mide ${least(v)}.`,
        )
      : {
          title: 'Marca desconocida',
          sentence: 'Estas bandas no están en la tabla: el robot sigue como si no hubiera nada.',
        },
  'R-mark-on-curve': (v) =>
    said(
      'Marca en una curva',
      measured(v),
      `El robot puede leerla mal: ponla en línea recta o en una curva con un radio de ${least(v)}.`,
    ),
  'R-mark-on-junction': (v) => ({
    title: OVER[v.variant ?? 'junction'] ?? 'Marca en un cruce',
    sentence: 'Ahí el robot no puede leerla: una marca pide línea a los dos lados.',
  }),
  'R-missing-arm': (v) => ({
    title: NO_WAY[v.variant ?? 'no-straight'] ?? 'Ese camino no existe',
    sentence: 'El próximo cruce no tiene ese camino: el robot sigue como si no hubiera marca.',
  }),
} satisfies Partial<{ readonly [Rule in RuleId]: (values: Values) => Said }>;
