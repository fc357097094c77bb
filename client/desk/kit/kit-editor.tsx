import { ArrowLeft, Redo2, Save, Undo2 } from 'lucide-react';
import { type KeyboardEvent, useEffect, useMemo, useState } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { checkKit } from '../../../shared/kit/check-kit.ts';
import type { KitProblem } from '../../../shared/kit/kit-problem.ts';
import type { KitSection } from '../../../shared/wording/en/kit.ts';
import { useAnnounce } from '../../parts/announcer.tsx';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useWholeWords } from '../whole-words.ts';
import { inOrder } from './changes.ts';
import { ChartSection } from './chart-section.tsx';
import { EditingContext, KitText } from './fields.tsx';
import { changed, type History, begun as historyOf, redone, undone } from './history.ts';
import { InkSection } from './ink-section.tsx';
import { type Begun, isSameKit, keepUnsaved, type OwnKits } from './own-kits.ts';
import { PaceSection, RobotSection } from './robot-section.tsx';
import type { KitRoom } from './room-kit.ts';
import { RuleSection } from './rule-section.tsx';

const SECTIONS = {
  robot: RobotSection,
  paces: PaceSection,
  inks: InkSection,
  chart: ChartSection,
  rules: RuleSection,
} as const satisfies Record<KitSection, unknown>;
const ORDER = Object.keys(SECTIONS) as KitSection[];

/** Which part of the editor shows what a problem is about. */
function sectionOf({ path: [part, within] }: KitProblem): KitSection {
  if (part === 'robot') return within === 'paces' || within === 'topWheelSpeed' ? 'paces' : 'robot';
  if (part === 'chart' || part === 'rules') return part;
  return 'inks';
}

export interface KitEditorProps {
  readonly begun: Begun;
  readonly kits: OwnKits;
  readonly room: KitRoom | null;
  readonly onBack: () => void;
}

/** A kit in parts, each number at its place; nothing of it is lost by leaving. */
export function KitEditor({ begun, kits, room, onBack }: KitEditorProps) {
  const { kit: words } = useWholeWords();
  const [history, setHistory] = useState<History>(() => historyOf(inOrder(begun.kit)));
  const [section, setSection] = useState<KitSection>('robot');
  const { now } = history;
  const saving = useSaving(begun, now, kits);
  const problems = useMemo(() => checkKit(now), [now]);
  const editing = useMemo(
    () => ({
      kit: now,
      problems,
      change: (place: string, kit: Kit) => setHistory((before) => changed(before, place, kit)),
    }),
    [now, problems],
  );
  /** What the room was last asked to play with: another kit may be better. */
  const [asked, setAsked] = useState<Kit | null>(null);
  const use = async () => {
    if (!room || (kits.mayKeep && !(await saving.save()))) return;
    setAsked(now);
    await room.choose({ ...now, id: begun.id });
  };
  const keys = (event: KeyboardEvent) => {
    const work = shortcut(event, {
      undo: () => setHistory(undone),
      redo: () => setHistory(redone),
      save: saving.save,
    });
    if (!work) return;
    event.preventDefault();
    work();
  };
  const Section = SECTIONS[section];
  return (
    <EditingContext value={editing}>
      {/* Keys that take back and save work wherever the focus is inside. */}
      <section className="kit kit-editor" aria-label={now.name} onKeyDown={keys}>
        <header className="kit-head">
          <Button look="quiet" icon={<Icon of={ArrowLeft} />} onClick={onBack}>
            {words.editor.back}
          </Button>
          <span className="desk-head-space" />
          <HistoryButtons history={history} onChange={setHistory} />
          {kits.mayKeep && (
            <Button
              look="primary"
              icon={<Icon of={Save} />}
              disabled={saving.busy || !saving.dirty}
              onClick={() => void saving.save()}
            >
              {saving.busy ? words.editor.saving : words.editor.save}
            </Button>
          )}
          {room && (
            <Button disabled={room.busy} onClick={() => void use()}>
              {words.shelf.use}
            </Button>
          )}
        </header>
        <div className="kit-name">
          <KitText
            label={words.editor.name}
            value={now.name}
            onChange={(name) => editing.change('name', { ...now, name })}
          />
        </div>
        <Standing problems={problems} />
        <Refused refusal={kits.refusal ?? (asked === now && room ? room.refusal : null)} />
        <SectionTabs open={section} problems={problems} onOpen={setSection} />
        <Section />
      </section>
    </EditingContext>
  );
}

/** Keeping what is being changed: in this browser at once, on the server when somebody says so. */
function useSaving(begun: Begun, now: Kit, kits: OwnKits) {
  const { editor } = useWholeWords().kit;
  const announce = useAnnounce();
  const { id } = begun;
  const [saved, setSaved] = useState<Kit | null>(null);
  const [busy, setBusy] = useState(false);
  const kept = saved ?? kits.list?.find((one) => one.id === id)?.kit ?? null;
  const dirty = kept === null || !isSameKit(inOrder(kept), now);
  const untouched = saved === null && isSameKit(inOrder(begun.kit), now);
  useEffect(() => {
    if (!untouched) keepUnsaved(id, dirty ? now : null);
  }, [dirty, untouched, id, now]);
  const save = async (): Promise<boolean> => {
    if (!dirty) return true;
    setBusy(true);
    const done = await kits.keep(id, now);
    setBusy(false);
    if (!done) return false;
    setSaved(now);
    announce(editor.saved);
    return true;
  };
  return { save, busy, dirty };
}

interface Shortcuts {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly save: () => Promise<boolean>;
}

/** What Ctrl (or Cmd) with Z, Y or S does, as everywhere. */
function shortcut(event: KeyboardEvent, { undo, redo, save }: Shortcuts): (() => void) | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? redo : undo;
  if (key === 'y') return redo;
  return key === 's' ? () => void save() : undefined;
}

function HistoryButtons({
  history,
  onChange,
}: {
  readonly history: History;
  readonly onChange: (history: History) => void;
}) {
  const { editor } = useWholeWords().kit;
  const { past, future } = history;
  return (
    <>
      <Button
        look="quiet"
        icon={<Icon of={Undo2} />}
        disabled={past.length === 0}
        aria-keyshortcuts="Control+Z"
        title={`${editor.undo} (Ctrl+Z)`}
        onClick={() => onChange(undone(history))}
      >
        {editor.undo}
      </Button>
      <Button
        look="quiet"
        icon={<Icon of={Redo2} />}
        disabled={future.length === 0}
        aria-keyshortcuts="Control+Y"
        title={`${editor.redo} (Ctrl+Y)`}
        onClick={() => onChange(redone(history))}
      >
        {editor.redo}
      </Button>
    </>
  );
}

function Standing({ problems }: { readonly problems: readonly KitProblem[] }) {
  const { editor } = useWholeWords().kit;
  const wrong = problems.filter(({ severity }) => severity === 'wrong').length;
  return (
    <Notice tone={wrong === 0 ? 'met' : 'caution'}>{wrong === 0 ? editor.sound : editor.draft(wrong)}</Notice>
  );
}

interface TabsProps {
  readonly open: KitSection;
  readonly problems: readonly KitProblem[];
  readonly onOpen: (section: KitSection) => void;
}

function SectionTabs({ open, problems, onOpen }: TabsProps) {
  const { editor } = useWholeWords().kit;
  return (
    <nav className="kit-sections" aria-label={editor.sections}>
      {ORDER.map((each) => {
        const count = problems.filter((problem) => sectionOf(problem) === each).length;
        return (
          <Button key={each} aria-pressed={each === open} onClick={() => onOpen(each)}>
            {editor.section(each)}
            {count > 0 && (
              <span className="kit-count">
                <span aria-hidden="true">{count}</span>
                <span className="only-read-aloud">, {editor.problems(count)}</span>
              </span>
            )}
          </Button>
        );
      })}
    </nav>
  );
}
