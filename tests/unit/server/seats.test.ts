import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { carriedBy } from '../../../server/seats/cookies.ts';
import { ownerKeyIn } from '../../../server/seats/owner-key.ts';
import { Rates } from '../../../server/seats/rates.ts';
import { hashOf, isToken, newToken, sameSecret } from '../../../server/seats/tokens.ts';

describe('tokens', () => {
  it('are long, safe in an address, and differ', () => {
    const tokens = Array.from({ length: 100 }, newToken);
    expect(tokens.every((token) => /^[A-Za-z0-9_-]{32}$/.test(token) && isToken(token))).toBe(true);
    expect(new Set(tokens).size).toBe(100);
  });

  // SHA-256 of "abc": FIPS 180-4, example of NIST.
  it('are kept as SHA-256', () => {
    expect(hashOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });

  it('are compared whole', () => {
    expect([sameSecret('abc', 'abc'), sameSecret('abc', 'abd'), sameSecret('abc', 'ab')]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it.each([[undefined], [''], ['short'], ['x'.repeat(65)], [`${'x'.repeat(32)};`]])('%s is none', (text) => {
    expect(isToken(text)).toBe(false);
  });
});

describe('cookies', () => {
  const token = 'T'.repeat(32);

  it('are found among those of others', () => {
    const header = `theme=dark; harbour_team=${token}; harbour_owner=key=with=signs`;
    expect(carriedBy(header)).toEqual({ ownerKey: 'key=with=signs', teamToken: token });
  });

  it.each([[undefined], [''], [';;;'], ['=x'], ['harbour_team'], ['harbour_team=no token']])(
    '%s counts as none',
    (header) => expect(carriedBy(header)).toEqual({ ownerKey: undefined, teamToken: undefined }),
  );
});

describe('the owner’s key', () => {
  it('is made once, kept for its user alone, and made anew where the file is not a key', () => {
    const folder = mkdtempSync(join(tmpdir(), 'harbour-key-'));
    const key = ownerKeyIn(folder);
    expect(isToken(key)).toBe(true);
    expect(ownerKeyIn(folder)).toBe(key);
    const file = join(folder, 'owner-key');
    if (process.platform !== 'win32') expect(statSync(file).mode & 0o077).toBe(0);
    writeFileSync(file, 'half a k');
    const other = ownerKeyIn(folder);
    expect(other).not.toBe(key);
    expect(readFileSync(file, 'utf8').trim()).toBe(other);
    rmSync(folder, { recursive: true });
  });
});

describe('a guess', () => {
  const MANY = 200;
  const result = (rates: Rates, look: () => Promise<string | undefined>) =>
    rates.guess('wrongWord', '192.0.2.7', look).catch(() => null);

  it('that is wrong counts, until no more is allowed', async () => {
    const rates = new Rates();
    for (let i = 0; i < MANY; i++) await result(rates, async () => undefined);
    expect(await result(rates, async () => 'found')).toEqual({ allowed: false });
  });

  it('whose look fails, as while a database is away, does not count', async () => {
    const rates = new Rates();
    for (let i = 0; i < MANY; i++) await result(rates, () => Promise.reject(new Error('away')));
    expect(await result(rates, async () => 'found')).toEqual({ allowed: true, found: 'found' });
  });
});
