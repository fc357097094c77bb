import type { Challenge } from '../../shared/documents/challenge.ts';
import { fleetOf } from '../../shared/judge/fleet.ts';
import { studyOf } from '../../shared/judge/study.ts';
import type { FleetAnswer, FleetOrder } from './driving-fleet.ts';
import { startJudgeHere } from './judge-here.ts';
import type { JudgeAnswer, JudgeOrder } from './judging.ts';
import type { StudyOrder, StudyPiece, StudyRest } from './studying.ts';

/** The engine beside the page, so that nothing on the page stutters while a run is worked out. */
const scope = self as unknown as {
  onmessage: ((event: MessageEvent<JudgeOrder | StudyOrder | StudyRest | FleetOrder>) => void) | null;
  postMessage: (answer: JudgeAnswer | StudyPiece | FleetAnswer) => void;
};

const judge = startJudgeHere();
/** The last of each series, kept as one object, by which the judge knows that sheet and kit are the same. */
const challenges = new Map<string, Challenge>();

function judged(order: JudgeOrder): void {
  const challenge = order.challenge ?? challenges.get(order.series);
  if (!challenge) return;
  challenges.set(order.series, challenge);
  try {
    scope.postMessage({ id: order.id, outcome: judge(challenge, order) });
  } catch (error) {
    // The engine never throws for documents that their schemas accept; a page that goes on is better.
    scope.postMessage({ id: order.id, trouble: String(error) });
  }
}

/** The study that is wanted; none is 0. */
let wanted = 0;

/** Resolves after messages that wait have been heard. */
const turn = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });

async function study(order: StudyOrder): Promise<void> {
  wanted = order.id;
  for (const piece of studyOf(order.challenge, order.design)) {
    scope.postMessage({ id: order.id, piece });
    await turn();
    if (wanted !== order.id) return;
  }
}

/** Whoever wants no more of it ends this worker. */
function fleet({ challenge, design, weather }: FleetOrder): void {
  for (const piece of fleetOf(challenge, design, weather)) scope.postMessage({ fleet: piece });
  scope.postMessage({ fleet: null });
}

scope.onmessage = ({ data }) => {
  if (!('kind' in data)) judged(data);
  else if (data.kind === 'study') void study(data);
  else if (data.kind === 'fleet') fleet(data);
  else wanted = 0;
};
