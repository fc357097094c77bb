import type { KeptHere } from '../../shared/wording/en/kept.ts';
import { forgetText, keepText, keptText } from './kept-text.ts';

/** Everything that pages of this project keep in a browser, apart from cookies, which scripts can't see. */

const OURS = 'harbour-lines';
/** When it is to be erased, ms; until then that can be taken back. */
const ERASE_AT = `${OURS}.erase-at`;

const TEXTS: readonly (readonly [beginning: string, what: KeptHere])[] = [
  [`${OURS}.device`, 'device'],
  [`${OURS}.desk.rota`, 'rota'],
  [`${OURS}.desk.fit`, 'fit'],
  [`${OURS}.desk.check`, 'check'],
  [`${OURS}.builder`, 'builder'],
  [`${OURS}.desk.kits`, 'kits'],
  [`${OURS}.desk.keys`, 'keys'],
  [`${OURS}.met-plays`, 'plays'],
  [`${OURS}.outbox.`, 'outbox'],
];

/** What a key of the browser's storage stands for; undefined where it is not of this project. */
export function meantBy(key: string): KeptHere | undefined {
  if (!key.startsWith(OURS) || key === ERASE_AT) return undefined;
  return TEXTS.find(([beginning]) => key.startsWith(beginning))?.[1] ?? 'other';
}

function ownKeys(): string[] {
  try {
    return Object.keys(window.localStorage).filter((key) => key.startsWith(OURS));
  } catch {
    return [];
  }
}

/** Names of databases; none where the browser does not tell. */
async function ownDatabases(): Promise<string[]> {
  try {
    const all = await window.indexedDB.databases();
    return all.flatMap(({ name }) => (name?.startsWith(OURS) ? [name] : []));
  } catch {
    return [];
  }
}

/** Browsers have these only over https and on the machine itself. */
const ownCaches = async (): Promise<string[]> =>
  'caches' in window ? (await caches.keys()).filter((name) => name.startsWith(OURS)) : [];

/** What there is, each kind once. */
export async function keptHere(): Promise<readonly KeptHere[]> {
  const texts = ownKeys().flatMap((key) => meantBy(key) ?? []);
  const drawings = (await ownDatabases()).map((): KeptHere => 'drawings');
  const files = (await ownCaches()).map((): KeptHere => 'files');
  return [...new Set([...texts, ...drawings, ...files])];
}

const deleted = (name: string): Promise<void> =>
  new Promise((resolve) => {
    const asked = window.indexedDB.deleteDatabase(name);
    // Another tab may hold it open: it goes once that tab is closed.
    asked.onsuccess = asked.onerror = asked.onblocked = () => resolve();
  });

async function eraseNow(): Promise<void> {
  for (const key of ownKeys()) window.localStorage.removeItem(key);
  await Promise.all((await ownDatabases()).map(deleted));
  await Promise.all((await ownCaches()).map((name) => caches.delete(name)));
}

/** Marks what this browser keeps, to be erased at `at` ms by `eraseWhatIsDue`, now or at the next start. */
export const eraseHereAt = (at: number): void => keepText(ERASE_AT, String(at));

/** Takes the mark away. */
export const keepHere = (): void => forgetText(ERASE_AT);

/** Erases what is marked and due; resolves to whether anything was. */
export async function eraseWhatIsDue(now: number): Promise<boolean> {
  const at = keptText(ERASE_AT);
  if (at == null || now < Number(at)) return false;
  await eraseNow();
  return true;
}
