import { Download } from 'lucide-react';
import { useEffect } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { bestEntry, classFigures, pointsOf, standingsOf } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { REACHED_BY_KEYS } from '../parts/scrolls.ts';
import { loadOwn } from './builder/own-challenges.ts';
import { ClosingCheckPart } from './close-check.tsx';
import { EvidencePart } from './close-evidence.tsx';
import { LessonPaper } from './lesson-paper.tsx';
import { useKnownTitles } from './queue.tsx';
import { resultsPath, roomFilePath } from './session.ts';
import { useWholeWords } from './whole-words.ts';
import './close.css';

/** The end of the lesson: what there is to keep, and what to count back in. */
export function CloseStep({ room }: { readonly room: RoomState }) {
  const { desk, board } = useWholeWords();
  return (
    <main className="desk-main close-step">
      <section>
        <h2>{desk.closing.together}</h2>
        <ul className="close-figures">
          {board.together(classFigures(room)).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <h2>{desk.closing.count}</h2>
        <ul className="close-count">
          {desk.closing.counts.map((line) => (
            <li key={line}>
              <label>
                <input type="checkbox" /> {line}
              </label>
            </li>
          ))}
        </ul>
      </section>
      <section>
        <ClosingCheckPart room={room} />
        <EvidencePart room={room} />
        <h2>{desk.closing.results}</h2>
        <LessonPaper room={room} kind="picture" label={desk.picture.pdf}>
          <a className="button" href={resultsPath(room.word)} download>
            <Icon of={Download} />
            {desk.closing.csv}
          </a>
          <a className="button" href={roomFilePath(room.word)} download>
            <Icon of={Download} />
            {desk.closing.file}
          </a>
        </LessonPaper>
        <p className="desk-quiet">{desk.closing.fileNote}</p>
        <ResultsTable room={room} />
      </section>
    </main>
  );
}

function ResultsTable({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords();
  const titles = useKnownTitles();
  useEffect(() => void loadOwn(room.id), [room.id]);
  const rounds = room.rounds.map((round, place) => ({ round, place }));
  if (room.entries.length === 0) return <p>{desk.closing.none}</p>;
  return (
    <section className="close-table-box" {...REACHED_BY_KEYS} aria-label={desk.closing.results}>
      <table className="close-table">
        <thead>
          <tr>
            <th scope="col">{desk.closing.teamHead}</th>
            {rounds.map(({ round, place }) => (
              <th key={place} scope="col">
                {titles.get(round.key) ?? desk.closing.round(place + 1)}
              </th>
            ))}
            <th scope="col">{desk.closing.total}</th>
          </tr>
        </thead>
        <tbody>
          {standingsOf(room).map(({ team, points, rank }) => (
            <tr key={team.id}>
              <th scope="row">
                <EmblemBadge emblem={team.emblem} size={20} />
              </th>
              {rounds.map(({ place }) => {
                const best = bestEntry(room, team.id, place);
                return <td key={place}>{best ? pointsOf(best) : '–'}</td>;
              })}
              <td>
                <strong>{rank === null ? '–' : points}</strong>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
