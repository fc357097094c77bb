/** What is said while a run is shown. */
export const replay = {
  /** First what was met, band by band. */
  read: (word: string): string => `lee ${[...word].join(' ')}`,
  /** Then what it does: soon, while its action has not begun. */
  does: (action: string | null, acted: boolean): string => {
    if (action === null) return 'no hay tal marca';
    return acted ? action : `${action}, enseguida`;
  },
};
