import { useStore } from 'zustand';
import type { DrawingSession, Session } from './session.ts';

/** A part of the session; the component renders again when that part changes. */
export function useSessionState<T>(session: DrawingSession, select: (state: Session) => T): T {
  return useStore(session.store, select);
}
