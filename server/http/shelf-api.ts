import express, { type RequestHandler, Router } from 'express';
import type * as z from 'zod/mini';
import { writeDocument } from '../../shared/documents/values.ts';
import { checkForm, ShelfForm, ShelfIdForm } from '../../shared/wire/schemas.ts';
import type { Access } from '../seats/access.ts';
import { FORGET_AFTER_MS, OWNERS_SHELF, type Shelf } from '../seats/shelf.ts';
import { forDesk, forOpener } from './desks.ts';
import { asked, type HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';

/** One kind of thing that desks keep for themselves, and where it is asked for. */
export interface ShelfApi<T> {
  readonly shelf: Shelf;
  /** The form of what is kept; its file form goes over the wire. */
  readonly form: z.ZodMiniType<T, unknown>;
  readonly mostBytes: number;
  readonly routes: {
    readonly list: string;
    readonly save: string;
    readonly erase: string;
    readonly giveBack: string;
  };
}

/** The shelf of whoever opens rooms; that of the room's desk for a link to one room. */
async function shelfOf({ accesses }: HttpParts, access: Access, room?: string): Promise<string> {
  if (room !== undefined && (await accesses.has(access, room)))
    return (await accesses.links.deskOf(room)) ?? OWNERS_SHELF;
  if (access.kind === 'link' && access.link.room !== null)
    return (await accesses.links.deskOf(access.link.room)) ?? OWNERS_SHELF;
  return ownShelf(access);
}

const ownShelf = (access: Access): string => (access.kind === 'link' ? access.link.id : OWNERS_SHELF);

/** Listing, saving, erasing and giving back what a desk keeps across rooms. */
export function shelfApi<T>(parts: HttpParts, { shelf, form, mostBytes, routes }: ShelfApi<T>): Router {
  const router = Router();

  router.get(
    routes.list,
    forDesk(parts, async (request, response, access) => {
      response.json(await shelf.list(await shelfOf(parts, access, asked(request, 'room'))));
    }),
  );

  router.post(
    routes.save,
    forOpener(
      parts,
      async (request, response, access) => {
        const asked = checkForm(ShelfForm, request.body);
        if (!asked.ok) return refuse(response, asked.refusal);
        const { id } = asked.value;
        const body = checkForm(form, asked.value.body);
        if (!body.ok) return refuse(response, body.refusal);
        const of = ownShelf(access);
        if (!(await parts.rates.allows('shelve', of))) return refuse(response, { code: 'too-fast' });
        const put = await shelf.put(of, id, writeDocument(form, body.value));
        if (put === 'too-many') return refuse(response, { code: 'shelf-full', most: shelf.most });
        if (put === 'full') return refuse(response, { code: 'store-full' });
        response.status(204).end();
      },
      express.json({ limit: mostBytes }),
    ),
  );

  const changing = (
    change: (of: string, id: string) => Promise<'done' | 'full' | 'gone'>,
  ): RequestHandler[] =>
    forOpener(parts, async (request, response, access) => {
      const asked = checkForm(ShelfIdForm, request.body);
      if (!asked.ok) return refuse(response, asked.refusal);
      const changed = await change(ownShelf(access), asked.value.id);
      if (changed === 'full') return refuse(response, { code: 'store-full' });
      if (changed === 'gone') return refuse(response, { code: 'not-on-shelf' });
      response.status(204).end();
    });
  router.post(
    routes.erase,
    changing(async (of, id) => {
      const erased = await shelf.erase(of, id);
      // Whoever lists a shelf forgets what is past giving back, and nobody else may do so for long.
      if (erased === 'done') parts.erasing.later(() => shelf.list(of), FORGET_AFTER_MS);
      return erased;
    }),
  );
  router.post(
    routes.giveBack,
    changing((of, id) => shelf.giveBack(of, id)),
  );
  return router;
}
