import type { FreshWords } from '../documents/fresh.ts';
import type { Texts } from '../documents/values.ts';

/** What a fresh challenge says, whatever its lines: a document speaks every language at once. */
export const fresh: FreshWords = {
  sentences: {
    park: { en: 'Park on the ferry landing.', es: 'Estaciona en el embarcadero.' },
    pace: {
      en: 'Change your pace on the way, just as the goals say.',
      es: 'Cambia de paso por el camino, como dicen los objetivos.',
    },
    junction: {
      en: 'Find the way to the lighthouse. Every junction needs a decision.',
      es: 'Busca el camino al faro. Hay que decidir en cada cruce.',
    },
    crossing: {
      en: 'Go straight on to the lighthouse, over every crossing.',
      es: 'Ve recto hasta el faro, pasando todos los cruces.',
    },
    'turn-back': {
      en: 'Look in at the bakery, turn back, finish at the lighthouse.',
      es: 'Pasa por la panadería, da media vuelta y termina en el faro.',
    },
  },
  start: { en: 'Boathouse', es: 'Cobertizo' },
  finish: { en: 'Lighthouse', es: 'Faro' },
  area: { en: 'Ferry landing', es: 'Embarcadero' },
  gate: { en: 'Bakery', es: 'Panadería' },
};

/** What a new challenge and its places are called until somebody gives them names. */
export const NEW_CHALLENGE: { readonly title: Texts; readonly sentence: Texts } = {
  title: { en: 'New challenge', es: 'Reto nuevo' },
  sentence: { en: 'Do what the goals say.', es: 'Haz lo que dicen los objetivos.' },
};
export const PLACE_TEXTS = {
  start: fresh.start,
  finish: fresh.finish,
  gate: { en: 'Gate', es: 'Puerta' },
  area: { en: 'Area', es: 'Zona' },
  'keep-out': { en: 'Nest', es: 'Nido' },
  box: { en: 'Marks', es: 'Marcas' },
} as const satisfies Readonly<Record<string, Texts>>;
