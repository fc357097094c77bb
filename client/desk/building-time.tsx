import { Timer } from 'lucide-react';
import { type Building, type RoomState, timeIn } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useServerTime } from '../parts/use-server-time.ts';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { useWholeWords } from './whole-words.ts';

const EXTEND_SECONDS = 120;

/** While teams build: how long still, and a little more of it. After the end it opens the building again. */
export function BuildingTime({ room }: { readonly room: RoomState }) {
  return room.phase === 'build' && room.building ? <Running room={room} building={room.building} /> : null;
}

function Running({ room, building }: { readonly room: RoomState; readonly building: Building }) {
  const { desk } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const { ask, busy } = useAsk();
  const now = timeIn(room, useServerTime(building.ended ? null : 500));
  const endless = building.until === null && !building.ended;
  const extend = () => void ask({ kind: 'extend-building', seconds: EXTEND_SECONDS });
  const possible = !endless && !busy;
  useKeys({ '+': possible ? extend : undefined, '=': possible ? extend : undefined }, keysOn);
  return (
    <span className="building-time">
      {!building.ended && <Icon of={Timer} />}
      {building.ended ? (
        <span>{desk.building.over}</span>
      ) : building.until === null ? (
        <span>{desk.building.spent(now - building.since)}</span>
      ) : (
        <span>
          <strong>{desk.time(building.until - now)}</strong> {desk.building.left}
        </span>
      )}
      {!endless && (
        <Button look="quiet" shortcut="+" disabled={busy} onClick={extend}>
          {desk.building.extend(EXTEND_SECONDS / 60)}
        </Button>
      )}
    </span>
  );
}
