import type { PaceOffer } from '../../shared/prep/foretold.ts';
import type { Outcome } from '../../shared/room/driving.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const OUTCOMES: readonly Outcome['kind'][] = ['as-predicted', 'lost', 'other-branch', 'time-up'];
const spread = { error: 0.01, low: 1.034, high: 1.166 };
const counts = { trials: 9, robots: 1 };
const OFFERS: readonly PaceOffer[] = [
  { kind: 'few', ...counts },
  { kind: 'alike', times: 1.1, spread, ...counts },
  { kind: 'offer', times: 1.1, spread, ...counts },
];

/** Robots on paper, what they do beside what was foretold, and the kit fitted to them. */
export function ofDriving({ driving, beside, board, onPaper, fitting }: Wording): void {
  each([driving.turn, driving.inMinutes, driving.robot, board.drive.turn, board.drive.robot], (f) => f(3));
  each(OUTCOMES, driving.outcome);
  driving.timed(23.4);
  driving.noted('Ancla', 3, '…');
  driving.whose('Ancla', 3);
  each([1, 12], (same) => driving.foretold(same, 20));
  driving.arrives(0.5);
  driving.takes(12.5);
  driving.running(61_000);
  driving.sheet('Ancla');
  each([1, 12], (of) => beside.counted(1, of, 0.05, 0.95));
  beside.brier(0.1875, 0.25);
  beside.bin(0.5, 0.775);
  beside.came(3, 4);
  beside.range(0.3, 0.95);
  beside.mean(0.8);
  each(OFFERS, (found) => beside.offer(found, { trials: 8, robots: 3 }));
  onPaper.now(3);
  onPaper.later(2, 3);
  each([fitting.remove, fitting.runs, fitting.changes], (f) => f(3));
  each([fitting.paceNamed, fitting.named, fitting.bandLimit, fitting.round], (f) => f('…'));
  each([fitting.speed, fitting.wide, fitting.cornerLimit], (f) => f(45.5));
  each([fitting.range, fitting.fromTo], (f) => f('1', '2'));
  each([1, 5], (laps) => fitting.circle(laps, '80 mm'));
  each([1, 4], (robots) => fitting.from(8, robots));
  each([1, 6], (n) => fitting.allOf(n, 0.61));
}
