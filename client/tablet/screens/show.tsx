import { MonitorUp } from 'lucide-react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { conditionsFor } from '../../../shared/room/drawn-in.ts';
import type { Entry, RoomState, Team } from '../../../shared/room/state.ts';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { bestEntry, entriesOf, pointsOf, pointsSoFar } from '../../parts/figures.ts';
import { Icon } from '../../parts/icon.tsx';
import { Miniature } from '../../parts/miniature.tsx';
import { useDocument } from '../../parts/use-document.ts';
import { useWords } from '../../parts/use-words.ts';
import { onOtherSheet } from '../../parts/variants.ts';
import { NoteButton } from '../notes/note-button.tsx';
import { PredictedEntry } from '../predict/predicted-entry.tsx';
import './screens.css';

export interface ShowScreenProps {
  readonly room: RoomState;
  readonly team: Team;
  readonly challenge: Challenge;
}

/** The talk is at the board now; the tablet only keeps the team's own drawing in sight. */
export function ShowScreen({ room, team, challenge }: ShowScreenProps) {
  const { showing } = useWords().tablet;
  const entry = bestEntry(room, team.id) ?? entriesOf(room, team.id).at(-1);
  const points = pointsSoFar(room, team.id);
  return (
    <main className="page-screen">
      <header className="page-head">
        <EmblemBadge emblem={team.emblem} size={34} />
        <NoteButton room={room} team={team} />
        {points !== null && points > 0 && <span className="quiet-words">{showing.points(points)}</span>}
      </header>
      <div className="show">
        <h1>
          <Icon of={MonitorUp} size={48} />
          {showing.title}
        </h1>
        {entry ? (
          challenge.play === 'predict' ? (
            <OwnAnswers entry={entry} challenge={challenge} />
          ) : (
            <OwnEntry
              entry={entry}
              challenge={onOtherSheet(challenge, conditionsFor(room, team).variant, entry.variant)}
            />
          )
        ) : (
          <p className="large-words">{showing.ownNone}</p>
        )}
      </div>
    </main>
  );
}

function OwnAnswers({ entry, challenge }: { readonly entry: Entry; readonly challenge: Challenge }) {
  const { predicting, handing } = useWords().tablet;
  return (
    <section className="show-answers" aria-label={predicting.own}>
      <h2>
        {predicting.own} {pointsOf(entry) > 0 && <strong>{handing.points(pointsOf(entry))}</strong>}
      </h2>
      <PredictedEntry entry={entry} challenge={challenge} />
    </section>
  );
}

function OwnEntry({ entry, challenge }: { readonly entry: Entry; readonly challenge: Challenge }) {
  const { showing, handing } = useWords().tablet;
  const design = useDocument('design', entry.design);
  if (design.kind !== 'here') return null;
  return (
    <figure className="show-own">
      <Miniature
        sheet={challenge.sheet}
        kit={challenge.kit}
        drawing={design.value.drawing}
        label={showing.own}
        names
      />
      <figcaption>
        {showing.own}
        {pointsOf(entry) > 0 && <strong>{handing.points(pointsOf(entry))}</strong>}
      </figcaption>
    </figure>
  );
}
