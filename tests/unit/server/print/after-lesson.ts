import type { PrintedEvidence } from '../../../../server/print/evidence-pages.ts';
import type { PrintedPicture } from '../../../../server/print/picture-pages.ts';
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

const found = { id: 'R-corner-1', rule: 'R-corner', severity: 'stops', unit: 'degrees' } as const;
const sharp = { ...found, measured: 40, allowed: 95 };
const lost = { ending: 'lost', chance: 1 } as const;
export const PICTURE: PrintedPicture = {
  rounds: [
    {
      title: 'One fast stretch',
      challenge,
      picture: {
        rules: [
          {
            rule: 'R-corner',
            teams: 3,
            entries: 4,
            worst: { ...sharp, place: { kind: 'point', at: { x: 1, y: 1 } } },
          },
        ],
        failures: [
          { ...lost, entry: 'e1', team: 'a', at: { x: 150, y: 40 } },
          { ...lost, entry: 'e2', team: 'b', at: { x: 152, y: 40 } },
        ],
        teams: [{ team: 'a', tries: 4, entries: 2, points: 75, met: false, onTask: 330_000 }],
        minutes: { screen: 600_000, paper: 120_000 },
      },
    },
  ],
  whole: { screen: 900_000, paper: 300_000 },
  word: 'plum-42',
  date: '2026-03-04',
  emblemOf: () => 'kite',
};
