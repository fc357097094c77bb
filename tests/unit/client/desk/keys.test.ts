import { describe, expect, it } from 'vitest';
import { keyName } from '../../../../client/desk/keys.ts';

const key = (name: string, code = '', shiftKey = false) => keyName({ key: name, code, shiftKey });

describe('keyName', () => {
  it('letters are the same with and without shift', () => {
    expect([key('n', 'KeyN'), key('N', 'KeyN', true)]).toEqual(['n', 'n']);
  });

  it('digits go by their place, so that shift works on every layout', () => {
    expect([key('3', 'Digit3'), key('#', 'Digit3', true), key('§', 'Digit3', true)]).toEqual([
      '3',
      'Shift+3',
      'Shift+3',
    ]);
  });

  it('a layout that types its digits with shift gets Shift+digit, and its plain signs stay signs', () => {
    expect([key('3', 'Digit3', true), key('"', 'Digit3')]).toEqual(['Shift+3', '"']);
  });

  it('a question mark is one wherever it is typed', () => {
    expect([key('?', 'Slash', true), key('?', 'Minus', true)]).toEqual(['?', '?']);
  });
});
