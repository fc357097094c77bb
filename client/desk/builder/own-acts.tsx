import { Copy, Download, FileUp, Pencil, Plus, Trash2 } from 'lucide-react';
import { useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { type DocumentProblem, type Texts, textIn } from '../../../shared/documents/values.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useDesk } from '../desk-store.ts';
import { useWholeWords } from '../whole-words.ts';
import { blankChallenge, newOwnId } from './blank.ts';
import {
  builderPath,
  eraseOwn,
  giveBackOwn,
  loadOwn,
  readChallenge,
  saveAsFile,
  saveOwn,
} from './own-challenges.ts';
import { keepHere } from './saving.ts';
import './own.css';

const build = (id: string, room: string | null): void => location.assign(builderPath(id, room));

/** Begins a challenge of one's own: an empty one, or one from a file. */
export function MakeOwn({ room, kit }: { readonly room: string | null; readonly kit: Kit }) {
  const { own } = useWholeWords().builder;
  const input = useRef<HTMLInputElement>(null);
  const [trouble, setTrouble] = useState<WireRefusal | 'no-file' | DocumentProblem | null>(null);
  const begin = () => {
    const blank = blankChallenge(newOwnId(), kit);
    keepHere(blank);
    build(blank.id, room);
  };
  const read = async (file: File | undefined) => {
    if (!file) return;
    const found = await readChallenge(file);
    if (!found.ok) return setTrouble(found.refusal ?? found.problem ?? 'no-file');
    const answer = await saveOwn(found.challenge);
    if (answer.ok) build(found.challenge.id, room);
    else setTrouble(answer.refusal);
  };
  return (
    <div className="own-make">
      <Button icon={<Icon of={Plus} />} onClick={begin}>
        {own.make}
      </Button>
      <input
        ref={input}
        type="file"
        accept="application/json,.json"
        hidden
        aria-label={own.read}
        onChange={(event) => {
          void read(event.target.files?.[0]);
          // The same file can be chosen again once it has been mended.
          event.target.value = '';
        }}
      />
      <Button icon={<Icon of={FileUp} />} onClick={() => input.current?.click()}>
        {own.read}
      </Button>
      <Trouble trouble={trouble} />
    </div>
  );
}

function Trouble({ trouble }: { readonly trouble: WireRefusal | 'no-file' | DocumentProblem | null }) {
  const { builder, judging } = useWholeWords();
  if (trouble === null) return null;
  if (trouble !== 'no-file' && !('path' in trouble && Array.isArray(trouble.path)))
    return <Refused refusal={trouble as WireRefusal} />;
  return (
    <Notice tone="stops" role="alert">
      {trouble === 'no-file'
        ? builder.own.notAFile
        : builder.own.badValue(
            judging.place(trouble.path as DocumentProblem['path']),
            judging.form(trouble.code),
          )}
    </Notice>
  );
}

export interface OwnActsProps {
  readonly challenge: Challenge;
  readonly title: Texts;
  /** Of this desk; a ready one can only be copied. */
  readonly isOwn: boolean;
  readonly room: string | null;
}

/** What can be done with a challenge of one's own; a ready one is copied first. */
export function OwnActs({ challenge, title, isOwn, room }: OwnActsProps) {
  const { own } = useWholeWords().builder;
  const locale = useLocale();
  const offerUndo = useDesk((state) => state.offerUndo);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const copy = async () => {
    const id = newOwnId();
    const named = { en: own.copyOf(textIn(title, locale)) };
    const answer = await saveOwn({ ...challenge, id, title: named });
    if (answer.ok) build(id, room);
    else setRefusal(answer.refusal);
  };
  const erase = async () => {
    const answer = await eraseOwn(challenge.id);
    if (!answer.ok) return setRefusal(answer.refusal);
    await loadOwn(room);
    const back = async () => {
      await giveBackOwn(challenge.id);
      await loadOwn(room);
    };
    offerUndo({ said: own.erased(textIn(title, locale)), back: () => void back() });
  };
  return (
    <div className="own-acts">
      {isOwn && (
        <Button icon={<Icon of={Pencil} />} onClick={() => build(challenge.id, room)}>
          {own.change}
        </Button>
      )}
      <Button icon={<Icon of={Copy} />} onClick={() => void copy()}>
        {own.copy}
      </Button>
      {isOwn && (
        <>
          <Button icon={<Icon of={Download} />} onClick={() => saveAsFile(challenge)}>
            {own.save}
          </Button>
          <Button icon={<Icon of={Trash2} />} onClick={() => void erase()}>
            {own.erase}
          </Button>
        </>
      )}
      <Refused refusal={refusal} />
    </div>
  );
}
