/** A row more than there are teams, so that somebody who comes late sees a place. */
export const berthsFor = (teams: number): number =>
  teams < 12 ? 12 : teams < 20 ? 20 : teams < 30 ? 30 : 40;
