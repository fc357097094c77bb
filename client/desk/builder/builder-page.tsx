import { ArrowLeft, Download, Redo2, Sparkles, Undo2 } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { typesText } from '../../editor/surface/use-keys.ts';
import { Button } from '../../parts/button.tsx';
import { DeviceSettingsButton } from '../../parts/device-settings-dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { goToRoom } from '../session.ts';
import { useWholeWords } from '../whole-words.ts';
import { asBuilt, blankChallenge } from './blank.ts';
import { FoundLine, FoundPanel } from './found-panel.tsx';
import { FreshDialog } from './fresh-dialog.tsx';
import { GoalsPanel } from './goals-panel.tsx';
import { TextField } from './inputs.tsx';
import { LinesPart } from './lines-part.tsx';
import { loadOwn, saveAsFile, useOwn } from './own-challenges.ts';
import type { PlaceRef } from './places.ts';
import { PlacesSurface } from './places-surface.tsx';
import { RulesPanel } from './rules-panel.tsx';
import { keptHere, useSaving } from './saving.ts';
import { type Search, useSearch } from './searching.ts';
import { SheetPanel } from './sheet-panel.tsx';
import { useChallenge, useWork, Work } from './work.ts';
import './builder.css';

export interface BuilderPageProps {
  readonly id: string;
  /** Where the way back leads. */
  readonly room: string | null;
}

/** A challenge of one's own is built here, on a page of the desk of its own. */
export function BuilderPage({ id, room }: BuilderPageProps) {
  const words = useWholeWords();
  const { list, refusal } = useOwn();
  useEffect(() => void loadOwn(room), [room]);
  // Looked up once: what is saved later comes from here.
  const [opened, setOpened] = useState<Opened | null>(null);
  useEffect(() => {
    if (!list) return;
    const kept = keptHere(id);
    const found = kept ?? list.find((own) => own.id === id) ?? blankChallenge(id, DEMO_KIT);
    setOpened((before) => before ?? { first: asBuilt(found), isSaved: kept === null });
  }, [list, id]);
  if (opened) return <Builder opened={opened} room={room} />;
  return (
    <main className="desk-alone">
      <h1>{words.desk.title}</h1>
      <Refused refusal={refusal} />
      {!refusal && <p role="status">{words.builder.loading} …</p>}
      <Button onClick={() => goToRoom(room)}>{words.builder.back}</Button>
    </main>
  );
}

interface Opened {
  readonly first: Challenge;
  /** Otherwise only this browser has it. */
  readonly isSaved: boolean;
}

const PARTS = ['sheet', 'lines', 'goals', 'rules', 'found'] as const;
type Part = (typeof PARTS)[number];

function Builder({ opened, room }: { readonly opened: Opened; readonly room: string | null }) {
  const { builder } = useWholeWords();
  const { first } = opened;
  const work = useMemo(() => new Work(first), [first]);
  const challenge = useChallenge(work);
  const search = useSearch(challenge);
  const [part, setPart] = useState<Part>('sheet');
  useUndoKeys(work);
  const titles: Readonly<Record<Part, string>> = {
    sheet: builder.places.title,
    lines: builder.lines.title,
    goals: challenge.play === 'predict' ? builder.asking.title : builder.goals.title,
    rules: builder.rules.title,
    found: builder.found.title,
  };
  return (
    <div className="builder" data-part={part}>
      <BuilderHead work={work} search={search} opened={opened} room={room} />
      <nav className="builder-parts" aria-label={builder.parts}>
        {PARTS.map((each) => (
          <Button key={each} aria-pressed={each === part} onClick={() => setPart(each)}>
            {titles[each]}
          </Button>
        ))}
      </nav>
      <main className="builder-body">
        {part === 'lines' ? <LinesPart work={work} /> : <PanelPart part={part} work={work} search={search} />}
      </main>
      <FoundLine work={work} search={search} />
    </div>
  );
}

interface PanelPartProps {
  readonly part: Exclude<Part, 'lines'>;
  readonly work: Work;
  readonly search: Search;
}

/** The sheet beside what is said about it. */
function PanelPart({ part, work, search }: PanelPartProps) {
  const [chosen, setChosen] = useState<PlaceRef | null>(null);
  return (
    <>
      <PlacesSurface work={work} handles={part === 'sheet' ? { chosen, onChoose: setChosen } : null} />
      <aside className="builder-aside">
        {part === 'sheet' && <SheetPanel work={work} chosen={chosen} onChoose={setChosen} />}
        {part === 'goals' && <GoalsPanel work={work} />}
        {part === 'rules' && <RulesPanel work={work} />}
        {part === 'found' && <FoundPanel work={work} search={search} />}
      </aside>
    </>
  );
}

const LONGEST_TITLE = 60;

interface BuilderHeadProps {
  readonly work: Work;
  readonly search: Search;
  readonly opened: Opened;
  readonly room: string | null;
}

function BuilderHead({ work, search, opened, room }: BuilderHeadProps) {
  const { builder, desk } = useWholeWords();
  const locale = useLocale();
  const challenge = useChallenge(work);
  const saving = useSaving(challenge, search.found.par, opened.isSaved ? opened.first : null);
  const leave = () => void saving.saveNow().then(() => goToRoom(room));
  const [fresh, setFresh] = useState(false);
  const past = useWork(work, (state) => state.past !== null);
  const future = useWork(work, (state) => state.future !== null);
  const { title } = challenge;
  const made = (one: Challenge) => {
    work.change(asBuilt({ ...one, id: challenge.id, ...(title ? { title } : {}) }));
    setFresh(false);
  };
  const saved = { saved: builder.saved, saving: builder.saving, 'not-saved': builder.notSaved }[saving.state];
  return (
    <header className="builder-head">
      <Button icon={<Icon of={ArrowLeft} />} onClick={leave}>
        {builder.back}
      </Button>
      <h1 className="only-read-aloud">{desk.title}</h1>
      <TextField
        label={builder.name}
        quiet
        value={title ? textIn(title, locale) : ''}
        most={LONGEST_TITLE}
        onChange={(text) => work.change({ ...challenge, title: { en: text } }, 'title')}
        onDone={work.settle}
      />
      <p className="builder-saved" role="status" data-state={saving.state}>
        {saved}
      </p>
      <Button
        icon={<Icon of={Undo2} />}
        disabled={!past}
        aria-keyshortcuts="Control+Z"
        aria-label={builder.undo}
        onClick={work.undo}
      >
        <span className="builder-word">{builder.undo}</span>
      </Button>
      <Button
        icon={<Icon of={Redo2} />}
        disabled={!future}
        aria-keyshortcuts="Control+Y"
        aria-label={builder.redo}
        onClick={work.redo}
      >
        <span className="builder-word">{builder.redo}</span>
      </Button>
      <Button icon={<Icon of={Sparkles} />} onClick={() => setFresh(true)}>
        {builder.fresh.open}
      </Button>
      <Button
        icon={<Icon of={Download} />}
        title={builder.own.save}
        aria-label={builder.own.save}
        onClick={() => saveAsFile(challenge)}
      />
      <DeviceSettingsButton />
      <FreshDialog open={fresh} kit={challenge.kit} onClose={() => setFresh(false)} onMade={made} />
      {saving.refusal && <Refused refusal={saving.refusal} />}
    </header>
  );
}

/** Undo and redo wherever nothing is typed; on the paper pens see to it themselves. */
function useUndoKeys(work: Work): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.defaultPrevented || !(event.ctrlKey || event.metaKey) || typesText(event)) return;
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) work.undo();
      else if (key === 'y' || key === 'z') work.redo();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [work]);
}
