import type { Rule } from './context.ts';
import { findingAt, markPlace } from './findings.ts';
import { isColouredStretch, isLoneInk, ownMarks } from './marks.ts';

/** A mark has as many bands as the reader takes for a word. A longer single ink is another rule's. */
export const bandCount: Rule = {
  id: 'R-band-count',
  check: (view) => {
    const { least, most } = view.kit.rules.bands;
    return ownMarks(view)
      .filter((mark) => !isLoneInk(mark, view.kit) && !isColouredStretch(mark, view.kit))
      .filter(({ bands }) => bands.length < least || bands.length > most)
      .map((mark) => {
        const few = mark.bands.length < least;
        const finding = findingAt('R-band-count', markPlace(view.track, mark), {
          variant: few ? 'few' : 'many',
          severity: 'may-stop',
          measured: mark.bands.length,
          allowed: few ? least : most,
          unit: 'count',
          remedy: few ? 'add-bands' : 'remove-bands',
        });
        return { finding };
      });
  },
};
