import pg from 'pg';
import { describe, expect, it } from 'vitest';
import { isAway } from '../../../server/log/postgres.ts';

const said = (code: string) => Object.assign(new pg.DatabaseError('said', 4, 'error'), { code });
const broke = (code: string) => Object.assign(new Error(`write ${code}`), { code });

/** Codes are those of PostgreSQL's documentation, appendix A, and of the operating system. */
describe('isAway', () => {
  it.each(['57P01', '57P02', '57P03', '08006', '53300', '40P01', '25006', '57014'])(
    'is true where the database says %s',
    (code) => expect(isAway(said(code))).toBe(true),
  );
  it.each(['23505', '42P01', '53100', '22021', '28P01', '3D000'])('is false where it says %s', (code) =>
    expect(isAway(said(code))).toBe(false),
  );
  // EPIPE looks like a code of the database, and is none.
  it.each(['EPIPE', 'ECONNRESET', 'ECONNREFUSED', 'ETIMEDOUT', 'ENOTFOUND'])(
    'is true where the connection broke with %s',
    (code) => expect(isAway(broke(code))).toBe(true),
  );
  it('is true where the driver gave up', () => {
    expect(isAway(new Error('Connection terminated unexpectedly'))).toBe(true);
    expect(isAway(new Error('timeout exceeded when trying to connect'))).toBe(true);
  });
  it('is false for a mistake in this program', () => {
    expect(isAway(new TypeError('x is not a function'))).toBe(false);
  });
});
