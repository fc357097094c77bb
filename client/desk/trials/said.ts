import type { Outcome } from '../../../shared/room/driving.ts';
import type { Wording } from '../../../shared/wording/wording.ts';

/** "as predicted, 23.4 s". */
export function saidOf(outcome: Outcome, words: Wording['driving']): string {
  const said = words.outcome(outcome.kind);
  return outcome.kind === 'as-predicted' && outcome.seconds !== null
    ? `${said}, ${words.timed(outcome.seconds)}`
    : said;
}
