import type { EvidenceKind } from '../../evidence/evidence.ts';
import type { Standard } from '../../evidence/frameworks.ts';
import type { Shown } from '../../evidence/record.ts';
import { numbers } from './numbers.ts';

const { capital, counted, plural } = numbers;

const COUNTS = [
  'ninguno',
  'uno',
  'dos',
  'tres',
  'cuatro',
  'cinco',
  'seis',
  'siete',
  'ocho',
  'nueve',
  'diez',
  'once',
  'doce',
] as const;
const inWords = (n: number): string => COUNTS[n] ?? String(n);
const ofTeams = (of: number): string => (of === 1 ? 'un equipo' : `${inWords(of)} equipos`);

/** What a class's page says first: "Siete de diez equipos leyeron bien una marca desde los dos lados." */
function headline({ kind, shown, of }: { readonly kind: EvidenceKind } & Shown): string {
  if (of === 0) return 'Todavía no se ha entregado nada.';
  return `${capital(inWords(shown))} de ${ofTeams(of)} ${did(kind, shown)}.`;
}

/** What one team, or several, have done that have shown it. */
const DID: Readonly<Record<EvidenceKind, readonly [string, string]>> = {
  met: ['cumplió un reto', 'cumplieron un reto'],
  'met-first': ['cumplió un reto a la primera', 'cumplieron un reto a la primera'],
  mended: ['arregló lo hallado y cumplió el reto', 'arreglaron lo hallado y cumplieron el reto'],
  helped: ['cumplió un reto después de «Arreglarlo»', 'cumplieron un reto después de «Arreglarlo»'],
  'both-sides': ['leyó bien una marca desde los dos lados', 'leyeron bien una marca desde los dos lados'],
  forecasts: ['acertó más de la mitad de sus predicciones', 'acertaron más de la mitad de sus predicciones'],
  reasons: ['halló casi siempre la razón correcta', 'hallaron casi siempre la razón correcta'],
  closing: [
    'contestó bien más de la mitad de las últimas preguntas',
    'contestaron bien más de la mitad de las últimas preguntas',
  ],
};
const did = (kind: EvidenceKind, n: number): string => DID[kind][n <= 1 ? 0 : 1];

const OF_TEAM: Readonly<Record<EvidenceKind, (n: number, of: number) => string>> = {
  met: (n, of) => `Cumplió ${n} de ${counted(of, 'reto', 'retos')}`,
  'met-first': (n, of) => `A la primera: ${n} de ${of}`,
  mended: (n, of) => `Después de arreglar lo hallado: ${n} de ${of}`,
  helped: (n, of) => `Después de «Arreglarlo»: ${n} de ${of}`,
  'both-sides': (n, of) => `Marcas bien leídas desde los dos lados: ${n} de ${of}`,
  forecasts: (n, of) => `Acertó ${n} de ${counted(of, 'predicción', 'predicciones')}`,
  reasons: (n, of) => `Halló la razón correcta ${n} de ${counted(of, 'vez', 'veces')}`,
  closing: (n, of) => `Contestó bien ${n} de ${of} ${plural(of, 'última pregunta', 'últimas preguntas')}`,
};

/** What published frameworks mean by their identifiers, in our own words. */
const STANDARDS: Readonly<Record<Standard, string>> = {
  'CSTA 1A-AP-08': 'seguir un procedimiento paso a paso',
  'CSTA 1A-AP-09': 'representar información con símbolos',
  'CSTA 1A-AP-12': 'planear lo que hará un programa',
  'CSTA 1A-AP-14': 'encontrar y arreglar errores',
  'CSTA 1B-AP-10': 'usar secuencias, sucesos y condiciones',
  'CSTA 1B-AP-15': 'probar un programa y arreglarlo',
  'CSTA 1B-AP-17': 'explicar lo elegido y por qué',
  'England KS1 predict': 'predecir un programa sencillo razonando',
  'England KS2 design': 'diseñar para un objetivo y controlar algo físico',
  'England KS2 correct': 'encontrar y corregir errores razonando',
  'England KS2 explain': 'explicar cómo funciona un algoritmo',
  'ISTE 1.5': 'pensar de forma computacional',
  'NGSS 3-5-ETS1-1': 'trabajar con criterios y dentro de límites',
  'NGSS 3-5-ETS1-2': 'hacer varias soluciones y compararlas',
  'NGSS 3-5-ETS1-3': 'probar de forma justa y ver dónde falla',
};
const LABELS: Readonly<Partial<Record<Standard, string>>> = {
  'England KS1 predict': 'Inglaterra KS1',
  'England KS2 design': 'Inglaterra KS2',
  'England KS2 correct': 'Inglaterra KS2',
  'England KS2 explain': 'Inglaterra KS2',
};

/** What a lesson has shown, on paper and at the desk. */
export const evidence = {
  headline,
  title: (word: string, date: string): string => `Sala ${word}, abierta el ${date}`,
  ofClass: (kind: EvidenceKind, { shown, of }: Shown): string =>
    `${shown} de ${counted(of, 'equipo', 'equipos')} ${did(kind, shown)}`,
  ofTeam: (kind: EvidenceKind, { shown, of }: Shown): string => OF_TEAM[kind](shown, of),
  standard: (id: Standard): string => `${LABELS[id] ?? id}: ${STANDARDS[id]}`,
  notes: [
    'Contado por el programa a partir de lo entregado, probado y contestado. Conduce un modelo: los robots reales pueden hacer otra cosa. Un equipo es su emblema; no se guarda el nombre de nadie.',
    'Las referencias nombran marcos publicados: CSTA K–12 Computer Science Standards, 2017; Inglaterra, National curriculum, computing, 2013; ISTE, estándares para estudiantes, 2016; Next Generation Science Standards, 2013. Lo que hay al lado está dicho con nuestras palabras. Indican dónde puede encajar esta evidencia; no prueban que se cumpla un estándar.',
  ],
  desk: {
    title: 'Evidencias',
    note: 'Lo que han mostrado la clase y cada equipo, una página por equipo, con referencias a marcos publicados. Los equipos son sus emblemas.',
    pdf: 'Guardar las evidencias (PDF)',
    csv: 'Guardar las evidencias (CSV)',
  },
};
