import { Sparkles, Square } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import {
  FRESH_MARKS,
  FRESH_TOPICS,
  type FreshMarks,
  type FreshTopic,
} from '../../../shared/documents/fresh.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { fresh as freshWords } from '../../../shared/wording/fresh.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWholeWords } from '../whole-words.ts';
import { Choose, NumberField } from './inputs.tsx';
import { search } from './searching.ts';

export interface FreshDialogProps {
  readonly open: boolean;
  readonly kit: Kit;
  readonly onClose: () => void;
  readonly onMade: (challenge: Challenge) => void;
}

const LARGEST_SEED = 999_999;
const anySeed = (): number => 1 + Math.floor(Math.random() * LARGEST_SEED);

/** Makes a new challenge of a wanted difficulty about a wanted topic, beside the page. */
export function FreshDialog({ open, kit, onClose, onMade }: FreshDialogProps) {
  const words = useWholeWords();
  const { fresh } = words.builder;
  const [topic, setTopic] = useState<FreshTopic>('junction');
  const [marks, setMarks] = useState<FreshMarks>(1);
  const [seed, setSeed] = useState(anySeed);
  const [state, setState] = useState<'asked' | 'making' | 'none'>('asked');
  const end = useRef<() => void>(() => undefined);
  const stop = () => {
    end.current();
    setState('asked');
  };
  useEffect(() => () => end.current(), []);
  const make = () => {
    setState('making');
    end.current = search(
      { kind: 'fresh', wish: { topic, marks, seed, kit, words: freshWords } },
      (answer) => {
        if (answer.kind !== 'made') return;
        if (answer.result.kind !== 'fresh') return setState('none');
        setState('asked');
        setSeed(anySeed());
        onMade(answer.result.challenge);
      },
      () => setState('none'),
    );
  };
  const close = () => {
    stop();
    onClose();
  };
  const making = state === 'making';
  return (
    <Dialog
      open={open}
      title={fresh.title}
      closeWord={words.desk.close}
      onClose={close}
      foot={
        making ? (
          <Button icon={<Icon of={Square} />} onClick={stop}>
            {fresh.stop}
          </Button>
        ) : (
          <Button look="primary" icon={<Icon of={Sparkles} />} onClick={make}>
            {fresh.make}
          </Button>
        )
      }
    >
      <div className="builder-dialog">
        <p className="desk-quiet">{fresh.note}</p>
        <Choose
          label={fresh.topic}
          value={topic}
          options={FRESH_TOPICS.map((each) => [each, fresh.about(each)] as const)}
          onChange={setTopic}
        />
        <Choose
          label={fresh.marks}
          value={String(marks) as '1' | '2' | '3'}
          options={FRESH_MARKS.map((each) => [String(each) as '1' | '2' | '3', fresh.hard(each)] as const)}
          onChange={(each) => setMarks(Number(each) as FreshMarks)}
        />
        <NumberField
          label={fresh.seed}
          value={seed}
          least={1}
          most={LARGEST_SEED}
          onChange={(now) => now !== undefined && setSeed(Math.round(now))}
        />
        <p className="desk-quiet">{fresh.seedNote}</p>
        <p role="status">{making ? `${fresh.making} …` : state === 'none' ? fresh.none : ''}</p>
      </div>
    </Dialog>
  );
}
