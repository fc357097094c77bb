import { BookmarkPlus, Check } from 'lucide-react';
import { useState } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { changesOf, type KitChange } from '../../../shared/prep/fit-kit.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useAsk } from '../../parts/use-ask.ts';
import { useDesk } from '../desk-store.ts';
import { fileForm, newKit, useOwnKits } from '../kit/own-kits.ts';
import { useWholeWords } from '../whole-words.ts';

interface UseKitProps {
  readonly room: RoomState | null;
  readonly kit: Kit;
  /** The same kit with other numbers. */
  readonly changed: Kit;
}

const MOST_NAME = 200;

/** What would change in the kit, and two ways to have it so. Nothing happens without a press. */
export function UseKit({ room, kit, changed }: UseKitProps) {
  const { fitting } = useWholeWords();
  const changes = changesOf(kit, changed);
  const isNamed = kit.name.endsWith(fitting.named(''));
  const own = { ...changed, name: isNamed ? kit.name : fitting.named(kit.name).slice(0, MOST_NAME) };
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
        <KeepKit key={JSON.stringify(changes)} room={room} own={own} />
        {room && <PlayKit kit={kit} own={own} />}
      </div>
    </div>
  );
}

function ChangeRow({ change }: { readonly change: KitChange }) {
  const { fitting, actions, numbers } = useWholeWords();
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
function KeepKit({ room, own }: { readonly room: RoomState | null; readonly own: Kit }) {
  const { fitting } = useWholeWords();
  const { keep, mayKeep, refusal } = useOwnKits(room?.id ?? null);
  const [state, setState] = useState<'not' | 'busy' | 'done'>('not');
  if (!mayKeep) return null;
  const put = async () => {
    setState('busy');
    setState((await keep(newKit(own).id, own)) ? 'done' : 'not');
  };
  return (
    <>
      <Button icon={<Icon of={BookmarkPlus} />} disabled={state !== 'not'} onClick={() => void put()}>
        {state === 'done' ? fitting.saved : fitting.save}
      </Button>
      <Refused refusal={refusal} />
    </>
  );
}

/** In this room from its next challenge on, until the desk takes another one. */
function PlayKit({ kit, own }: { readonly kit: Kit; readonly own: Kit }) {
  const { fitting } = useWholeWords();
  const { ask, refusal, busy } = useAsk();
  const offerUndo = useDesk((state) => state.offerUndo);
  const choose = (chosen: Kit) => ask({ kind: 'choose-kit', kit: fileForm(chosen) });
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
