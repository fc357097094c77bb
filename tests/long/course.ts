import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Design, EMPTY_DESIGN } from '../../shared/documents/design.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { disturbedRuns, ofForty } from '../disturbed.ts';

/** The tolerances times 1, 1.5 and 3, robots and hand-drawn ink alike. */
const WEATHERS = [1, 1.5, 3] as const;

/** What the course says of its faulty and unmarked versions, tried on another program of the same model. */
const TRIED: Readonly<Record<string, string>> = {
  'sharp-corner': '15',
  'overlooked-mark': '0',
  'painted-in-a-hurry': '0 (one of two mended: 2 and 0)',
  'late-choice': '21',
  'in-time-for-the-ferry': '0',
};

const said = (counts: readonly number[]): string => counts.join(' and ');

/**
 * Prints, for each ready challenge, how many of forty make it, or reach the lighthouse where chance decides;
 * well when every sound one is made by all in calm weather.
 */
export async function long(): Promise<boolean> {
  const say = (...cells: readonly (string | number)[]) => process.stdout.write(`| ${cells.join(' | ')} |\n`);
  say('#', 'challenge', 'way', 'calm', 'breezy', 'stormy', 'faulty or unmarked', 'tried before');
  say(...Array.from({ length: 8 }, () => '---'));
  const sound = readyChallenges(DEMO_KIT).map((one) => {
    if (!one.playable) return false;
    const { challenge } = one;
    const count = isChance(challenge) ? atLighthouse : ofForty;
    const weathers = WEATHERS.map((weather) => count(challenge, challenge.model, weather));
    const fault = faulty(challenge);
    const without = fault ? said(ofForty(challenge, fault)) : '';
    say(one.topic, one.key, challenge.play, ...weathers.map(said), without, TRIED[one.key] ?? '');
    return weathers[0]!.every((count) => count === 40) || isChance(challenge);
  });
  return sound.every(Boolean);
}

/** What a mend begins with; what is left where marks are to be filled in. */
function faulty({ play, begin }: Challenge): Design | undefined {
  return play === 'mend' ? begin : play === 'fill-in' ? EMPTY_DESIGN : undefined;
}

/** How many of forty see the lighthouse, where chance decides it. */
const atLighthouse = (challenge: Challenge, design = EMPTY_DESIGN, weather = 1): number[] => [
  disturbedRuns(challenge, design, 'start', { weather }).filter((run) => run.ending === 'finished').length,
];

/** Where an answer is "left to chance", no single robot gives it. */
const isChance = ({ asks = [] }: Challenge): boolean => asks.some((ask) => ask.kind === 'how-many');
