import { describe, expect, it } from 'vitest';
import { metFrom } from '../../../../client/tablet/playing/met-plays.ts';

describe('metFrom', () => {
  it('names the ways to play that were kept', () =>
    expect(metFrom('["draw","mend"]')).toEqual(['draw', 'mend']));
  it('is empty for a new device', () => expect(metFrom(null)).toEqual([]));
  it.each(['', '{', '{"draw":true}', '[1]', 'null'])('is empty for %s, which says nothing of it', (kept) =>
    expect(metFrom(kept)).toEqual([]),
  );
});
