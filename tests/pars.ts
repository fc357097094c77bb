import type { Challenge } from '../shared/documents/challenge.ts';
import { readyChallenges } from '../shared/library/ready.ts';
import { isAboutMarks } from '../shared/search/marks-problem.ts';
import { KITS } from './kits.ts';

/** The ready challenges whose par is searched for, with every kit that can play them. */
export const searchedFor = (): Challenge[] =>
  KITS.flatMap(readyChallenges).flatMap((one) =>
    one.playable && isAboutMarks(one.challenge) ? [one.challenge] : [],
  );
