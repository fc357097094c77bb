import type { PrintedEvidence } from '../../../../server/print/evidence-pages.ts';
import { readyNamed } from '../../../../server/rooms/ready.ts';
import { closingCheckOf, type MadeCheck } from '../../../../shared/evidence/closing-check.ts';
import { EVIDENCE_KINDS, type EvidenceOf } from '../../../../shared/evidence/evidence.ts';

/** What a lesson leaves for paper: a closing check about two drawings, and what one team has shown. */

const { challenge } = readyNamed('one-fast-stretch')!;
const sound = challenge.model!;
const bare = { ...sound, drawing: { ...sound.drawing, marks: [] } };

function made(making: Generator<unknown, MadeCheck | undefined>): MadeCheck {
  for (let step = making.next(); ; step = making.next()) if (step.done) return step.value!;
}

export const CLOSING: MadeCheck = made(
  closingCheckOf(
    [
      { challenge, design: sound },
      { challenge, design: bare },
    ],
    3,
  ),
);

const shown = { shown: 3, of: 4 };
const evidence = Object.fromEntries(EVIDENCE_KINDS.map((kind) => [kind, shown])) as EvidenceOf;
export const EVIDENCE: PrintedEvidence = {
  evidence: { together: evidence, teams: [{ team: 'a', evidence }] },
  word: 'plum-42',
  date: '2026-03-04',
  emblemOf: () => 'kite',
};
