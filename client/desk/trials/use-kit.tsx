import { BookmarkPlus, Check } from 'lucide-react';
import { nanoid } from 'nanoid';
import { useState } from 'react';
import { Kit } from '../../../shared/documents/kit.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import { changesOf, type KitChange } from '../../../shared/prep/fit-kit.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { OwnKit } from '../../../shared/wire/kits.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { ROUTES } from '../../../shared/wire/routes.ts';
import { Button } from '../../parts/button.tsx';
import { postJson } from '../../parts/http.ts';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useAsk } from '../../parts/use-ask.ts';
import { useWords } from '../../parts/use-words.ts';
import { useDesk } from '../desk-store.ts';

interface UseKitProps {
  readonly room: RoomState | null;
  readonly kit: Kit;
  /** The same kit with other numbers. */
  readonly changed: Kit;
}

const MOST_NAME = 200;

/** What would change in the kit, and two ways to have it so. Nothing happens without a press. */
export function UseKit({ room, kit, changed }: UseKitProps) {
  const { fitting } = useWords();
  const changes = changesOf(kit, changed);
  const own = { ...changed, name: fitting.named(kit.name).slice(0, MOST_NAME) };
  if (changes.length === 0) return <p className="desk-quiet">{fitting.noChanges}</p>;
  return (
    <div className="fit-use">
      <p>{fitting.changes(changes.length)}:</p>
      <ul>
        {changes.map((change) => (
          <ChangeRow key={change.what} change={change} />
        ))}
      </ul>
      <p className="desk-quiet">{fitting.useNote}</p>
      <div className="fit-buttons">
        <KeepKit key={JSON.stringify(changes)} own={own} />
        {room && <PlayKit kit={kit} own={own} />}
      </div>
    </div>
  );
}

function ChangeRow({ change }: { readonly change: KitChange }) {
  const { fitting, actions, numbers } = useWords();
  const { what, before, after } = change;
  const degrees = (rad: number) => numbers.angle((rad * 180) / Math.PI);
  const [name, said] =
    what === 'wheelTrack'
      ? [fitting.track, fitting.wide]
      : what === 'corner'
        ? [fitting.cornerRule, degrees]
        : what === 'untidy'
          ? [fitting.untidyRule, degrees]
          : what === 'band'
            ? [fitting.bandRule, fitting.wide]
            : what === 'tidy-band'
              ? [fitting.tidyBandRule, fitting.wide]
              : [fitting.paceNamed(actions.pace(what)), fitting.speed];
  return (
    <li>
      {name}: {fitting.fromTo(said(before), said(after))}
    </li>
  );
}

/** On the shelf of this desk's own kits, from which any room may take it. */
function KeepKit({ own }: { readonly own: Kit }) {
  const { fitting } = useWords();
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const [state, setState] = useState<'not' | 'busy' | 'done'>('not');
  const keep = async () => {
    setState('busy');
    const id = nanoid(12);
    const body = writeDocument(OwnKit, { kit: { ...own, id }, earlier: [] });
    const answer = await postJson(ROUTES.saveKit, { id, body });
    setRefusal(answer.ok ? null : answer.refusal);
    setState(answer.ok ? 'done' : 'not');
  };
  return (
    <>
      <Button icon={<Icon of={BookmarkPlus} />} disabled={state !== 'not'} onClick={() => void keep()}>
        {state === 'done' ? fitting.saved : fitting.save}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}

/** In this room from its next challenge on, until the desk takes another one. */
function PlayKit({ kit, own }: { readonly kit: Kit; readonly own: Kit }) {
  const { fitting } = useWords();
  const { ask, refusal, busy } = useAsk();
  const offerUndo = useDesk((state) => state.offerUndo);
  const choose = (chosen: Kit) => ask({ kind: 'choose-kit', kit: writeDocument(Kit, chosen) });
  const play = async () => {
    if (await choose(own)) offerUndo({ said: fitting.plays, back: () => void choose(kit) });
  };
  return (
    <>
      <Button icon={<Icon of={Check} />} disabled={busy} onClick={() => void play()}>
        {fitting.play}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}
