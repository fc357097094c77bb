import type { EvidenceKind } from './evidence.ts';

/**
 * Identifiers of published frameworks for teaching computing and design, to which evidence may point. What
 * they say stands in our own words in `shared/wording`; none of their texts is quoted.
 *
 * - CSTA K–12 Computer Science Standards, revised 2017. 1A: ages 5 to 7, 1B: ages 8 to 11. (The subject of
 *   1A-AP-09 from memory.)
 * - England, National curriculum: computing programmes of study, Department for Education, 11 September 2013.
 *   Its points have no numbers of their own: they are named by key stage and subject.
 * - ISTE Standards for Students, 2016; numbered 1.1 to 1.7 since.
 * - Next Generation Science Standards, 2013 (the edition from memory).
 */
export const STANDARDS = [
  'CSTA 1A-AP-08',
  'CSTA 1A-AP-09',
  'CSTA 1A-AP-12',
  'CSTA 1A-AP-14',
  'CSTA 1B-AP-10',
  'CSTA 1B-AP-15',
  'CSTA 1B-AP-17',
  'England KS1 predict',
  'England KS2 design',
  'England KS2 correct',
  'England KS2 explain',
  'ISTE 1.5',
  'NGSS 3-5-ETS1-1',
  'NGSS 3-5-ETS1-2',
  'NGSS 3-5-ETS1-3',
] as const;
export type Standard = (typeof STANDARDS)[number];

/** What each kind of evidence points to. */
export const POINTS_TO: Readonly<Record<EvidenceKind, readonly Standard[]>> = {
  met: ['CSTA 1B-AP-10', 'England KS2 design', 'NGSS 3-5-ETS1-1'],
  'met-first': ['CSTA 1A-AP-12', 'ISTE 1.5'],
  mended: ['CSTA 1B-AP-15', 'England KS2 correct', 'NGSS 3-5-ETS1-3'],
  helped: ['CSTA 1A-AP-14', 'NGSS 3-5-ETS1-2'],
  'both-sides': ['CSTA 1A-AP-08', 'CSTA 1A-AP-09'],
  forecasts: ['England KS1 predict', 'ISTE 1.5'],
  reasons: ['CSTA 1B-AP-17', 'England KS2 explain'],
  closing: ['CSTA 1A-AP-08', 'England KS1 predict'],
};
