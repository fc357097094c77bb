import * as z from 'zod/mini';
import { Play } from '../../../shared/documents/challenge.ts';
import { keepText, keptText } from '../../parts/kept-text.ts';

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
  const kept = keptText(KEPT);
  // Without storage nobody is interrupted: help stays a button away.
  return kept === undefined ? Play.options : metFrom(kept);
}

/** Whether this device has shown how this way is played. */
export const hasMet = (play: Play): boolean => met().includes(play);

export function noteMet(play: Play): void {
  if (!hasMet(play)) keepText(KEPT, JSON.stringify([...met(), play]));
}
