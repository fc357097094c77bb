import { type Finding, SEVERITIES } from '../../shared/documents/verdict.ts';

/** The gravest first; equal ones stay in the order of the rules. */
export const gravest = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort((a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity));
