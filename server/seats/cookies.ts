import { isToken } from './tokens.ts';

/** The cookies of this server; all are out of reach of scripts. */
export const COOKIES = {
  owner: 'harbour_owner',
  desk: 'harbour_desk',
  team: 'harbour_team',
} as const;

/** What a browser carries: the owner's key, the secret of a desk's link, the token of a team's seat. */
export interface Carried {
  readonly ownerKey: string | undefined;
  readonly deskToken: string | undefined;
  readonly teamToken: string | undefined;
}

/** Reads a Cookie header. Anything malformed counts as absent. */
export function carriedBy(header: string | undefined): Carried {
  const pairs = new Map<string, string>();
  for (const part of (header ?? '').split(';')) {
    const cut = part.indexOf('=');
    if (cut > 0) pairs.set(part.slice(0, cut).trim(), part.slice(cut + 1).trim());
  }
  const token = (name: keyof typeof COOKIES) => {
    const value = pairs.get(COOKIES[name]);
    return isToken(value) ? value : undefined;
  };
  return { ownerKey: pairs.get(COOKIES.owner), deskToken: token('desk'), teamToken: token('team') };
}
