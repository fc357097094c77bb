import type { RoomId } from '../../shared/room/state.ts';
import type { Carried } from './cookies.ts';
import type { Link, Links } from './links.ts';

/** What a browser may do as a desk. */
export type Access =
  /** Everything. */
  | { readonly kind: 'owner' }
  /** Opens rooms, and has those that were opened with its link; or has the one room of its link. */
  | { readonly kind: 'link'; readonly link: Link }
  | { readonly kind: 'none' };

/** Who may sit at which desk. */
export class Accesses {
  readonly #isOwner: (key: string | undefined) => boolean;
  readonly links: Links;

  constructor(isOwner: (key: string | undefined) => boolean, links: Links) {
    this.#isOwner = isOwner;
    this.links = links;
  }

  async of({ ownerKey, deskToken }: Pick<Carried, 'ownerKey' | 'deskToken'>): Promise<Access> {
    if (this.#isOwner(ownerKey)) return { kind: 'owner' };
    const link = await this.links.find(deskToken);
    return link ? { kind: 'link', link } : { kind: 'none' };
  }

  /** Whether it is the desk of this room. */
  async has(access: Access, room: RoomId): Promise<boolean> {
    if (access.kind !== 'link') return access.kind === 'owner';
    if (access.link.kind === 'room') return access.link.room === room;
    return (await this.links.deskOf(room)) === access.link.id;
  }

  /** Whether it may give links to this room away and erase it: not with a link to this room alone. */
  async manages(access: Access, room: RoomId): Promise<boolean> {
    return mayOpen(access) && (await this.has(access, room));
  }

  /** The rooms of its list; `null`: all of them. */
  async rooms(access: Access): Promise<readonly RoomId[] | null> {
    if (access.kind !== 'link') return access.kind === 'owner' ? null : [];
    const { link } = access;
    return link.room === null ? this.links.roomsOf(link.id) : [link.room];
  }
}

/** By which the rates of a desk are counted. */
export const deskNamed = (access: Access): string => (access.kind === 'link' ? access.link.id : access.kind);

/** Whether it may open rooms of its own. */
export const mayOpen = (access: Access): boolean =>
  access.kind === 'owner' || (access.kind === 'link' && access.link.kind === 'desk');
