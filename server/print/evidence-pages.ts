import {
  type ClassEvidence,
  EVIDENCE_KINDS,
  type EvidenceKind,
  headlineOf,
  type TeamEvidence,
} from '../../shared/evidence/evidence.ts';
import { POINTS_TO } from '../../shared/evidence/frameworks.ts';
import type { Shown } from '../../shared/evidence/record.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { badge, paragraph, strongRule } from './blocks.ts';
import { type Block, flowed } from './flow.ts';
import { COLORS, type Page, paperSize } from './page.ts';
import type { PrintTools } from './tools.ts';

/** What the room says of the lesson beside the evidence itself. */
export interface PrintedEvidence {
  readonly evidence: ClassEvidence;
  readonly word: string;
  /** ISO date of the lesson. */
  readonly date: string;
  readonly emblemOf: (team: string) => string;
}

/** The page of the class: one plain sentence first, then all that was shown, and where it points to. */
export function classEvidencePages(printed: PrintedEvidence, paper: PaperName, tools: PrintTools): Page[] {
  const size = paperSize(paper, false);
  const { evidence: said } = tools.words;
  const { evidence, word, date } = printed;
  const blocks = [
    paragraph(said.headline(headlineOf(evidence)), size.w, { size: 8, bold: true, after: 3 }),
    strongRule(size.w),
    paragraph(said.title(word, date), size.w, { color: COLORS.quiet, after: 5 }),
    ...EVIDENCE_KINDS.flatMap((kind) =>
      kindBlocks(said.ofClass(kind, evidence.together[kind]), kind, evidence.together[kind], size.w, tools),
    ),
    ...notes(size.w, tools),
  ];
  return flowed(blocks, paper);
}

/** A team's page; the team is its emblem. */
export function teamEvidencePages(
  { team, evidence }: TeamEvidence,
  { word, date, emblemOf }: PrintedEvidence,
  paper: PaperName,
  tools: PrintTools,
): Page[] {
  const size = paperSize(paper, false);
  const { evidence: said, emblems } = tools.words;
  const emblem = emblemOf(team);
  const blocks = [
    badge(emblem, 14, size.w, tools),
    paragraph(emblems.name(emblem), size.w, { size: 8, bold: true, after: 3 }),
    strongRule(size.w),
    paragraph(said.title(word, date), size.w, { color: COLORS.quiet, after: 5 }),
    ...EVIDENCE_KINDS.flatMap((kind) =>
      kindBlocks(said.ofTeam(kind, evidence[kind]), kind, evidence[kind], size.w, tools),
    ),
    ...notes(size.w, tools),
  ];
  return flowed(blocks, paper);
}

/** What was shown, and below it what that points to; nothing of what there was no chance to show. */
function kindBlocks(
  sentence: string,
  kind: EvidenceKind,
  { of }: Shown,
  w: Mm,
  { words }: PrintTools,
): Block[] {
  if (of === 0) return [];
  const points = POINTS_TO[kind].map((id) => words.evidence.standard(id));
  return [
    paragraph(sentence, w, { size: 5, bold: true, after: 0.5 }),
    paragraph(points.join(' · '), w, { size: 3.4, color: COLORS.quiet, indent: 4, after: 4 }),
  ];
}

const notes = (w: Mm, { words }: PrintTools): Block[] =>
  words.evidence.notes.map((note) => paragraph(note, w, { size: 3.4, color: COLORS.quiet }));
