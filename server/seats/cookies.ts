import { isToken } from './tokens.ts';

/** The cookies of this server; both are out of reach of scripts. */
export const COOKIES = { owner: 'harbour_owner', team: 'harbour_team' } as const;

/** What a browser carries: the owner's key, and the token of a team's seat. */
export interface Carried {
  readonly ownerKey: string | undefined;
  readonly teamToken: string | undefined;
}

/** Reads a Cookie header. Anything malformed counts as absent. */
export function carriedBy(header: string | undefined): Carried {
  const pairs = new Map<string, string>();
  for (const part of (header ?? '').split(';')) {
    const cut = part.indexOf('=');
    if (cut > 0) pairs.set(part.slice(0, cut).trim(), part.slice(cut + 1).trim());
  }
  const team = pairs.get(COOKIES.team);
  return { ownerKey: pairs.get(COOKIES.owner), teamToken: isToken(team) ? team : undefined };
}
