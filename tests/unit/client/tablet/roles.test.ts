import { describe, expect, it } from 'vitest';
import { rolesAfter } from '../../../../client/tablet/handing/roles.tsx';

describe('rolesAfter', () => {
  it('each role moves on by one seat at each hand-in, and is back after three', () => {
    expect(rolesAfter(0)).toEqual(['pen', 'chart', 'lookout']);
    expect(rolesAfter(1)).toEqual(['lookout', 'pen', 'chart']);
    expect(rolesAfter(2)).toEqual(['chart', 'lookout', 'pen']);
    expect(rolesAfter(3)).toEqual(rolesAfter(0));
  });
});
