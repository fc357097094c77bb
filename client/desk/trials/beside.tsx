import { slowedKit } from '../../../shared/prep/fit-kit.ts';
import { calibrationOf, ENOUGH, paceOffer } from '../../../shared/prep/foretold.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { wilsonInterval } from '../../../shared/steadiness/statistics.ts';
import { useRoomKit } from '../kit/room-kit.ts';
import { useWholeWords } from '../whole-words.ts';
import { CalibrationPicture } from './calibration-picture.tsx';
import { checkedOf, timedOf } from './evidence.ts';
import { UseKit } from './use-kit.tsx';
import './fit.css';

/** So few that chance alone makes large differences: chosen. */
const FEW = 20;

/** What was foretold beside what came, over all trials of the room. */
export function BesideTrials({ room }: { readonly room: RoomState }) {
  const { beside } = useWholeWords();
  const kit = useRoomKit(room);
  const offer = paceOffer(timedOf(room));
  const found = calibrationOf(checkedOf(room));
  if (!found) return <p className="desk-quiet">{beside.none}</p>;
  const { trials, came, brier, plain, bins } = found;
  const all = wilsonInterval(came, trials);
  return (
    <section className="beside">
      <h3>{beside.title}</h3>
      <p>
        {beside.counted(came, trials, all.low, all.high)} {beside.brier(brier, plain)}
      </p>
      {trials < FEW && <p className="desk-quiet">{beside.few}</p>}
      <div className="beside-both">
        <CalibrationPicture bins={bins} />
        <table className="beside-table">
          <thead>
            <tr>
              {(['foretold', 'mean', 'came', 'range'] as const).map((head) => (
                <th key={head} scope="col">
                  {beside.heads[head]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {bins.map((bin) => (
              <tr key={bin.from}>
                <th scope="row">{beside.bin(bin.from, bin.to)}</th>
                <td>{beside.mean(bin.foretold)}</td>
                <td>{beside.came(bin.came, bin.trials)}</td>
                <td>{beside.range(bin.interval.low, bin.interval.high)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="desk-quiet">{beside.wholeClass}</p>
      <h3>{beside.pacesTitle}</h3>
      <p>{beside.offer(offer, ENOUGH)}</p>
      {offer.kind === 'offer' && kit && (
        <UseKit room={room} kit={kit} changed={slowedKit(kit, offer.times)} />
      )}
    </section>
  );
}
