import { describe, expect, it } from 'vitest';
import { RULE_IDS } from '../../shared/documents/verdict.ts';
import { MOMENTS } from '../../shared/goals/moments/index.ts';
import { PREDICATES } from '../../shared/goals/predicates/index.ts';
import { sources } from './files.ts';

const tests = sources('tests').filter((f) => f.path.endsWith('.test.ts'));
const rules = sources('shared').filter((f) => f.path.startsWith('shared/rules/'));

const titles = tests.flatMap((f) =>
  [...f.text.matchAll(/\b(?:it|test|describe)\(\s*['"`]([^'"`]*)/g)].map((m) => m[1]!),
);

describe('ids', () => {
  it('every goal is quoted in the title of a test', () => {
    const ids = [...Object.values(PREDICATES), ...Object.values(MOMENTS)].map((predicate) => predicate.id);
    expect(ids.filter((id) => !titles.some((title) => title.includes(id)))).toEqual([]);
  });

  it('every drawing rule is quoted in the title of a test', () => {
    const untested = RULE_IDS.filter((id) => !titles.some((title) => title.includes(id)));
    expect(untested).toEqual([]);
  });

  it('every drawing rule has a file of its own that names it', () => {
    const unnamed = RULE_IDS.filter((id) => !rules.some((f) => f.code.includes(`'${id}'`)));
    expect(unnamed).toEqual([]);
  });
});
