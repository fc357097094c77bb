import type { Texts } from '../documents/values.ts';

/** Places on the sheets of ready challenges, and what they are called in Spanish. No articles. */
const PLACES = {
  Boathouse: 'Cobertizo',
  Lighthouse: 'Faro',
  'Fish market': 'Mercado de pescado',
  Market: 'Mercado',
  Bakery: 'Panadería',
  Ferry: 'Ferri',
  'Ferry landing': 'Embarcadero',
  Landing: 'Embarcadero',
  Sandbank: 'Banco de arena',
  'Long pier': 'Muelle largo',
  Pier: 'Muelle',
  Beach: 'Playa',
  'Sail loft': 'Taller de velas',
  Quay: 'Muelle',
  'Engine shed': 'Cochera',
  'Coal quay': 'Muelle de carbón',
  Nest: 'Nido',
} as const;

export type PlaceName = keyof typeof PLACES;

/** The name of a place in every language. */
export const placeNamed = (name: PlaceName): Texts => ({ en: name, es: PLACES[name] });
