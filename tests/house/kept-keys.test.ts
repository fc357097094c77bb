import { expect, it } from 'vitest';
import { meantBy } from '../../client/parts/browser-storage.ts';
import { sources } from './files.ts';

// What nobody can name nobody can erase.
it('every key under which a page keeps something in a browser is named on the list of what is kept', () => {
  const keys = sources('client').flatMap(({ code }) =>
    [...code.matchAll(/['"`](harbour-lines\.[a-z][a-z.-]*)/g)].map(([, key]) => key!),
  );
  expect(keys).toContain('harbour-lines.device');
  expect(keys.filter((key) => meantBy(key) === 'other')).toEqual([]);
});
