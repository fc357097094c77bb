import { useState } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { useAsk } from '../../parts/use-ask.ts';
import { KitEditor } from './kit-editor.tsx';
import { KitShelf } from './kit-shelf.tsx';
import { type Begun, fileForm, useOwnKits } from './own-kits.ts';
import { type KitRoom, useRoomKit } from './room-kit.ts';
import './kit.css';

/** Kits, before a room is open and in one. */
export const KitLeaf = ({ room }: { readonly room: RoomState | null }) =>
  room ? <KitsOfRoom room={room} /> : <Kits room={null} />;

/** With the one that the room plays with. */
function KitsOfRoom({ room }: { readonly room: RoomState }) {
  const { ask, refusal, busy } = useAsk();
  const kit = useRoomKit(room);
  const choose = (chosen: Kit) => ask({ kind: 'choose-kit', kit: fileForm(chosen) });
  return <Kits room={{ id: room.id, kit, choose, refusal, busy }} />;
}

/** Kits of one's own, or the one of them that is being changed. */
function Kits({ room }: { readonly room: KitRoom | null }) {
  const kits = useOwnKits(room?.id ?? null);
  const [begun, setBegun] = useState<Begun | null>(null);
  return begun === null ? (
    <KitShelf kits={kits} room={room} onEdit={setBegun} />
  ) : (
    <KitEditor begun={begun} kits={kits} room={room} onBack={() => setBegun(null)} />
  );
}
