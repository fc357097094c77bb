import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { dateOf, evidenceCsv } from '../../../server/http/evidence.ts';
import { EVIDENCE_KINDS, evidenceOf } from '../../../shared/evidence/evidence.ts';
import { handsIn, joined, record, round } from '../evidence/lesson.ts';

describe('evidence as CSV', () => {
  const lesson = record([...joined('a', 'b'), ...round('c'), ...handsIn('a', 0, true, 'v')]);
  // Half an hour before midnight by UTC, in the night in which Europe's clocks went to summer time.
  const room = { ...lesson.room, openedAt: Date.UTC(2026, 2, 28, 23, 30) };
  const rows: Record<string, string>[] = parse(evidenceCsv(room, evidenceOf(lesson)), {
    bom: true,
    columns: true,
  });

  it('has a row for each kind, of the class and then of each team by its emblem', () => {
    const kinds = EVIDENCE_KINDS.length;
    expect(rows.map((row) => row.team)).toEqual([
      ...Array(kinds).fill('class'),
      ...Array(kinds).fill('sailboat'),
      ...Array(kinds).fill('bell'),
    ]);
    expect(rows[0]).toEqual({
      room: 'plum-42',
      date: '2026-03-28',
      berth: '',
      team: 'class',
      evidence: 'met',
      shown: '1',
      of: '1',
      'points to': 'CSTA 1B-AP-10; England KS2 design; NGSS 3-5-ETS1-1',
    });
    expect(rows[kinds]).toMatchObject({ berth: '1', evidence: 'met', shown: '1', of: '1' });
    expect(rows[2 * kinds]).toMatchObject({ berth: '2', evidence: 'met', shown: '0', of: '0' });
  });

  it('names the day by the clock of the desk, wherever the server stands; by UTC where none is named', () => {
    const zone = process.env.TZ;
    // Ahead of UTC then: Madrid 1 h, Los Angeles −7 h, Kathmandu 5 h 45 min, Auckland 13 h.
    const days = ['Pacific/Auckland', 'America/Los_Angeles', 'UTC'].map((tz) => {
      process.env.TZ = tz;
      return [undefined, '60', '-420', '345', '780'].map((offset) => dateOf(room, offset));
    });
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
    const expected = ['2026-03-28', '2026-03-29', '2026-03-28', '2026-03-29', '2026-03-29'];
    expect(days).toEqual([expected, expected, expected]);
    const [first]: Record<string, string>[] = parse(evidenceCsv(room, evidenceOf(lesson), '60'), {
      bom: true,
      columns: true,
    });
    expect(first?.date).toBe('2026-03-29');
  });
});
