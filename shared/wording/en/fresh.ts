import type { FreshWords } from '../../documents/fresh.ts';

/** What a fresh challenge says, whatever its lines. */
export const fresh: FreshWords = {
  sentences: {
    park: { en: 'Park on the ferry landing.' },
    pace: { en: 'Change your pace on the way, just as the goals say.' },
    junction: { en: 'Find the way to the lighthouse. Every junction needs a decision.' },
    crossing: { en: 'Go straight on to the lighthouse, over every crossing.' },
    'turn-back': { en: 'Look in at the bakery, turn back, finish at the lighthouse.' },
  },
  start: { en: 'Boathouse' },
  finish: { en: 'Lighthouse' },
  area: { en: 'Ferry landing' },
  gate: { en: 'Bakery' },
};
