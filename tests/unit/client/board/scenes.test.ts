import { describe, expect, it } from 'vitest';
import { sceneOf } from '../../../../client/board/scenes.ts';
import { roomState } from '../link/fakes.ts';

const kind = (change: Parameters<typeof roomState>[1]) => sceneOf(roomState(1, change)).kind;

describe('sceneOf', () => {
  it('without a room says so', () => {
    expect(sceneOf(null).kind).toBe('no-room');
  });

  it('each phase has its scene', () => {
    expect(
      (['gather', 'brief', 'build', 'show', 'drive', 'close'] as const).map((phase) => kind({ phase })),
    ).toEqual(['wall', 'brief', 'building', 'before-stage', 'driving', 'together']);
  });

  it('an entry on the stage is shown, also beside standings', () => {
    expect(kind({ phase: 'show', stage: ['e'], standingsShown: true })).toBe('stage');
  });

  it('standings never show unless the desk asked for them', () => {
    expect(kind({ phase: 'show' })).not.toBe('standings');
    expect(kind({ phase: 'show', standingsShown: true })).toBe('standings');
  });

  it('a pause takes the board, whatever is on it', () => {
    expect(kind({ phase: 'build', paused: 5 })).toBe('paused');
    expect(kind({ phase: 'show', stage: ['e'], lookHere: true, paused: 5 })).toBe('paused');
  });

  it('"Look here" takes the board, but leaves a brief and a stage', () => {
    expect(kind({ phase: 'build', lookHere: true })).toBe('look-here');
    expect(kind({ phase: 'brief', lookHere: true })).toBe('brief');
    expect(kind({ phase: 'show', stage: ['e'], lookHere: true })).toBe('stage');
  });
});
