import * as z from 'zod/mini';
import { Play } from '../../../shared/documents/challenge.ts';

const KEPT = 'harbour-lines.met-plays';
const Kept = z.array(z.string());

/** The ways to play that a kept text names; none where it cannot be read. */
export function metFrom(kept: string | null): readonly string[] {
  try {
    return Kept.parse(JSON.parse(kept ?? '[]'));
  } catch {
    return [];
  }
}

function met(): readonly string[] {
  try {
    return metFrom(window.localStorage.getItem(KEPT));
  } catch {
    // Without storage nobody is interrupted: help stays a button away.
    return Play.options;
  }
}

/** Whether this device has shown how this way is played. */
export const hasMet = (play: Play): boolean => met().includes(play);

export function noteMet(play: Play): void {
  if (hasMet(play)) return;
  try {
    window.localStorage.setItem(KEPT, JSON.stringify([...met(), play]));
  } catch {
    // It is shown once more, no worse.
  }
}
