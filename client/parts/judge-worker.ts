import type { Challenge } from '../../shared/documents/challenge.ts';
import { startJudgeHere } from './judge-here.ts';
import type { JudgeAnswer, JudgeOrder } from './judging.ts';

/** The engine beside the page, so that nothing on the page stutters while a run is worked out. */
const scope = self as unknown as {
  onmessage: ((event: MessageEvent<JudgeOrder>) => void) | null;
  postMessage: (answer: JudgeAnswer) => void;
};

const judge = startJudgeHere();
/** Kept as one object, by which the judge knows that sheet and kit are the same. */
let challenge: Challenge | null = null;

scope.onmessage = ({ data }) => {
  challenge = data.challenge ?? challenge;
  if (!challenge) return;
  try {
    scope.postMessage({ id: data.id, judged: judge(challenge, data.design) });
  } catch (error) {
    // The engine never throws for documents that their schemas accept; a page that goes on is better.
    scope.postMessage({ id: data.id, trouble: String(error) });
  }
};
