import type { EvidenceKind } from '../../evidence/evidence.ts';
import type { Standard } from '../../evidence/frameworks.ts';
import type { Shown } from '../../evidence/record.ts';
import { numbers } from './numbers.ts';

const { capital, counted } = numbers;

const COUNTS = [
  'none',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
] as const;
const inWords = (n: number): string => COUNTS[n] ?? String(n);

/** What a class's page says first: "Seven of ten teams read a mark rightly from both sides." */
function headline({ kind, shown, of }: { readonly kind: EvidenceKind } & Shown): string {
  if (of === 0) return 'Nothing has been handed in yet.';
  const teams = `${capital(inWords(shown))} of ${inWords(of)} ${of === 1 ? 'team' : 'teams'}`;
  return `${teams} ${DID[kind]}.`;
}

/** What a team has done that has shown it. */
const DID: Readonly<Record<EvidenceKind, string>> = {
  met: 'met a challenge',
  'met-first': 'met a challenge at the first entry',
  mended: 'mended what was found in a drawing, and met the challenge',
  helped: 'met a challenge after “Mend it”',
  'both-sides': 'read a mark rightly from both sides',
  forecasts: 'foretold more than half of their runs rightly',
  reasons: 'found the right reason more often than not',
  closing: 'answered more than half of the last questions rightly',
};

const OF_TEAM: Readonly<Record<EvidenceKind, (n: number, of: number) => string>> = {
  met: (n, of) => `Met ${n} of ${counted(of, 'challenge', 'challenges')}`,
  'met-first': (n, of) => `At the first entry: ${n} of ${of}`,
  mended: (n, of) => `After mending what was found: ${n} of ${of}`,
  helped: (n, of) => `After “Mend it”: ${n} of ${of}`,
  'both-sides': (n, of) => `Marks read rightly from both sides: ${n} of ${of}`,
  forecasts: (n, of) => `Foretold ${n} of ${counted(of, 'run', 'runs')} rightly`,
  reasons: (n, of) => `Found the right reason ${n} of ${counted(of, 'time', 'times')}`,
  closing: (n, of) => `Answered ${n} of ${counted(of, 'last question', 'last questions')} rightly`,
};

/** What published frameworks mean by their identifiers, in our own words. */
const STANDARDS: Readonly<Record<Standard, string>> = {
  'CSTA 1A-AP-08': 'follow a step-by-step procedure',
  'CSTA 1A-AP-09': 'let symbols stand for information',
  'CSTA 1A-AP-12': 'plan what a program will do',
  'CSTA 1A-AP-14': 'find and mend errors',
  'CSTA 1B-AP-10': 'put sequences, events and conditions to work',
  'CSTA 1B-AP-15': 'test a program and mend it',
  'CSTA 1B-AP-17': 'explain what was chosen and why',
  'England KS1 predict': 'predict a simple program by reasoning',
  'England KS2 design': 'design towards a goal, and control something physical',
  'England KS2 correct': 'find and correct errors by reasoning',
  'England KS2 explain': 'explain how an algorithm works',
  'ISTE 1.5': 'think computationally',
  'NGSS 3-5-ETS1-1': 'work to criteria and within limits',
  'NGSS 3-5-ETS1-2': 'make several solutions and compare them',
  'NGSS 3-5-ETS1-3': 'test fairly, and see where it fails',
};
const LABELS: Readonly<Partial<Record<Standard, string>>> = {
  'England KS1 predict': 'England KS1',
  'England KS2 design': 'England KS2',
  'England KS2 correct': 'England KS2',
  'England KS2 explain': 'England KS2',
};

/** What a lesson has shown, on paper and at the desk. */
export const evidence = {
  headline,
  title: (word: string, date: string): string => `Room ${word}, opened ${date}`,
  ofClass: (kind: EvidenceKind, { shown, of }: Shown): string =>
    `${shown} of ${counted(of, 'team', 'teams')} ${DID[kind]}`,
  ofTeam: (kind: EvidenceKind, { shown, of }: Shown): string => OF_TEAM[kind](shown, of),
  standard: (id: Standard): string => `${LABELS[id] ?? id}: ${STANDARDS[id]}`,
  notes: [
    'Counted by the engine out of what was handed in, tried and answered. It drives a model: real robots may do otherwise. A team is its emblem; nobody’s name is kept.',
    'The pointers name published frameworks: CSTA K–12 Computer Science Standards, 2017; England, National curriculum, computing, 2013; ISTE Standards for Students, 2016; Next Generation Science Standards, 2013. What stands beside them is in our own words. They say where such evidence may belong; they are no proof that a standard is met.',
  ],
  desk: {
    title: 'Evidence',
    note: 'What the class and each team have shown, a page each, with pointers into published frameworks. Teams are their emblems.',
    pdf: 'Save the evidence (PDF)',
    csv: 'Save the evidence (CSV)',
  },
};
