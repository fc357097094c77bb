import { QrCode } from 'lucide-react';
import { useState } from 'react';
import type { RoomState, Team } from '../../shared/room/state.ts';
import type { SeatCode } from '../../shared/wire/desks.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { Button } from '../parts/button.tsx';
import { useDates } from '../parts/dates.ts';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import { Refused } from '../parts/refusal.tsx';
import { makeSeatCode } from './session.ts';
import { useWholeWords } from './whole-words.ts';

/** A code that works once gives the team's seat to another tablet. */
export function MoveSeat({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { seats } = useWholeWords().desk;
  const [made, setMade] = useState<(SeatCode & { readonly moves: number }) | null>(null);
  const [busy, setBusy] = useState(false);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const make = async () => {
    setBusy(true);
    setRefusal(null);
    const answer = await makeSeatCode(room.id, team.id);
    setBusy(false);
    if (answer.ok) setMade({ ...answer.value, moves: team.moves });
    else setRefusal(answer.refusal);
  };
  const used = made !== null && team.moves > made.moves;
  return (
    <section>
      <h3>{seats.tablet}</h3>
      <p>{seats.tabletHow}</p>
      {used && (
        <Notice tone="met" role="status">
          {seats.moved}
        </Notice>
      )}
      {made && !used && <CodeCard made={made} />}
      <Button icon={<Icon of={QrCode} />} disabled={busy} onClick={() => void make()}>
        {busy ? seats.making : made ? seats.codeAgain : seats.code}
      </Button>
      <Refused refusal={refusal} />
    </section>
  );
}

function CodeCard({ made }: { readonly made: SeatCode }) {
  const { seats } = useWholeWords().desk;
  const until = useDates().time(made.until);
  return (
    <div className="seat-code" role="status">
      <img src={made.qr} alt="" width={148} height={148} />
      <div>
        <p>{seats.codeHow}</p>
        <p>
          {seats.codeWord} <strong className="seat-code-word">{made.code}</strong>
        </p>
        <p className="desk-quiet">{seats.codeUntil(until)}</p>
      </div>
    </div>
  );
}
