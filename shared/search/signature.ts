import type { Challenge } from '../documents/challenge.ts';
import type { RunEvent } from '../documents/trace.ts';
import { isInside } from '../geometry/polygon.ts';
import type { RailRuns } from './rail-run.ts';

/** mm and s within which runs of goals about way, pace or time are taken as one. */
const SAME_WAY = 10;
const SAME_TIME = 0.5;

/** What goals can see of all runs, as text: where each goes, what it does where, and how it ends. */
export const signatureOf = (challenge: Challenge, { runs }: RailRuns, numeric: boolean): string =>
  runs
    .map(({ trace, passes }) => {
      const rails = passes.map((pass) => pass.rail).join('.');
      const done = trace.events.map((event) => eventText(challenge, event, numeric)).join('');
      return `${trace.start} ${rails} ${done} ${trace.ending}`;
    })
    .join('/');

function eventText({ sheet }: Challenge, event: RunEvent, numeric: boolean): string {
  switch (event.kind) {
    case 'gate':
      return `g${event.gate}`;
    case 'turn-back':
      return 't';
    case 'wait':
    case 'signal':
    case 'end': {
      const areas = sheet.areas.filter(({ polygon }) => isInside(polygon, event));
      return `${event.kind}(${areas.map(({ id }) => id).join()})`;
    }
    case 'pace':
      return numeric ? `${event.pace}${Math.round(event.way / SAME_WAY)}` : '';
    case 'finish':
      return numeric ? `f${Math.round(event.t / SAME_TIME)}` : 'f';
    default:
      return '';
  }
}
