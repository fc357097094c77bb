import { Copy, FileDown, FileUp, Pencil, Plus, Trash2 } from 'lucide-react';
import { useRef, useState } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { hindrances } from '../../../shared/kit/versions.ts';
import { Button } from '../../parts/button.tsx';
import { useDates } from '../../parts/dates.ts';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { useDesk } from '../desk-store.ts';
import { useWholeWords } from '../whole-words.ts';
import { ChallengesOfKit } from './challenges-of-kit.tsx';
import { fileName, kitAsFile, kitFromFile, LARGEST_KIT_FILE, type ReadKit } from './kit-file.ts';

import {
  type Begun,
  isSameKit,
  type KitOnShelf,
  keepUnsaved,
  newKit,
  type OwnKits,
  unsavedKits,
} from './own-kits.ts';
import type { KitRoom } from './room-kit.ts';

export interface KitShelfProps {
  readonly kits: OwnKits;
  readonly room: KitRoom | null;
  readonly onEdit: (begun: Begun) => void;
}

/** Every kit that there is: the demo kit and one's own, what can be done with each, and more of them. */
export function KitShelf({ kits, room, onEdit }: KitShelfProps) {
  const { kit: words } = useWholeWords();
  const { shelf } = words;
  const { list, mayKeep, refusal } = kits;
  const copy = (kit: Kit) => onEdit(newKit({ ...kit, name: shelf.copyOf(kit.name).slice(0, 200) }));
  return (
    <section className="kit" aria-labelledby="kit-title">
      <h2 id="kit-title">{shelf.title}</h2>
      <p>{shelf.first}</p>
      {room?.kit && (
        <div className="kit-now">
          <p role="status">
            <strong>{shelf.nowPlays(room.kit.name)}</strong> {shelf.fromNext}
          </p>
          <ChallengesOfKit kit={room.kit} />
        </div>
      )}
      <Refused refusal={room?.refusal ?? null} />
      <UnsavedChanges onEdit={onEdit} />
      <ul className="kit-list">
        <KitRow kit={DEMO_KIT} of={null} kits={kits} room={room} onCopy={copy} onEdit={onEdit} />
        {list?.map((own) => (
          <KitRow key={own.id} kit={own.kit} of={own} kits={kits} room={room} onCopy={copy} onEdit={onEdit} />
        ))}
      </ul>
      {list === null && refusal === null && <p className="desk-quiet">{shelf.loading}</p>}
      {list?.length === 0 && mayKeep && <p>{shelf.none}</p>}
      {!mayKeep && <p>{shelf.notKept}</p>}
      <Refused refusal={refusal} />
      <MoreKits onEdit={onEdit} />
    </section>
  );
}

function UnsavedChanges({ onEdit }: Pick<KitShelfProps, 'onEdit'>) {
  const { shelf } = useWholeWords().kit;
  const [unsaved, setUnsaved] = useState(unsavedKits);
  const offerUndo = useDesk((desk) => desk.offerUndo);
  const keep = (id: string, kit: Kit | null) => {
    keepUnsaved(id, kit);
    setUnsaved(unsavedKits());
  };
  const throwAway = ({ id, kit }: Begun) => {
    keep(id, null);
    offerUndo({ said: shelf.thrownAway(kit.name), back: () => keep(id, kit) });
  };
  return unsaved.map((begun) => (
    <Notice key={begun.id} tone="caution">
      <p>{shelf.unsaved(begun.kit.name)}</p>
      <p className="kit-buttons">
        <Button onClick={() => onEdit(begun)}>{shelf.goOn}</Button>
        <Button look="quiet" onClick={() => throwAway(begun)}>
          {shelf.throwAway}
        </Button>
      </p>
    </Notice>
  ));
}

interface KitRowProps extends KitShelfProps {
  readonly kit: Kit;
  /** null: the demo kit. */
  readonly of: KitOnShelf | null;
  readonly onCopy: (kit: Kit) => void;
}

function KitRow({ kit, of, kits, room, onCopy, onEdit }: KitRowProps) {
  const { shelf } = useWholeWords().kit;
  const { name } = kit;
  const file = () =>
    saveFile(new Blob([kitAsFile(kit)], { type: 'application/json' }), fileName(kit, 'json'));
  return (
    <li className="kit-row">
      <div>
        <strong>{name}</strong>
        <KitState kit={kit} of={of} room={room} />
        {of !== null && of.earlier.length > 0 && <EarlierVersions of={of} onEdit={onEdit} />}
      </div>
      <p className="kit-buttons">
        {room && !(room.kit && isSameKit(room.kit, kit)) && (
          <Button
            aria-label={shelf.chooseThis(name)}
            disabled={room.busy}
            onClick={() => void room.choose(kit)}
          >
            {shelf.use}
          </Button>
        )}
        {of !== null && (
          <Button
            icon={<Icon of={Pencil} />}
            aria-label={shelf.editThis(name)}
            onClick={() => onEdit({ id: of.id, kit })}
          >
            {shelf.edit}
          </Button>
        )}
        <Button icon={<Icon of={Copy} />} aria-label={shelf.copyThis(name)} onClick={() => onCopy(kit)}>
          {shelf.copy}
        </Button>
        <Button
          look="quiet"
          icon={<Icon of={FileDown} />}
          aria-label={shelf.fileThis(name)}
          title={shelf.file}
          onClick={file}
        />
        {of !== null && kits.mayKeep && <RemoveKit of={of} kits={kits} />}
      </p>
    </li>
  );
}

function RemoveKit({ of, kits }: { readonly of: KitOnShelf; readonly kits: OwnKits }) {
  const { shelf } = useWholeWords().kit;
  const offerUndo = useDesk((desk) => desk.offerUndo);
  const { name } = of.kit;
  const remove = async () => {
    if (!(await kits.erase(of.id))) return;
    offerUndo({ said: shelf.removed(name), back: () => void kits.giveBack(of.id) });
  };
  return (
    <Button
      look="quiet"
      icon={<Icon of={Trash2} />}
      aria-label={shelf.removeThis(name)}
      title={shelf.remove}
      onClick={() => void remove()}
    />
  );
}

function KitState({ kit, of, room }: Pick<KitRowProps, 'kit' | 'of' | 'room'>) {
  const { shelf } = useWholeWords().kit;
  const dates = useDates();
  const wrong = hindrances(kit).length;
  const used = room?.kit && isSameKit(room.kit, kit);
  const usedEarlier = room?.kit && of !== null && !used && room.kit.id === of.id;
  const said = [
    of === null ? shelf.demo : shelf.saved(dates.moment(of.savedAt)),
    wrong === 0 ? shelf.sound : shelf.draft(wrong),
    ...(used ? [shelf.used] : []),
    ...(usedEarlier ? [shelf.usedEarlier] : []),
  ];
  return <p className="desk-quiet">{said.join(' · ')}</p>;
}

function EarlierVersions({ of, onEdit }: { readonly of: KitOnShelf } & Pick<KitShelfProps, 'onEdit'>) {
  const { shelf } = useWholeWords().kit;
  const dates = useDates();
  return (
    <details>
      <summary>{shelf.earlier(of.earlier.length)}</summary>
      <ul>
        {of.earlier.map(({ savedAt, kit }) => (
          <li key={savedAt}>
            <Button look="quiet" onClick={() => onEdit({ id: of.id, kit })}>
              {shelf.lookAt(dates.moment(savedAt))}
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}

function MoreKits({ onEdit }: Pick<KitShelfProps, 'onEdit'>) {
  const { kit: words, judging } = useWholeWords();
  const { shelf } = words;
  const input = useRef<HTMLInputElement>(null);
  const [read, setRead] = useState<ReadKit | null>(null);
  const open = async (file: File | undefined) => {
    if (!file) return;
    const found = file.size > LARGEST_KIT_FILE ? TOO_LARGE : kitFromFile(await file.text());
    setRead(found);
    if (input.current) input.current.value = '';
    if (found.ok) onEdit(newKit(found.kit));
  };
  return (
    <>
      <p className="kit-buttons">
        <Button
          icon={<Icon of={Plus} />}
          onClick={() => onEdit(newKit({ ...DEMO_KIT, name: shelf.newName, chart: [] }))}
        >
          {shelf.make}
        </Button>
        <Button icon={<Icon of={FileUp} />} onClick={() => input.current?.click()}>
          {shelf.open}
        </Button>
        <input
          ref={input}
          type="file"
          accept="application/json,.json"
          hidden
          aria-label={shelf.open}
          onChange={(event) => void open(event.target.files?.[0])}
        />
      </p>
      {read !== null && !read.ok && (
        <Notice tone="stops" role="alert">
          {read.trouble === 'too-large' ? shelf.tooLarge : shelf.notAKit}
          {read.problem && ` (${judging.place(read.problem.path)} ${judging.form(read.problem.code)}.)`}
        </Notice>
      )}
    </>
  );
}

const TOO_LARGE: ReadKit = { ok: false, trouble: 'too-large' };
