import { describe, expect, it } from 'vitest';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { decide } from '../../../shared/room/decide.ts';
import { mayRead, view } from '../../../shared/room/seen.ts';
import { BOARD, codeOf, DESK, KEY, type Move, roomAfter, SERVER, team } from './arbitraries.ts';

const CLOSE: readonly Move[] = [
  [SERVER, { kind: 'join', team: 't1' }],
  [SERVER, { kind: 'join', team: 't2' }],
  [DESK, { kind: 'go-to', phase: 'close' }],
];
const START: Move = [DESK, { kind: 'start-check', check: 'q1', key: KEY }];
const END: Move = [DESK, { kind: 'end-check' }];
const answer = (question: number, picked: string, check = 0): RoomCommand => ({
  kind: 'answer-check',
  check,
  question,
  picked,
});
const says = (by: string, question: number, picked: string): Move => [team(by), answer(question, picked)];
const codeAfter = (moves: readonly Move[], command: RoomCommand, seat = DESK) =>
  codeOf(decide(roomAfter(...moves), command, seat, 3000));

describe('a closing check', () => {
  it('is started by the desk as the lesson closes, one at a time', () => {
    expect(codeAfter(CLOSE.slice(0, 2), START[1])).toBe('not-now');
    expect(codeAfter(CLOSE, START[1])).toBe('accepted');
    expect(codeAfter([...CLOSE, START], START[1])).toBe('already-so');
    expect(codeAfter([...CLOSE, START, END], START[1])).toBe('accepted');
    expect(codeAfter(CLOSE, START[1], team('t1'))).toBe('not-for-this-seat');
  });

  it('keeps the newest answer of each team to each question', () => {
    const moves = [...CLOSE, START, says('t1', 0, 'w'), says('t2', 0, 'r'), says('t1', 0, 'r')];
    expect(roomAfter(...moves).checks[0]?.answers).toEqual([
      { team: 't2', question: 0, picked: 'r' },
      { team: 't1', question: 0, picked: 'r' },
    ]);
    expect(codeAfter(moves, answer(0, 'r'), team('t1'))).toBe('already-so');
  });

  it('takes no answer that is none, to no question that is none, and none once it is over', () => {
    const by = (command: RoomCommand, ...moves: Move[]) =>
      codeAfter([...CLOSE, ...moves], command, team('t1'));
    expect([
      by(answer(0, 'r')),
      by(answer(0, 'right'), START),
      by(answer(2, 'r'), START),
      by(answer(0, 'r', 1), START),
      by(answer(0, 'r'), START, END),
      by(answer(0, 'r'), START, [DESK, { kind: 'remove-team', team: 't1' }]),
    ]).toEqual(['no-check', 'unknown-answer', 'unknown-answer', 'no-check', 'no-check', 'team-removed']);
  });

  it('takes what the desk notes of a team that answered on paper', () => {
    const note = (id: string): RoomCommand => ({
      kind: 'note-answer',
      team: id,
      check: 0,
      question: 1,
      picked: 'right',
    });
    expect(roomAfter(...CLOSE, START, [DESK, note('t2')]).checks[0]?.answers).toEqual([
      { team: 't2', question: 1, picked: 'right' },
    ]);
    expect(codeAfter([...CLOSE, START], note('t9'))).toBe('unknown-team');
  });

  it('takes what was ticked on paper after it has ended too, whatever the class does by then', () => {
    const note = (by: string, picked: string): Move => [
      DESK,
      { kind: 'note-answer', team: by, check: 0, question: 0, picked },
    ];
    const over: readonly Move[] = [...CLOSE, START, says('t1', 0, 'r'), END];
    const late = roomAfter(
      ...over,
      note('t2', 'w'),
      [DESK, { kind: 'go-to', phase: 'gather' }],
      note('t2', 'r'),
    );
    expect(late.checks[0]).toMatchObject({
      ended: true,
      answers: [
        { team: 't1', picked: 'r' },
        { team: 't2', picked: 'r' },
      ],
    });
    const shown = roomAfter(...over, [DESK, { kind: 'show-check', on: true }], note('t2', 'r'));
    expect(view(shown, BOARD).checks[0]?.shown).toEqual({ right: [2, 0], teams: 2 });
    expect(codeAfter([...over, START], note('t2', 'r')[1])).toBe('no-check');
  });

  it('goes on when its end is taken back: nobody but the desk is told any longer what is right', () => {
    const resume: Move = [DESK, { kind: 'resume-check' }];
    const over: readonly Move[] = [...CLOSE, START, says('t1', 0, 'w'), END];
    const shown: Move = [DESK, { kind: 'show-check', on: true }];
    const again = roomAfter(...over, shown, resume, says('t1', 0, 'r'));
    expect(view(again, DESK).checks[0]).toMatchObject({ key: KEY, ended: false });
    expect(view(again, team('t1')).checks[0]).toMatchObject({ key: null, answers: [{ picked: 'r' }] });
    expect(view(again, BOARD).checks[0]).toMatchObject({ key: null, shown: null });
    expect(mayRead(again, BOARD, 'q1')).toBe(false);
    expect([
      codeAfter([...CLOSE, START], resume[1]),
      codeAfter(CLOSE, resume[1]),
      codeAfter(over, resume[1], team('t1')),
    ]).toEqual(['already-so', 'no-check', 'not-for-this-seat']);
  });

  it('tells teams their own answers, and what is right when it has ended', () => {
    const during = roomAfter(...CLOSE, START, says('t1', 0, 'w'), says('t2', 0, 'r'));
    const after = roomAfter(...CLOSE, START, says('t1', 0, 'w'), says('t2', 0, 'r'), END);
    const seenBy = (state: typeof during, seat = team('t1')) => view(state, seat).checks[0];
    expect(seenBy(during)).toMatchObject({ key: null, answers: [{ team: 't1', picked: 'w' }] });
    expect(seenBy(after)).toMatchObject({ key: KEY, answers: [{ team: 't1', picked: 'w' }] });
    expect(seenBy(during, BOARD)).toMatchObject({ key: null, answers: [] });
  });

  it('is shown on the board, once it has ended, as counts without teams', () => {
    const shown: Move = [DESK, { kind: 'show-check', on: true }];
    expect(codeAfter([...CLOSE, START], shown[1])).toBe('no-check');
    const state = roomAfter(...CLOSE, START, says('t1', 0, 'w'), says('t2', 0, 'r'), END, shown);
    expect(view(state, BOARD).checks[0]).toMatchObject({ answers: [], shown: { right: [1, 0], teams: 2 } });
    expect(view(state, team('t1')).checks[0]?.shown).toBeNull();
    const hidden = roomAfter(...CLOSE, START, END, shown, [DESK, { kind: 'show-check', on: false }]);
    expect(view(hidden, BOARD).checks[0]?.shown).toBeNull();
  });

  it('may be read by teams while it is asked, by the board afterwards', () => {
    const during = roomAfter(...CLOSE, START);
    const after = roomAfter(...CLOSE, START, END);
    expect([DESK, team('t1'), BOARD].map((seat) => mayRead(during, seat, 'q1'))).toEqual([true, true, false]);
    expect(mayRead(after, BOARD, 'q1')).toBe(true);
  });
});
