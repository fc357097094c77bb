import { examine } from '../../../shared/search/examine.ts';
import { freshChallenge } from '../../../shared/search/fresh.ts';
import type { SearchAnswer, SearchOrder } from './searching.ts';

/** The search beside the page: one order a worker, answered in steps. */
const scope = self as unknown as {
  onmessage: ((event: MessageEvent<SearchOrder>) => void) | null;
  postMessage: (answer: SearchAnswer) => void;
};

scope.onmessage = ({ data }) => {
  if (data.kind === 'fresh') {
    scope.postMessage({ kind: 'made', result: freshChallenge(data.wish) });
    return;
  }
  for (const found of examine(data.challenge, data.most ?? undefined))
    scope.postMessage({ kind: 'found', found });
  scope.postMessage({ kind: 'examined' });
};
