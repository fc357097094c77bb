import type { ClientAsk } from '../../shared/wire/protocol.ts';
import { type Checked, checkAnswers, checkDesign } from '../../shared/wire/schemas.ts';
import type { StoredDocument } from '../log/event-log.ts';
import { storedAnswers, storedDesign } from './documents.ts';

export type HandIn = Extract<ClientAsk, { kind: 'hand-in' | 'hand-in-answers' }>;

/** A drawing or answers, checked and ready to be kept; the refusal names the first bad place. */
export function handedIn(ask: HandIn): Checked<StoredDocument> {
  if (ask.kind === 'hand-in-answers') {
    const answers = checkAnswers(ask.answers);
    return answers.ok ? { ok: true, value: storedAnswers(answers.value) } : answers;
  }
  const design = checkDesign(ask.design);
  return design.ok ? { ok: true, value: storedDesign(design.value) } : design;
}
