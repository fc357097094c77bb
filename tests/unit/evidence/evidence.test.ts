import { describe, expect, it } from 'vitest';
import type { AnswersVerdict } from '../../../shared/documents/answers.ts';
import type { ClosingKey } from '../../../shared/documents/closing-check.ts';
import { questionFigures } from '../../../shared/evidence/check-answers.ts';
import { type EvidenceKind, evidenceOf, headlineOf } from '../../../shared/evidence/evidence.ts';
import type { LessonRecord } from '../../../shared/evidence/record.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { DESK, KEY, team } from '../room/arbitraries.ts';
import { handsIn, joined, record, round, roundEnds, tries, verdictWith } from './lesson.ts';

/** What the first team has shown of a kind, as "1 of 2". */
const first = (lesson: LessonRecord, kind: EvidenceKind) => said(evidenceOf(lesson).teams[0]!.evidence[kind]);
const classOf = (lesson: LessonRecord, kind: EvidenceKind) => said(evidenceOf(lesson).together[kind]);
const said = ({ shown, of }: { shown: number; of: number }) => `${shown} of ${of}`;

const WAYS = ['met', 'met-first', 'mended', 'helped'] as const;
const ways = (lesson: LessonRecord) => WAYS.map((kind) => first(lesson, kind));
const begun = [...joined('a'), ...round('c')];
const SHARP = verdictWith(['R-corner', 'stops']);
const SOUND = verdictWith();

describe('how a team met a challenge', () => {
  it('at the first entry', () => {
    expect(ways(record([...begun, ...handsIn('a', 0, true, 'v')]))).toEqual([
      '1 of 1',
      '1 of 1',
      '0 of 1',
      '0 of 1',
    ]);
  });

  it('after a finding that is gone from the entry that meets it', () => {
    const moves = [...begun, ...handsIn('a', 0, false, 'sharp'), ...handsIn('a', 0, true, 'sound')];
    const verdicts = new Map([
      ['sharp', SHARP],
      ['sound', SOUND],
    ]);
    expect(ways(record(moves, { verdicts }))).toEqual(['1 of 1', '0 of 1', '1 of 1', '0 of 1']);
  });

  it('by a later entry, but not by mending, where the finding stays, was harmless, or none was made', () => {
    const moves = [...begun, ...handsIn('a', 0, false, 'before'), ...handsIn('a', 0, true, 'after')];
    const untidy = verdictWith(['R-corner', 'untidy']);
    for (const [before, after] of [
      [SHARP, SHARP],
      [untidy, SOUND],
      [SOUND, SOUND],
    ] as const) {
      const verdicts = new Map([
        ['before', before],
        ['after', after],
      ]);
      expect(ways(record(moves, { verdicts }))).toEqual(['1 of 1', '0 of 1', '0 of 1', '0 of 1']);
    }
  });

  it('with the engine’s mending, even at the first entry', () => {
    const moves = [...begun, [team('a'), { kind: 'mend', round: 0 }] as const];
    expect(ways(record([...moves, ...handsIn('a', 0, true, 'v')]))).toEqual([
      '1 of 1',
      '0 of 1',
      '0 of 1',
      '1 of 1',
    ]);
  });

  it('leaves out what does not count: late, and not taken', () => {
    const late = [...begun, roundEnds, ...handsIn('a', 0, true, 'v')];
    expect(ways(record(late))).toEqual(['0 of 0', '0 of 0', '0 of 0', '0 of 0']);
    const { entries } = record(late).room;
    const taken = [...late, [DESK, { kind: 'take-late', entries: [entries[0]!.id], on: true }] as const];
    expect(ways(record(taken))[0]).toBe('1 of 1');
  });

  it('is counted round by round, of the rounds with a judged entry', () => {
    const moves = [
      ...begun,
      ...handsIn('a', 0, true, 'v'),
      roundEnds,
      ...round('d'),
      ...handsIn('a', 1, false, 'v'),
      roundEnds,
      ...round('f'),
    ];
    expect(ways(record(moves))).toEqual(['1 of 2', '1 of 2', '0 of 2', '0 of 2']);
  });
});

describe('forecasts and reasons', () => {
  it('count what came as it was said; “not sure” says nothing', () => {
    const moves = [
      ...begun,
      tries('a', 'makes-it', true),
      tries('a', 'makes-it', false),
      tries('a', 'fails', false),
      tries('a', 'not-sure', false),
    ];
    expect(first(record(moves), 'forecasts')).toBe('2 of 3');
  });

  it('count the reasons that were the right ones', () => {
    const offered = ['line-lost', 'got-tired', 'acts-at-once'] as const;
    const explain = (picked: 'line-lost' | 'got-tired') =>
      [team('a'), { kind: 'explain', round: 0, offered, picked, right: 'line-lost' }] as const;
    const moves = [
      ...begun,
      tries('a', 'makes-it', false),
      explain('line-lost'),
      tries('a', 'makes-it', false),
      explain('got-tired'),
    ];
    expect(first(record(moves), 'reasons')).toBe('1 of 2');
  });
});

describe('marks from both sides', () => {
  // Two travellers: one mark, C A to the one and A C to the other.
  const found = readyChallenges(DEMO_KIT).find(({ key }) => key === 'two-travellers')!;
  const challenge = found.playable ? found.challenge : undefined;
  const challenges = new Map([['c', challenge!]]);
  const answered = (start: boolean, finish: boolean): AnswersVerdict => ({
    version: 1,
    engine: 1,
    lines: [
      { question: 'mark-start-mark', answered: true, right: start },
      { question: 'mark-finish-mark', answered: true, right: finish },
    ],
    right: Number(start) + Number(finish),
    questions: 2,
    total: 0,
  });

  it('are read where one entry has both right, not where two have one each', () => {
    const answers = new Map([
      ['start', answered(true, false)],
      ['finish', answered(false, true)],
      ['both', answered(true, true)],
    ]);
    const halves = [...begun, ...handsIn('a', 0, false, 'start'), ...handsIn('a', 0, false, 'finish')];
    expect(first(record(halves, { answers, challenges }), 'both-sides')).toBe('0 of 1');
    const whole = [...halves, ...handsIn('a', 0, false, 'both')];
    expect(first(record(whole, { answers, challenges }), 'both-sides')).toBe('1 of 1');
  });

  it('are not asked of a team without an entry', () => {
    expect(first(record(begun, { challenges }), 'both-sides')).toBe('0 of 0');
  });
});

describe('a closing check', () => {
  // Two questions: r is right of the first, where the mark reads C A, and right of the second, A C.
  const askedOf = (key: ClosingKey, picked: readonly string[]) =>
    record([
      ...joined('a'),
      [DESK, { kind: 'go-to', phase: 'close' }],
      [DESK, { kind: 'start-check', check: 'q', key }],
      ...picked.map(
        (one, question) => [team('a'), { kind: 'answer-check', check: 0, question, picked: one }] as const,
      ),
    ]);
  const asked = (...picked: string[]) => askedOf(KEY, picked);

  it('shows right answers, of those that were given', () => {
    expect(first(asked('r', 'wrong'), 'closing')).toBe('1 of 2');
    expect(first(asked('r'), 'closing')).toBe('1 of 1');
  });

  it('shows a mark read from both sides where both answers are right', () => {
    expect(
      [asked('r', 'right'), asked('r', 'wrong'), asked('r')].map((one) => first(one, 'both-sides')),
    ).toEqual(['1 of 1', '0 of 1', '0 of 0']);
  });

  it('counts a mark that another drawing has too, C A once more, as one mark', () => {
    const key = [...KEY, KEY[0]!];
    const shown = [['r', 'right', 'r'] as const, ['w', 'right', 'w'] as const];
    expect(shown.map((picked) => first(askedOf(key, picked), 'both-sides'))).toEqual(['1 of 1', '0 of 1']);
  });

  it('says which mistakes wrong answers come from', () => {
    const { room } = asked('w', 'right');
    expect(questionFigures(room, room.checks[0]!)).toEqual([
      { right: 0, of: 1, mistakes: [{ mistake: 'same-from-both-sides', teams: 1 }] },
      { right: 1, of: 1, mistakes: [] },
    ]);
  });
});

describe('a class', () => {
  const three = [...joined('a', 'b', 'c'), ...round('c')];

  it('counts teams that have shown it, of those that had a chance', () => {
    const moves = [...three, ...handsIn('a', 0, true, 'v'), ...handsIn('b', 0, false, 'v')];
    expect(classOf(record(moves), 'met')).toBe('1 of 2');
    expect(headlineOf(evidenceOf(record(moves)))).toEqual({ kind: 'met', shown: 1, of: 2 });
  });

  it('counts a team as one that foretells only with more than half', () => {
    const moves = [
      ...three,
      tries('a', 'fails', true),
      tries('a', 'makes-it', true),
      tries('b', 'makes-it', true),
    ];
    expect(classOf(record(moves), 'forecasts')).toBe('1 of 2');
  });

  it('leaves out teams that were taken out of the room', () => {
    const moves = [
      ...three,
      ...handsIn('a', 0, true, 'v'),
      [DESK, { kind: 'remove-team', team: 'a' }] as const,
    ];
    expect(evidenceOf(record(moves)).teams.map((each) => each.team)).toEqual(['b', 'c']);
    expect(classOf(record(moves), 'met')).toBe('0 of 0');
  });

  it('has shown nothing where nobody played', () => {
    expect(headlineOf(evidenceOf(record([])))).toEqual({ kind: 'met', shown: 0, of: 0 });
  });
});
