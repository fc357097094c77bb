import { ListChecks } from 'lucide-react';
import { useMemo, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { readOut } from '../../../shared/picture/read-out.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWords } from '../../parts/use-words.ts';
import './read-out.css';

export interface ReadOutProps {
  readonly challenge: Challenge;
  readonly design: Design;
}

/** A drawing read out along the printed grid, to be ticked off while somebody draws it on paper. */
export function ReadOut({ challenge, design }: ReadOutProps) {
  const { toPaper } = useWords();
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button icon={<Icon of={ListChecks} size={22} />} aria-expanded={open} onClick={() => setOpen(!open)}>
        {toPaper.readOut}
      </Button>
      {open && <Steps challenge={challenge} design={design} />}
    </>
  );
}

function Steps({ challenge, design }: ReadOutProps) {
  const { toPaper } = useWords();
  const { sheet, kit } = challenge;
  const steps = useMemo(
    () => readOut(sheet, design.drawing).map((step, i) => ({ step, number: i + 1 })),
    [sheet, design],
  );
  const [done, setDone] = useState<ReadonlySet<number>>(new Set());
  const turn = (number: number) =>
    setDone((before) => {
      const others = [...before].filter((one) => one !== number);
      return new Set(before.has(number) ? others : [...others, number]);
    });
  return (
    <div className="read-out">
      <p className="quiet-words">{toPaper.how}</p>
      <ol>
        {steps.map(({ step, number }) => (
          <li key={number}>
            <label data-done={done.has(number)}>
              <input type="checkbox" checked={done.has(number)} onChange={() => turn(number)} />
              {step.kind === 'mark' && <MarkPicture kit={kit} word={step.word} onPaper size={18} />}
              <span>{toPaper.step(step)}</span>
            </label>
          </li>
        ))}
      </ol>
    </div>
  );
}
