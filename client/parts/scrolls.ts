/** For an element that scrolls or is moved on by keys, and holds nothing to press: keys must reach it. */
export const REACHED_BY_KEYS = { tabIndex: 0 } as const;
