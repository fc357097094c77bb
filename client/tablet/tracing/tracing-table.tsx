import { useEffect, useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { changeDevice, useDevice } from '../../parts/device-settings.ts';
import { holdsAt, usePixelRatio } from '../../parts/glass.ts';
import { useWords } from '../../parts/use-words.ts';
import { BeforePage } from './before-page.tsx';
import { CardPage } from './card-page.tsx';
import { GlassPage } from './glass-page.tsx';
import './tracing.css';

export interface TracingTableProps {
  readonly challenge: Challenge;
  readonly design: Design;
  readonly onClose: () => void;
}

type Step = 'card' | 'before' | 'glass';

/** A drawing true to size on the whole glass, to be traced through paper that lies on top. */
export function TracingTable({ challenge, design, onClose }: TracingTableProps) {
  const { tracing } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const glass = useDevice((device) => device.glass);
  const ratio = usePixelRatio();
  const [step, setStep] = useState<Step>(glass ? 'before' : 'card');
  const [locked, setLocked] = useState(false);
  useEffect(() => dialog.current?.showModal(), []);
  const holds = glass !== null && holdsAt(glass, ratio);
  const close = () => dialog.current?.close();
  const measure = () => setStep('card');
  const page = () => {
    if (!glass || step === 'card') {
      const use = async (pxPerMm: number) => {
        await changeDevice({ glass: { pxPerMm, ratio } });
        setStep('before');
      };
      const back = glass ? () => setStep('before') : close;
      return <CardPage pxPerMm={glass?.pxPerMm} onUse={(found) => void use(found)} onBack={back} />;
    }
    if (step === 'before' || !holds)
      return (
        <BeforePage holds={holds} onStart={() => setStep('glass')} onMeasure={measure} onClose={close} />
      );
    return (
      <GlassPage
        challenge={challenge}
        design={design}
        pxPerMm={glass.pxPerMm}
        locked={locked}
        onLocked={setLocked}
        onBack={() => setStep('before')}
      />
    );
  };
  return (
    <dialog
      ref={dialog}
      className="tracing"
      aria-label={tracing.title}
      onClose={onClose}
      // Some devices have a gesture of their own that closes dialogs.
      onCancel={(event) => locked && event.preventDefault()}
      onKeyDown={(event) => event.stopPropagation()}
    >
      {page()}
    </dialog>
  );
}
