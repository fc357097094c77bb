import { judgeHere } from './judge-here.ts';
import type { JudgeAnswer, JudgeOrder } from './judging.ts';

/** The engine beside the page, so that nothing on the page stutters while a run is worked out. */
const scope = self as unknown as {
  onmessage: ((event: MessageEvent<JudgeOrder>) => void) | null;
  postMessage: (answer: JudgeAnswer) => void;
};

scope.onmessage = ({ data }) => {
  try {
    scope.postMessage({ id: data.id, judged: judgeHere(data.challenge, data.design, data.level) });
  } catch (error) {
    // The engine never throws for documents that their schemas accept; a page that goes on is better.
    scope.postMessage({ id: data.id, trouble: String(error) });
  }
};
