import { isChoice } from '../documents/closing-check.ts';
import { withAnswer } from './apply-check.ts';
import { ownTeam, strangerTo } from './decide-teams.ts';
import { ALREADY, type CommandOf, type Decision, done, notNow, type Rule, refuse } from './decision.ts';
import type { Seat } from './events.ts';
import type { CheckResult, RoomCheck, RoomState, TeamId } from './state.ts';

/** The closing check: asked in the phase that closes the lesson, one at a time. */

const NO_CHECK = refuse({ code: 'no-check' });

const lastCheck = ({ checks }: RoomState): RoomCheck | undefined => checks.at(-1);

function startCheck(state: RoomState, { check, key }: CommandOf<'start-check'>): Decision {
  if (state.phase !== 'close') return notNow(state);
  if (lastCheck(state)?.ended === false) return ALREADY;
  return done({ kind: 'check-started', check, key });
}

interface Picked {
  /** Which of the room's checks it belongs to, from 0. */
  readonly check: number;
  readonly question: number;
  readonly picked: string;
}

/** The last check, where it is the one that is meant. */
const checkMeant = ({ checks }: RoomState, { check }: Picked): RoomCheck | undefined =>
  check === checks.length - 1 ? checks[check] : undefined;

function answered({ key, answers }: RoomCheck, team: TeamId, { question, picked }: Picked): Decision {
  const answer = key?.[question];
  if (!answer || !isChoice(answer, picked)) return refuse({ code: 'unknown-answer' });
  const before = answers.find((one) => one.team === team && one.question === question);
  return before?.picked === picked ? ALREADY : done({ kind: 'check-answered', team, question, picked });
}

/** On a tablet an answer may be changed until the check ends. */
const answerCheck = (state: RoomState, command: CommandOf<'answer-check'>, seat: Seat): Decision =>
  ownTeam(state, seat, ({ id }) => {
    if (state.phase !== 'close') return notNow(state);
    const open = checkMeant(state, command);
    return open && !open.ended ? answered(open, id, command) : NO_CHECK;
  });

/** What a team has answered on paper, also once the check has ended: what the board says of it follows. */
function noteAnswer(state: RoomState, command: CommandOf<'note-answer'>): Decision {
  const { team, question, picked } = command;
  if (!state.teams.some(({ id }) => id === team)) return strangerTo(state, team);
  const last = checkMeant(state, command);
  if (!last) return NO_CHECK;
  const decision = answered(last, team, command);
  if (!decision.ok || last.shown === null) return decision;
  const answers = withAnswer(last.answers, { team, question, picked });
  return done(...decision.facts, { kind: 'check-shown', result: resultOf(state, { ...last, answers }) });
}

function endCheck(state: RoomState): Decision {
  const open = lastCheck(state);
  if (!open?.key) return NO_CHECK;
  return open.ended ? ALREADY : done({ kind: 'check-ended', key: open.key });
}

/** Takes the end back: teams may change their answers again, and are no longer told what is right. */
function resumeCheck(state: RoomState): Decision {
  const last = lastCheck(state);
  if (!last?.key) return NO_CHECK;
  return last.ended ? done({ kind: 'check-resumed', key: last.key }) : ALREADY;
}

/** On the board, without teams: how many were right, question by question. */
function showCheck(state: RoomState, { on }: CommandOf<'show-check'>): Decision {
  const last = lastCheck(state);
  if (!last?.ended) return NO_CHECK;
  if ((last.shown !== null) === on) return ALREADY;
  return done({ kind: 'check-shown', result: on ? resultOf(state, last) : null });
}

/** Those who play and have answered anything. */
function resultOf({ teams }: RoomState, { key, answers }: RoomCheck): CheckResult {
  const counted = answers.filter(({ team }) => teams.some(({ id }) => id === team));
  const right = (key ?? []).map(
    (answer, i) => counted.filter((one) => one.question === i && one.picked === answer.right).length,
  );
  return { right, teams: new Set(counted.map(({ team }) => team)).size };
}

type CheckKind = 'start-check' | 'answer-check' | 'note-answer' | 'end-check' | 'resume-check' | 'show-check';

export const CHECK_RULES: { readonly [K in CheckKind]: Rule<K> } = {
  'start-check': { by: 'desk', decide: startCheck },
  'answer-check': { by: 'team', decide: answerCheck },
  'note-answer': { by: 'desk', decide: noteAnswer },
  'end-check': { by: 'desk', decide: endCheck },
  'resume-check': { by: 'desk', decide: resumeCheck },
  'show-check': { by: 'desk', decide: showCheck },
};
