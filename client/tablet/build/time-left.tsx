import { Timer } from 'lucide-react';
import { type RoomState, timeIn } from '../../../shared/room/state.ts';
import { Icon } from '../../parts/icon.tsx';
import { useServerTime } from '../../parts/use-server-time.ts';
import { useWords } from '../../parts/use-words.ts';

/** Time left by the server's clock: minutes, and seconds only in the last one. Nothing counts down loudly. */
export function TimeLeft({ room }: { readonly room: RoomState }) {
  const { building } = room;
  const words = useWords().tablet.building;
  const running = building !== null && !building.ended && building.until !== null;
  const now = timeIn(room, useServerTime(running ? 1000 : null));
  if (!building) return null;
  if (building.ended)
    return (
      <p className="time-left">
        <Icon of={Timer} size={24} />
        <span>
          {words.timeOver}
          <span className="time-left-note">{words.timeOverNote}</span>
        </span>
      </p>
    );
  if (building.until === null) return null;
  return (
    <p className="time-left">
      <Icon of={Timer} size={24} />
      {words.timeLeft((building.until - now) / 1000)}
    </p>
  );
}
