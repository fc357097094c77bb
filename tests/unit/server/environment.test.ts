import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { configFrom, startTrouble } from '../../../server/environment.ts';

describe('what is set from outside', () => {
  it('takes nothing set, or set to nothing, for the defaults', () => {
    const expected = { ok: true, value: { port: 4310, dataDir: resolve('.data'), pages: null } };
    expect(configFrom({}, null)).toEqual(expected);
    const empty = { PORT: '', DATA_DIR: '', OWNER_KEY: '', PUBLIC_URL: '', HOST: '', LOG_LEVEL: '' };
    expect(configFrom(empty, null)).toEqual(expected);
  });

  it.each([
    [{ PORT: 'abc' }, 'PORT must be a whole number from 0 to 65535, not "abc".'],
    [{ PORT: '70000' }, 'PORT must be a whole number from 0 to 65535, not "70000".'],
    [{ LOG_LEVEL: 'loud' }, 'LOG_LEVEL must be one of silent, error, warn, info, not "loud".'],
    [{ OWNER_KEY: 'short' }, 'OWNER_KEY must be 16 to 64 letters, digits, dashes or underscores.'],
  ])('refuses %o with a sentence', (env, sentence) => {
    expect(configFrom(env, null)).toEqual({ ok: false, sentence });
  });

  it('names another port where one is busy', () => {
    const busy = Object.assign(new Error('listen'), { code: 'EADDRINUSE' });
    expect(startTrouble(busy, { port: 4310, dataDir: '.' })).toContain('for example 4311');
  });
});
