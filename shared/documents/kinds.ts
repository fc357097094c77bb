import { Answers, AnswersVerdict } from './answers.ts';
import { Challenge } from './challenge.ts';
import { ClosingCheck } from './closing-check.ts';
import { Design } from './design.ts';
import { Kit } from './kit.ts';
import { Verdict } from './verdict.ts';

/** The documents that a room keeps by their hash, and the form of each. */
export const DOCUMENT_SCHEMAS = {
  kit: Kit,
  challenge: Challenge,
  design: Design,
  verdict: Verdict,
  answers: Answers,
  'answers-verdict': AnswersVerdict,
  'closing-check': ClosingCheck,
} as const;

export type DocumentKind = keyof typeof DOCUMENT_SCHEMAS;

export interface DocumentBodies {
  readonly kit: Kit;
  readonly challenge: Challenge;
  readonly design: Design;
  readonly verdict: Verdict;
  readonly answers: Answers;
  readonly 'answers-verdict': AnswersVerdict;
  readonly 'closing-check': ClosingCheck;
}

export const DOCUMENT_KINDS = Object.keys(DOCUMENT_SCHEMAS) as DocumentKind[];
