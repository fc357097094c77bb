/** Nouns whose ending does not say their gender, of those that sheets and places are often called. */
const FEMININE = new Set(['torre', 'calle', 'nave', 'fuente', 'base', 'nube', 'mano', 'cruz', 'red', 'luz']);
const MASCULINE = new Set(['mapa', 'día', 'tranvía', 'planeta', 'clima']);
/** Endings of feminine nouns, singular and plural (general rules of Spanish grammar). */
const FEMININE_ENDING = /(a|as|ión|iones|dad|dades|tad|tades|tud|tudes|umbre|umbres)$/;

type Article = 'el' | 'la' | 'los' | 'las';

/** The article of a name, by its first word: a sheet gives names without one. */
function articleOf(name: string): Article {
  const noun = name.split(' ')[0]!.toLowerCase();
  const feminine = FEMININE.has(noun) || (FEMININE_ENDING.test(noun) && !MASCULINE.has(noun));
  if (noun.endsWith('s')) return feminine ? 'las' : 'los';
  return feminine ? 'la' : 'el';
}

/** "el Faro", "la Panadería" */
export const the = (name: string): string => `${articleOf(name)} ${name}`;

/** After "a" and "de" the article el melts: "al Faro", "del Faro", "a la Panadería". */
export const to = (place: string): string => `a ${place}`.replace(/^a el /, 'al ');
export const of = (place: string): string => `de ${place}`.replace(/^de el /, 'del ');
