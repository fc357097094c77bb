import { wordOf } from '../../shared/documents/design.ts';
import { textIn } from '../../shared/documents/values.ts';
import type { Staged } from '../parts/use-stage.ts';
import { useLocale, useWords } from '../parts/use-words.ts';

/** What is supposed of the stage, as a question; null where all is shown as it was handed in. */
export function useSupposedWords(stage: readonly Staged[]): string | null {
  const { stage: words } = useWords();
  const locale = useLocale();
  const changed = stage.find(({ whatIf }) => whatIf !== null);
  if (!changed?.whatIf) return null;
  const { whatIf, challenge, design } = changed;
  const { sheet, starts } = challenge;
  const from = starts[0] === 'finish' && sheet.finish ? sheet.finish : sheet.start;
  const marks = [...design.drawing.marks, ...sheet.given.marks];
  const mark = whatIf.kind === 'band' ? marks.find(({ id }) => id === whatIf.mark) : undefined;
  return words.supposed(whatIf, { from: textIn(from.name, locale), word: mark ? wordOf(mark) : '' });
}
