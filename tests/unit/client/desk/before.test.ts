import { describe, expect, it } from 'vitest';
import { ticksFrom } from '../../../../client/desk/before/ticks.ts';
import { meantBy } from '../../../../client/parts/browser-storage.ts';

describe('ticksFrom', () => {
  const kept = JSON.stringify({ day: '2027-03-01', ticked: ['paper', 'charger', 'tables'] });

  it('has the ticks of the same day, but no promise to stay with the charger', () => {
    expect(ticksFrom(kept, '2027-03-01')).toEqual(['paper', 'tables']);
  });
  it('has none on another day', () => expect(ticksFrom(kept, '2027-03-02')).toEqual([]));
  it.each([null, undefined, '', '{', '{"day":"2027-03-01","ticked":["flag"]}'])('has none in %j', (text) =>
    expect(ticksFrom(text, '2027-03-01')).toEqual([]),
  );
});

describe('meantBy', () => {
  it.each([
    ['harbour-lines.device', 'device'],
    ['harbour-lines.desk.rota', 'rota'],
    ['harbour-lines.desk.check', 'check'],
    ['harbour-lines.outbox.tablet.abc', 'outbox'],
    ['harbour-lines.desk.kits', 'kits'],
    ['harbour-lines.new-thing', 'other'],
    ['harbour-lines.erase-at', undefined],
    ['elsewhere', undefined],
  ] as const)('%s is %s', (key, what) => expect(meantBy(key)).toBe(what));
});
