import { X } from 'lucide-react';
import { useCallback, useMemo, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import { type Cause, ROBOTS } from '../../shared/documents/outlook.ts';
import type { Millis, Seconds } from '../../shared/geometry/units.ts';
import type { FleetRobot } from '../../shared/judge/fleet.ts';
import { durationOf } from '../../shared/picture/replay.ts';
import type { Fleet } from '../../shared/room/board.ts';
import type { Entry, RoomState, Team } from '../../shared/room/state.ts';
import { FleetView } from '../canvas/fleet-view.tsx';
import { paintFrayed } from '../canvas/paint-frayed.ts';
import { useFleet } from '../parts/driving-fleet.ts';
import { entryOf, teamOf } from '../parts/figures.ts';
import { Icon, type IconShapeProps } from '../parts/icon.tsx';
import { useJudged } from '../parts/judging.ts';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { useLink } from '../parts/use-link.tsx';
import { useWords } from '../parts/use-words.ts';
import { onSheetOfHung } from '../parts/variants.ts';
import { Head } from './head.tsx';
import { TeamBadge } from './team-badge.tsx';
import { useRem } from './use-rem.ts';
import { useSlowTime } from './use-slow-time.ts';
import './fleet-scene.css';

/** Twenty slightly different robots at once: where do they leave the line? */
export function FleetScene({ room }: { readonly room: RoomState }) {
  const { board, scenes } = useWords();
  const { fleet } = room.board;
  const entry = fleet ? entryOf(room, fleet.entry) : undefined;
  const team = entry && teamOf(room, entry.team);
  const chosen = hereOf(
    useDocument('challenge', entry ? (room.rounds[entry.round]?.challenge ?? null) : null),
  );
  const design = hereOf(useDocument('design', fleet?.design ?? null));
  if (!fleet || !entry || !team || !chosen || !design)
    return <Head title={scenes.name('fleet')} word={board.show.loading} />;
  const challenge = onSheetOfHung(fleet, entry, chosen);
  // Once more is once more: nothing is left of the robots before.
  return <Robots key={fleet.since} {...{ fleet, entry, team, challenge, design }} />;
}

interface RobotsProps {
  readonly fleet: Fleet;
  readonly entry: Entry;
  readonly team: Team;
  readonly challenge: Challenge;
  readonly design: Design;
}

function Robots({ fleet, entry, team, challenge, design }: RobotsProps) {
  const { board, emblems, scenes } = useWords();
  const rem = useRem();
  const { robots, frayed, whole } = useFleet(challenge, design, fleet.weather);
  const ready = whole ? robots : NONE;
  const timeAt = useTimeSinceReady(whole, ready);
  const decided = decidedAt(ready);
  const t = useSlowTime(timeAt, (t) => `${strayedBy(ready, t).length} ${t >= decided}`);
  const over = whole && t >= decided;
  const width = challenge.kit.rules.lineWidth.nominal;
  const ink = useMemo(
    () => (over && frayed ? paintFrayed(frayed.stretches, frayed.of, width, { size: rem }) : null),
    [over, frayed, width, rem],
  );
  const name = team.wall === 'shown' ? emblems.name(team.emblem) : board.aTeam;
  return (
    <>
      <Head
        title={scenes.fleet.title(fleet.weather)}
        word={<TeamBadge team={team} size="1.4em" />}
        note={board.show.entry(entry.number)}
      />
      <div className="beside">
        <div className="beside-sheet" style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}>
          <FleetView
            challenge={challenge}
            drawing={design.drawing}
            robots={ready}
            timeAt={timeAt}
            result={ink}
            textSize={rem}
            label={scenes.drawingOf(name, entry.number)}
          />
        </div>
        <div className="beside-side">
          {whole ? (
            <Tally challenge={challenge} design={design} robots={robots} t={t} over={over} />
          ) : (
            <Getting ready={robots.length} />
          )}
        </div>
      </div>
    </>
  );
}

const NONE: readonly FleetRobot[] = [];

/** Driving twenty robots takes a moment. */
function Getting({ ready }: { readonly ready: number }) {
  const { scenes } = useWords();
  return (
    <div className="fleet-getting" role="status">
      <p>{scenes.fleet.ready(ready, ROBOTS)}</p>
      <progress value={ready} max={ROBOTS} aria-label={scenes.fleet.ready(ready, ROBOTS)} />
    </div>
  );
}

/** The open chassis from above: plate, two wheels, the bar on its arm. */
function RobotSign({ size, ...rest }: IconShapeProps) {
  return (
    <svg
      {...rest}
      aria-hidden="true"
      width={size}
      height={size}
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
    >
      <path d="M4 9h9l2 3-2 3H4zM15 12h5M20 7v10" strokeLinecap="round" strokeLinejoin="round" />
      <path d="M5 5.5h7M5 18.5h7" strokeWidth={3} strokeLinecap="round" />
    </svg>
  );
}

interface TallyProps extends Pick<RobotsProps, 'challenge' | 'design'> {
  readonly robots: readonly FleetRobot[];
  readonly t: Seconds;
  readonly over: boolean;
}

/** A robot a sign; at the end how many made it, and why the others did not. */
function Tally({ challenge, design, robots, t, over }: TallyProps) {
  const { scenes } = useWords();
  const met = useJudged(challenge, design)?.verdict.met ?? false;
  const astray = strayedBy(robots, t);
  const same = robots.length - astray.length;
  if (robots.length === 0) return <p className="fleet-result">{scenes.fleet.none}</p>;
  return (
    <section className="fleet-tally">
      <ul className="fleet-robots" aria-hidden="true">
        {robots.map((robot) => (
          <li key={robot.trace.seed} data-astray={astray.includes(robot)}>
            <Icon of={astray.includes(robot) ? X : RobotSign} size="1.5rem" />
          </li>
        ))}
      </ul>
      <p className="fleet-result" aria-live="polite">
        {over ? scenes.fleet.made(same, robots.length, met) : scenes.fleet.soFar(same, robots.length)}
      </p>
      {over && (
        <ul className="fleet-causes">
          {causesOf(robots).map(({ cause, robots: n }) => (
            <li key={cause}>{scenes.fleet.cause(n, cause)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

const strayedBy = (robots: readonly FleetRobot[], t: Seconds): FleetRobot[] =>
  robots.filter(({ straysAt }) => straysAt !== null && straysAt <= t);

/** Why robots strayed, the most frequent first. */
function causesOf(robots: readonly FleetRobot[]): { readonly cause: Cause; readonly robots: number }[] {
  const counts = new Map<Cause, number>();
  for (const { stray } of robots) if (stray) counts.set(stray.cause, (counts.get(stray.cause) ?? 0) + 1);
  return [...counts].map(([cause, n]) => ({ cause, robots: n })).sort((a, b) => b.robots - a.robots);
}

/** When nothing is open any longer: each robot has come to its end, or has strayed a second ago. */
const decidedAt = (robots: readonly FleetRobot[]): Seconds =>
  Math.max(0, ...robots.map(({ trace, straysAt }) => (straysAt === null ? durationOf(trace) : straysAt + 1)));

/** Run time that begins once the robots are ready, and ends with the last one. */
function useTimeSinceReady(ready: boolean, robots: readonly FleetRobot[]): () => Seconds {
  const link = useLink();
  const [begins, setBegins] = useState<Millis | null>(null);
  if (ready && begins === null) setBegins(link.serverNow());
  const duration = Math.max(0, ...robots.map(({ trace }) => durationOf(trace)));
  return useCallback(
    () => (begins === null ? 0 : Math.min(duration, Math.max(0, (link.serverNow() - begins) / 1000))),
    [link, begins, duration],
  );
}
