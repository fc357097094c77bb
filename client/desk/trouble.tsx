import type { RoomState } from '../../shared/room/state.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { Notice } from '../parts/notice.tsx';
import { useServerTime } from '../parts/use-server-time.ts';
import { hostOf, useAddresses } from './use-addresses.ts';
import { useArrivals } from './use-arrivals.ts';
import { useWholeWords } from './whole-words.ts';

/** If no device has got through for so long, the likely causes are said without being asked for, ms. */
const NOBODY_FOR = 60_000;
const LOOK_EVERY = 4000;

/** Why no tablet is in the room yet: what the server has seen of devices, else the likely causes. */
export function Trouble({ room }: { readonly room: RoomState }) {
  const { check } = useWholeWords();
  const empty = room.teams.length === 0;
  const now = useServerTime(empty ? LOOK_EVERY : null);
  const arrivals = useArrivals(empty);
  const { addresses } = useAddresses();
  const told = arrivals && check.desk.arrived(arrivals);
  const late = empty && !told && now - room.openedAt > NOBODY_FOR;
  const page = `${hostOf(addresses?.join ?? location.origin)}${ROUTES.checkPage}`;
  return (
    <>
      {empty && told && (
        <Notice tone={arrivals.check && !arrivals.check.live ? 'stops' : 'met'} role="status">
          {told}
        </Notice>
      )}
      <details className="gather-trouble" open={late} key={String(late)}>
        <summary>{check.desk.trouble}</summary>
        {late && <p role="status">{check.desk.none}</p>}
        <ul>
          {check.desk.causes.map(({ title, text }) => (
            <li key={title}>
              <strong>{title}</strong> {text}
            </li>
          ))}
        </ul>
        <p className="gather-try">{check.desk.try(page)}</p>
      </details>
    </>
  );
}
