import type { Phase } from '../../room/state.ts';
import type { CannotPrint, WireRefusal } from '../../wire/protocol.ts';
import { judging } from './judging.ts';
import { numbers } from './numbers.ts';

/** What was wrong and what to do, one sentence or two a code. Read by teachers and children. */

type Sentences = {
  readonly [C in WireRefusal['code']]: (refusal: Extract<WireRefusal, { code: C }>) => string;
};

const PHASE: Readonly<Record<Phase, string>> = {
  gather: 'gathering',
  brief: 'being told what to do',
  build: 'building',
  show: 'looking at drawings together',
  drive: 'driving robots on paper',
  close: 'closing the lesson',
};

const CANNOT_PRINT: Readonly<Record<CannotPrint, string>> = {
  'no-challenge': 'No challenge has been chosen yet. Choose one for this sheet.',
  'no-drawing': 'This team has drawn nothing yet. Print the challenge’s sheet, or wait for its drawing.',
  'nothing-drawn':
    'This challenge has no ready drawing to ask about. Choose one in which lines are given or drawn.',
  'one-end':
    'Here no two robots meet the same mark from both ends. Choose a challenge with marks and a second berth.',
  'no-fault': 'No small fault makes this drawing fail. Choose a challenge with marks.',
  'not-asked':
    'The closing check has not been asked yet. Ask it under “Close” first: its questions are made then, of what was handed in.',
  'no-page': 'There are not so many pages. Go back to the first one.',
};

const kilobytes = (bytes: number) => Math.ceil(bytes / 1000);

export const refusals: Sentences = {
  'not-for-this-seat': () => 'This page may not do that. Ask at the teacher’s desk.',
  'not-now': ({ phase }) => `Not now: the room is ${PHASE[phase]}. Change the step of the lesson first.`,
  'room-full': ({ most }) => `This room is full: ${most} teams are in. Share a tablet with another team.`,
  'unknown-team': () => 'This team is not in this room. Load the page again.',
  'team-removed': () => 'This team has been taken out of the room. At the desk it can be put back.',
  'emblem-taken': () => 'Another team has this emblem already. Choose another one.',
  'no-challenge': () => 'No challenge has been chosen yet. Choose one at the desk first.',
  'unknown-challenge': ({ key }) => `There is no challenge called “${key}”. Choose one from the list.`,
  'other-round': () =>
    'This drawing belongs to an earlier challenge. It stays on this tablet; go on with the new one.',
  'other-sheet': () =>
    'This drawing is not on a sheet of your team. Load the page, look at it and hand it in again.',
  'unknown-entry': () => 'That drawing is not in this room. Choose one from the list.',
  'already-judged': () => 'This drawing has been judged already. Nothing has changed.',
  'not-building': () => 'Nobody is building now. Wait until the building time has begun.',
  'already-so': () => 'It is so already. Nothing has changed.',
  'not-judged': () => 'This drawing is still being looked at. Try again in a moment.',
  'not-on-the-wall': () =>
    'This team would rather not be on the wall. Talk with the team, or choose another drawing.',
  'nothing-to-ask': () =>
    'Nothing new has been handed in that could be asked about. Play a challenge with lines and marks first.',
  'no-check': () => 'These questions are over. Wait for the next ones.',
  'unknown-answer': () => 'That is not one of the answers. Load the page again.',
  'too-many-on-stage': ({ most }) => `At most ${most} drawings fit side by side. Take one away first.`,
  'nothing-to-show': () => 'Nothing has been chosen for this scene yet. Choose a drawing for it first.',
  'queue-full': ({ most }) => `At most ${most} challenges can wait. Take one off the queue first.`,
  'unknown-trial': () => 'That note is not in this room. Load the page again.',
  'too-many-trials': ({ most }) => `A room holds ${most} trials. Open another room for more.`,
  'bad-form': ({ path, problem }) =>
    `Something that was sent is not as it should be${path ? ` (at ${path}: ${problem})` : ` (${problem})`}. Nothing has changed; load the page again and try once more.`,
  'too-large': ({ bytes, most }) =>
    `That is too big: ${kilobytes(bytes)} kB, and at most ${kilobytes(most)} kB fit. Take something away and try again.`,
  'too-fast': () => 'That was too often in a short time. Wait a moment and try again.',
  'other-version': () => 'This page is older or newer than the server. Load the page again.',
  'no-seat': () => 'This page has no seat here. Type the room word, or open the desk’s link again.',
  'other-site': () =>
    'This came from a page of another site, so nothing was done. Use the pages of this server.',
  'seat-freed': () => 'This tablet rests. Ask at the teacher’s desk which tablet your team goes on with.',
  'unknown-room': () => 'No room has this word. Look at the board and type it again.',
  'no-room-named': () =>
    'Several classes have rooms here. Open the board from your desk, or say which room it shows.',
  'unknown-document': () => 'That is not here, or not for this page. Load the page again.',
  'unknown-page': () => 'There is no such page. Check the address.',
  'cannot-print': ({ why }) => CANNOT_PRINT[why],
  'wrong-key': () =>
    'This link opens no desk, or no longer. Ask for a new one, or use the one that the server printed when it started.',
  'kit-not-sound': ({ problem, path, more }) =>
    `A room can’t play with this kit yet. ${judging.challengeProblem(problem)} (At ${path}${more > 0 ? `; ${numbers.counted(more, 'more thing is', 'more things are')} wrong` : ''}.) Mend that in the kit’s editor; until then it can be kept as a draft.`,
  'wrong-code': () => 'This code is used up, too old or mistyped. Ask for a new one at the teacher’s desk.',
  'unknown-link': () => 'That link is gone already. Load the page again.',
  'shelf-full': ({ most }) =>
    `This desk has saved ${most} already, which is as many as it may keep. Erase one first.`,
  'not-on-shelf': () => 'That is not there any more. Load the page again.',
  'store-full': () =>
    'The disk of the teacher’s computer is full, so nothing more can be kept. Make room on it and try again.',
  'store-away': () =>
    'The server cannot reach its database right now. Keep this page open: what was sent waits here and is sent again by itself.',
  'restart-needed': () =>
    'The server has trouble with its disk. End it on the teacher’s computer and start it again: what it has kept stays there. Then try again.',
  'server-trouble': () => 'The server had trouble with that. Nothing has changed; try again in a moment.',
};

/** The sentence for any refusal. */
export const refusalSentence = (refusal: WireRefusal): string =>
  (refusals[refusal.code] as (r: WireRefusal) => string)(refusal);
