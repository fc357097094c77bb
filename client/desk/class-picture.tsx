import { Download } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Verdict } from '../../shared/documents/verdict.ts';
import {
  type ClassPicture,
  classPicture,
  type FailedRun,
  type JudgedEntry,
  minutesOf,
  type RuleTrips,
} from '../../shared/evidence/class-picture.ts';
import type { DocumentId, Entry, RoomState } from '../../shared/room/state.ts';
import { titleOfRule, worstOfRule } from '../../shared/wording/rule-title.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { currentRound, teamOf } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { Miniature } from '../parts/miniature.tsx';
import { Refused } from '../parts/refusal.tsx';
import { REACHED_BY_KEYS } from '../parts/scrolls.ts';
import { hereOf, loadDocument, useDocument } from '../parts/use-document.ts';
import { useLink } from '../parts/use-link.tsx';
import { useServerTime } from '../parts/use-server-time.ts';
import { LessonPaper } from './lesson-paper.tsx';
import { useTitles } from './queue.tsx';
import { resultsPath } from './session.ts';
import { useWholeWords } from './whole-words.ts';
import './class-picture.css';

const LOOK_EVERY = 10_000;

/** The class with one challenge, at a glance: what trips it, where runs fail, how long it took. */
export function ClassPictureView({ room }: { readonly room: RoomState }) {
  const { picture, closing } = useWholeWords().desk;
  const [chosen, setChosen] = useState<number | null>(null);
  const round = chosen ?? currentRound(room);
  const loaded = useDocument('challenge', room.rounds[round]?.challenge ?? null);
  const challenge = hereOf(loaded);
  return (
    <main className="desk-main picture-step">
      <header className="picture-head">
        <h2>{picture.title}</h2>
        {room.rounds.length > 0 && <RoundPick room={room} round={round} onPick={setChosen} />}
      </header>
      {room.rounds.length > 0 && (
        <LessonPaper room={room} kind="picture" label={picture.pdf}>
          <a className="button" href={resultsPath(room.word)} download>
            <Icon of={Download} />
            {closing.csv}
          </a>
        </LessonPaper>
      )}
      {loaded.kind === 'refused' && <Refused refusal={loaded.refusal} />}
      {challenge ? (
        <OfRound room={room} round={round} challenge={challenge} />
      ) : (
        <p className="desk-quiet">{picture.none}</p>
      )}
    </main>
  );
}

interface PickProps {
  readonly room: RoomState;
  readonly round: number;
  readonly onPick: (round: number) => void;
}

function RoundPick({ room, round, onPick }: PickProps) {
  const { picture } = useWholeWords().desk;
  const titleOf = useTitles();
  const rounds = room.rounds.map(({ key }, place) => ({ key, place }));
  return (
    <label className="picture-round">
      {picture.which}
      <select value={round} onChange={(event) => onPick(Number(event.target.value))}>
        {rounds.map(({ key, place }) => (
          <option key={place} value={place}>
            {place + 1}. {titleOf(key)}
          </option>
        ))}
      </select>
    </label>
  );
}

interface RoundProps {
  readonly room: RoomState;
  readonly round: number;
  readonly challenge: Challenge;
}

function OfRound({ room, round, challenge }: RoundProps) {
  const { picture: words } = useWholeWords().desk;
  const isDrawn = challenge.play !== 'predict';
  const entries = useMemo(() => room.entries.filter((entry) => entry.round === round), [room, round]);
  const judged = useVerdicts(entries, isDrawn);
  const now = useServerTime(LOOK_EVERY);
  const picture = classPicture(room, round, judged, challenge.sheet, now);
  if (entries.length === 0)
    return (
      <>
        <p className="desk-quiet">{words.none}</p>
        <Minutes room={room} picture={picture} now={now} />
      </>
    );
  return (
    <div className="picture-parts">
      {isDrawn ? (
        <Sheet challenge={challenge} failures={picture.failures} />
      ) : (
        <p className="desk-quiet">{words.predicted}</p>
      )}
      <div className="picture-side">
        {isDrawn && <Rules rules={picture.rules} teams={room.teams.length} />}
        <Minutes room={room} picture={picture} now={now} />
      </div>
      <Teams room={room} picture={picture} />
    </div>
  );
}

/** The entries with their verdicts, as far as those have come. */
function useVerdicts(entries: readonly Entry[], isDrawn: boolean): readonly JudgedEntry[] {
  const link = useLink();
  const [known, setKnown] = useState<ReadonlyMap<DocumentId, Verdict>>(new Map());
  const wanted = isDrawn ? entries.flatMap(({ verdict }) => verdict?.document ?? []) : [];
  const missing = wanted.filter((id) => !known.has(id)).join(' ');
  useEffect(() => {
    let current = true;
    const load = async () => {
      // One after the other: a class with many entries must not use up what a desk may ask for in a second.
      for (const id of missing.split(' ').filter(Boolean)) {
        const loaded = await loadDocument(link, 'verdict', id);
        if (!current) return;
        if (loaded.kind === 'here') setKnown((before) => new Map([...before, [id, loaded.value]]));
      }
    };
    void load();
    return () => {
      current = false;
    };
  }, [link, missing]);
  return entries.map((entry) => ({ entry, verdict: known.get(entry.verdict?.document ?? '') ?? null }));
}

interface SheetProps {
  readonly challenge: Challenge;
  readonly failures: readonly FailedRun[];
}

/** One spot a run that failed, the paler the less likely it was. */
function Sheet({ challenge, failures }: SheetProps) {
  const { picture } = useWholeWords().desk;
  const { sheet, kit, begin } = challenge;
  const r = Math.max(sheet.w, sheet.h) / 40;
  const label = failures.length === 0 ? picture.nowhere : picture.failed(failures.length);
  return (
    <figure className="picture-sheet">
      <div className="big-picture desk-sheet" role="img" aria-label={label}>
        <Miniature sheet={sheet} kit={kit} drawing={begin?.drawing} names />
        <svg className="places" viewBox={`0 0 ${sheet.w} ${sheet.h}`} aria-hidden="true" focusable="false">
          {failures.map(({ entry, at, ending, chance }) => (
            <circle
              key={`${entry} ${ending} ${at.x} ${at.y}`}
              className="failed-run"
              cx={at.x}
              cy={at.y}
              r={r}
              fillOpacity={0.15 + chance / 2}
            />
          ))}
        </svg>
      </div>
      <figcaption>
        <strong>{picture.where}</strong> <span className="desk-quiet">{label}</span>
      </figcaption>
    </figure>
  );
}

function Rules({ rules, teams }: { readonly rules: readonly RuleTrips[]; readonly teams: number }) {
  const words = useWholeWords();
  const { picture } = words.desk;
  return (
    <section>
      <h3>{picture.rules}</h3>
      {rules.length === 0 && <p className="desk-quiet">{picture.noRules}</p>}
      <ul className="picture-rules">
        {rules.map((trip) => (
          <li key={trip.rule}>
            <span>{titleOfRule(trip.worst, words)}</span>
            <span className="desk-quiet">{picture.trips(trip.teams, trip.entries)}</span>
            <span className="picture-bar" style={{ width: `${(100 * trip.teams) / teams}%` }} />
            <span className="picture-worst desk-quiet">{worstOfRule(trip.worst, words)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface MinutesProps {
  readonly room: RoomState;
  readonly picture: ClassPicture;
  readonly now: number;
}

function Minutes({ room, picture, now }: MinutesProps) {
  const { picture: words } = useWholeWords().desk;
  const whole = minutesOf(room, null, now);
  const row = ({ screen, paper }: ClassPicture['minutes']) =>
    `${words.clock(screen)} ${words.screen}, ${words.clock(paper)} ${words.paper}`;
  return (
    <section>
      <h3>{words.times}</h3>
      <p>{row(picture.minutes)}</p>
      {room.rounds.length > 1 && (
        <p className="desk-quiet">
          {words.whole}: {row(whole)}
        </p>
      )}
    </section>
  );
}

function Teams({ room, picture }: { readonly room: RoomState; readonly picture: ClassPicture }) {
  const { picture: words } = useWholeWords().desk;
  const heads = [words.points, words.entries, words.tries, words.onTask];
  return (
    <section className="picture-teams" {...REACHED_BY_KEYS} aria-label={words.team}>
      <table className="close-table">
        <thead>
          <tr>
            <th scope="col">{words.team}</th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {picture.teams.map(({ team, points, entries, tries, onTask }) => (
            <tr key={team}>
              <th scope="row">
                <EmblemBadge emblem={teamOf(room, team)?.emblem ?? ''} size={20} />
              </th>
              <td>{points ?? '–'}</td>
              <td>{entries}</td>
              <td>{tries}</td>
              <td>{onTask === null ? '–' : words.clock(onTask)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="desk-quiet">{words.onTaskHow}</p>
    </section>
  );
}
