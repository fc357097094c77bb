import type { Link } from '../link/connect.ts';
import { keepRoom } from './kept-room.ts';

/**
 * Lets the page be opened again while the server is away, where browsers allow that: over https and on
 * the machine itself. Everything else works without it.
 */
export function workOffline(link: Link): void {
  if (!window.isSecureContext || !('serviceWorker' in navigator)) return;
  keepRoom(link);
  // A browser that refuses (a private window, storage switched off) goes on as over plain http.
  const register = () => void navigator.serviceWorker.register('/offline-worker.js').catch(() => undefined);
  if (document.readyState === 'complete') register();
  else window.addEventListener('load', register);
}
