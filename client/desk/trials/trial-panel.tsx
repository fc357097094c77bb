import { GitBranch, Hourglass, Square, SquareCheck, Timer, Unlink } from 'lucide-react';
import { type ReactNode, useEffect, useState } from 'react';
import { DRIVING_LIMITS, type Foretold, type Outcome } from '../../../shared/room/driving.ts';
import type { Entry, RoomState, Team } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { bestEntry, entriesOf } from '../../parts/figures.ts';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { hereOf, useDocument } from '../../parts/use-document.ts';
import { onSheetOf } from '../../parts/variants.ts';
import { useDesk } from '../desk-store.ts';
import { useKeys } from '../keys.ts';
import { useWholeWords } from '../whole-words.ts';
import { foretoldOf } from './foretold-of.ts';
import { LostSheet } from './lost-sheet.tsx';
import type { Noting } from './use-noting.ts';

export interface PanelProps {
  readonly room: RoomState;
  readonly team: Team;
  readonly robot: number;
  readonly noting: Noting;
  /** When this robot set off, by this page's clock; null while no watch runs. */
  readonly since: number | null;
  readonly onWatch: (since: number | null) => void;
  readonly onDone: () => void;
}

/** One robot's drive: what was foretold, and what it did with one more tap. */
export function TrialPanel(props: PanelProps) {
  const { room, team, robot, noting } = props;
  const { driving, emblems } = useWholeWords();
  const [chosen, setChosen] = useState<string | null>(null);
  const entries = entriesOf(room, team.id).filter(({ verdict }) => verdict !== null);
  const entry = entries.find(({ id }) => id === chosen) ?? bestEntry(room, team.id) ?? entries.at(-1);
  return (
    <section className="trial-panel" aria-label={driving.whose(emblems.name(team.emblem), robot)}>
      <h2>
        <EmblemBadge emblem={team.emblem} size={24} /> {driving.robot(robot)}
      </h2>
      {entry ? (
        <>
          {entries.length > 1 && <EntrySelect entries={entries} entry={entry} onPick={setChosen} />}
          <EntryTrial {...props} entry={entry} />
        </>
      ) : (
        <p className="desk-quiet">{driving.noEntry}</p>
      )}
      <Refused refusal={noting.refusal} />
    </section>
  );
}

interface SelectProps {
  readonly entries: readonly Entry[];
  readonly entry: Entry;
  readonly onPick: (id: string) => void;
}

function EntrySelect({ entries, entry, onPick }: SelectProps) {
  const { driving, desk } = useWholeWords();
  return (
    <label className="trial-entry">
      {driving.whichEntry}
      <select value={entry.id} onChange={(event) => onPick(event.target.value)}>
        {entries.map(({ id, number, verdict }) => (
          <option key={id} value={id}>
            {desk.team.entry(number)} · {desk.building.points(verdict?.points ?? 0)}
          </option>
        ))}
      </select>
    </label>
  );
}

function EntryTrial(props: PanelProps & { readonly entry: Entry }) {
  const { room, team, robot, noting, since, onWatch, onDone, entry } = props;
  const keysOn = useDesk((state) => state.keysOn);
  const chosen = hereOf(useDocument('challenge', room.rounds[entry.round]?.challenge ?? null));
  const challenge = chosen && onSheetOf(entry, chosen);
  const isDrawn = challenge !== null && challenge.play !== 'predict';
  const design = hereOf(useDocument('design', isDrawn ? entry.design : null));
  const verdict = hereOf(useDocument('verdict', isDrawn ? (entry.verdict?.document ?? null) : null));
  const foretold = verdict && foretoldOf(verdict);
  // What was foretold is part of the note, so it is waited for.
  const ready = challenge !== null && (!isDrawn || verdict !== null) && !noting.busy;
  const note = async (outcome: Outcome) => {
    if (ready && (await noting.note({ entry: entry.id, robot, outcome, foretold }))) onDone();
  };
  const predicted = () => void note({ kind: 'as-predicted', seconds: secondsSince(since) });
  const lost = () => void note({ kind: 'lost', at: null });
  const branch = () => void note({ kind: 'other-branch' });
  const timeUp = () => void note({ kind: 'time-up' });
  const watch = () => onWatch(since === null ? Date.now() : null);
  useKeys({ y: predicted, j: branch, e: timeUp, x: lost, g: watch }, keysOn);
  return (
    <>
      <ForetoldLines foretold={foretold} ready={ready} />
      <Watch since={since} onPress={watch} />
      <Outcomes ready={ready} {...{ predicted, branch, timeUp, lost }} />
      {challenge && (
        <LostSheet
          challenge={challenge}
          design={design}
          team={team}
          trials={room.driving.trials.filter((trial) => trial.entry === entry.id && !trial.withdrawn)}
          onTap={(at) => void note({ kind: 'lost', at })}
        />
      )}
    </>
  );
}

/** To a tenth, as a hand on a watch is no better; null where no watch ran. */
function secondsSince(since: number | null): number | null {
  if (since === null) return null;
  return Math.min(DRIVING_LIMITS.seconds, Math.max(0.1, Math.round((Date.now() - since) / 100) / 10));
}

function ForetoldLines({ foretold, ready }: { readonly foretold: Foretold | null; readonly ready: boolean }) {
  const { driving } = useWholeWords();
  if (!foretold) return <p className="desk-quiet">{ready ? driving.nothingForetold : '…'}</p>;
  const { same, of, finish, seconds } = foretold;
  return (
    <p>
      {driving.foretold(same, of)} {finish !== null && finish < 1 && driving.arrives(finish)}{' '}
      {seconds !== null && driving.takes(seconds)}
    </p>
  );
}

const LOOK_EVERY = 250;

function Watch({ since, onPress }: { readonly since: number | null; readonly onPress: () => void }) {
  const { driving } = useWholeWords();
  const [, setTurn] = useState(0);
  useEffect(() => {
    if (since === null) return;
    const timer = setInterval(() => setTurn((turn) => turn + 1), LOOK_EVERY);
    return () => clearInterval(timer);
  }, [since]);
  return (
    <Button icon={<Icon of={since === null ? Timer : Square} />} shortcut="G" onClick={onPress}>
      {since === null ? driving.setsOff : driving.stopClock}
      {since !== null && <strong className="trial-clock">{driving.running(Date.now() - since)}</strong>}
    </Button>
  );
}

interface OutcomesProps {
  readonly ready: boolean;
  readonly predicted: () => void;
  readonly branch: () => void;
  readonly timeUp: () => void;
  readonly lost: () => void;
}

function Outcomes({ ready, predicted, branch, timeUp, lost }: OutcomesProps) {
  const { driving, numbers } = useWholeWords();
  const { outcome, lostSomewhere } = driving;
  const row = (icon: ReactNode, shortcut: string, said: string, work: () => void) => (
    <Button key={shortcut} icon={icon} shortcut={shortcut} disabled={!ready} onClick={work}>
      {numbers.capital(said)}
    </Button>
  );
  return (
    <div className="trial-outcomes">
      {row(<Icon of={SquareCheck} />, 'Y', outcome('as-predicted'), predicted)}
      {row(<Icon of={GitBranch} />, 'J', outcome('other-branch'), branch)}
      {row(<Icon of={Hourglass} />, 'E', outcome('time-up'), timeUp)}
      {row(<Icon of={Unlink} />, 'X', lostSomewhere, lost)}
    </div>
  );
}
