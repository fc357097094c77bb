import { useEffect, useState } from 'react';
import type { RoomState } from '../../shared/room/state.ts';

/** A room in which nothing has happened for so long is left alone, and screens with it, ms. */
const LEFT_ALONE_MS = 45 * 60_000;

/**
 * Keeps this page's screen on while a lesson runs, where browsers can do that: over https and on the
 * machine itself (W3C Screen Wake Lock). A page that is hidden loses the lock, and asks again.
 */
export function useWakeLock(room: RoomState | null): void {
  const isRunning = room !== null && room.phase !== 'close' && room.paused === null;
  const seq = room?.seq ?? 0;
  const [quietSince, setQuietSince] = useState<number | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setQuietSince(seq), LEFT_ALONE_MS);
    return () => clearTimeout(timer);
  }, [seq]);
  const on = isRunning && quietSince !== seq;
  useAwake(on);
}

/** Keeps the screen on for as long as it is wanted, where browsers can do that. */
export function useAwake(on: boolean): void {
  useEffect(() => (on ? keepAwake() : undefined), [on]);
}

/** Returns how to let the screen go by its own rules again. */
function keepAwake(): () => void {
  // Not everywhere, whatever the types say: plain http has none.
  const locks = 'wakeLock' in navigator ? navigator.wakeLock : undefined;
  let lock: WakeLockSentinel | undefined;
  let wanted = true;
  const ask = async () => {
    if (document.visibilityState !== 'visible') return;
    // Refused on a low battery: then the screen goes by its own rules.
    const got = await locks?.request('screen').catch(() => undefined);
    if (wanted) lock = got;
    else await got?.release();
  };
  const askAgain = () => void ask();
  askAgain();
  document.addEventListener('visibilitychange', askAgain);
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', askAgain);
    void lock?.release();
  };
}
