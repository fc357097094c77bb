import { actionOf, reversed } from '../documents/kit.ts';
import type { LaidMark } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { findingAt, lengths, markPlace } from './findings.ts';
import { isLoneInk, isMark, type Meeting, meetings, ownMarks } from './marks.ts';

/**
 * A mark is in the chart as it reads from every side from which a robot can come; where none comes, from
 * one side at least. A single ink is long enough to be a coloured stretch.
 */
export const unknownMark: Rule = {
  id: 'R-unknown-mark',
  check: (view) => {
    const met = meetings(view);
    return ownMarks(view).flatMap((mark) => [...loneInk(view, mark), ...unknownWord(view, mark, met)]);
  },
};

function loneInk(view: RuleView, mark: LaidMark): Draft[] {
  if (!isLoneInk(mark, view.kit)) return [];
  const finding = findingAt('R-unknown-mark', markPlace(view.track, mark), {
    variant: 'single-ink',
    severity: 'untidy',
    ...lengths(mark.to - mark.from, view.kit.rules.bands.colouredFrom),
    remedy: 'choose-mark',
  });
  return [{ finding }];
}

function unknownWord(view: RuleView, mark: LaidMark, met: readonly Meeting[]): Draft[] {
  const { most } = view.kit.rules.bands;
  if (!isMark(mark) || mark.bands.length > most) return [];
  const words = met.filter((m) => m.mark.mark === mark).map((m) => m.mark.word);
  const known = (word: string): boolean => actionOf(view.kit, word) !== undefined;
  const fine = words.length > 0 ? words.every(known) : known(mark.word) || known(reversed(mark.word));
  if (fine) return [];
  const finding = findingAt('R-unknown-mark', markPlace(view.track, mark), {
    variant: 'word',
    severity: 'untidy',
    remedy: 'choose-mark',
  });
  return [{ finding }];
}
