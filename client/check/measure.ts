import { type CheckReport, ROUTES } from '../../shared/wire/protocol.ts';

const QUESTIONS = 12;
/** A network that lets pages through may still hold back the live link; so long is waited for it, ms. */
const LIVE_WITHIN_MS = 5000;

async function timed(path: string): Promise<number> {
  const began = performance.now();
  const response = await fetch(path, { cache: 'no-store' });
  await response.arrayBuffer();
  if (!response.ok) throw new Error(`${path} answered ${response.status}`);
  return performance.now() - began;
}

/** Whether a websocket to the server that this page came from opens. */
function opensLive(): Promise<boolean> {
  const scheme = location.protocol === 'https:' ? 'wss' : 'ws';
  const socket = new WebSocket(`${scheme}://${location.host}/socket.io/?EIO=4&transport=websocket`);
  return new Promise((resolve) => {
    const end = (live: boolean) => {
      clearTimeout(timer);
      socket.close();
      resolve(live);
    };
    const timer = setTimeout(() => end(false), LIVE_WITHIN_MS);
    socket.addEventListener('open', () => end(true));
    socket.addEventListener('error', () => end(false));
  });
}

/** Measures the way to the server; `step` hears how much is done, 0 to 1. Rejects where the server is gone. */
export async function measure(step: (done: number) => void): Promise<CheckReport> {
  const trips: number[] = [];
  for (let i = 0; i < QUESTIONS; i++) {
    trips.push(await timed(ROUTES.health));
    step((i + 1) / (QUESTIONS + 2));
  }
  const pageMs = await timed(ROUTES.checkLoad);
  step((QUESTIONS + 1) / (QUESTIONS + 2));
  const live = await opensLive();
  step(1);
  // The first question also opens the connection.
  const sorted = trips.slice(1).sort((a, b) => a - b);
  return { roundTripMs: sorted[Math.floor(sorted.length / 2)]!, pageMs, live };
}
