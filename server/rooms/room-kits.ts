import { Kit } from '../../shared/documents/kit.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { hindrances } from '../../shared/kit/versions.ts';
import type { DocumentId, RoomState } from '../../shared/room/state.ts';
import { type Checked, checkKitForm } from '../../shared/wire/schemas.ts';
import type { EventLog, StoredDocument } from '../log/event-log.ts';
import { storedKit } from './documents.ts';

/** Kits are small, and a server has few at a time. */
const MOST_KNOWN = 100;

/** The kits that rooms play with, each read once: a document never changes. */
export class RoomKits {
  readonly #log: Pick<EventLog, 'document'>;
  readonly #known = new Map<DocumentId, Kit>();

  constructor(log: Pick<EventLog, 'document'>) {
    this.#log = log;
  }

  /** The kit that a room has chosen, or the one that every room begins with. */
  async of({ id, kit }: Pick<RoomState, 'id' | 'kit'>): Promise<Kit> {
    if (kit === null) return DEMO_KIT;
    const known = this.#known.get(kit);
    if (known) return known;
    const stored = await this.#log.document(id, kit);
    const read = stored && parseDocument(Kit, JSON.parse(stored.body));
    if (!read?.ok) throw new Error(`the kit of room ${id} cannot be read`);
    if (this.#known.size >= MOST_KNOWN) this.#known.clear();
    this.#known.set(kit, read.value);
    return read.value;
  }
}

const BEGINNING = storedKit(DEMO_KIT).id;

/**
 * A kit that somebody wants to play with, ready to be kept; null where it is the one that every room begins
 * with, so that who goes back to it is where they were. Refused where its checks find something wrong.
 */
export function kitToUse(input: unknown): Checked<StoredDocument | null> {
  const kit = checkKitForm(input);
  if (!kit.ok) return kit;
  const [first, ...others] = hindrances(kit.value);
  const stored = storedKit(kit.value);
  if (!first) return { ok: true, value: stored.id === BEGINNING ? null : stored };
  const { code: problem, path } = first;
  return {
    ok: false,
    refusal: { code: 'kit-not-sound', problem, path: path.join('.'), more: others.length },
  };
}
