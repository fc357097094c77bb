/** The short list before a lesson, in the order in which it goes fastest. */
export const PREP_CHECKS = [
  'pages',
  'address',
  'tablet',
  'kit',
  'charger',
  'robots',
  'paper',
  'tables',
] as const;
export type PrepCheck = (typeof PREP_CHECKS)[number];
