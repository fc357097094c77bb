/** What this browser keeps under a key; null where nothing was kept, undefined where it keeps nothing at all. */
export function keptText(key: string): string | null | undefined {
  try {
    return window.localStorage.getItem(key);
  } catch {
    return undefined;
  }
}

/** Keeps a text over reloads, where the browser does that: storage may be full or switched off. */
export function keepText(key: string, text: string): void {
  try {
    window.localStorage.setItem(key, text);
  } catch {
    // Not kept over a reload, no more.
  }
}

/** Keeps it no longer. */
export function forgetText(key: string): void {
  try {
    window.localStorage.removeItem(key);
  } catch {
    // Nothing was kept then.
  }
}
