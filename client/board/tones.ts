import { useCallback, useEffect, useRef, useState } from 'react';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { useEachFrame } from '../canvas/use-each-frame.ts';

/** What sounds: a mark that is read, and a robot that arrives. */
export type ToneKind = 'reading' | 'arrival';

/** When something sounds, s of the run. */
export interface Tone {
  readonly t: Seconds;
  readonly kind: ToneKind;
}

export const tonesOf = (traces: readonly Trace[]): Tone[] =>
  traces
    .flatMap(({ events }) => events)
    .flatMap(({ kind, t }): Tone[] =>
      kind === 'read' ? [{ t, kind: 'reading' }] : kind === 'finish' ? [{ t, kind: 'arrival' }] : [],
    );

/** A longer step is a jump to another place of the run, which is silent. */
const LONGEST_STEP: Seconds = 0.6;

/** What sounds between two frames of a run that goes on. */
export function between(tones: readonly Tone[], before: Seconds, t: Seconds): Tone[] {
  return t <= before || t - before > LONGEST_STEP
    ? []
    : tones.filter((tone) => tone.t > before && tone.t <= t);
}

/** Pitches of equal temperament around A4 = 440 Hz (ISO 16), one after another. */
const PITCHES: Readonly<Record<ToneKind, readonly number[]>> = { reading: [660], arrival: [523, 784] };
const LENGTH: Seconds = 0.11;
/** Of full scale: as loud as a quiet word beside a projector. */
const LOUDNESS = 0.06;

function play(context: AudioContext, kind: ToneKind): void {
  PITCHES[kind].forEach((pitch, i) => {
    const from = context.currentTime + i * LENGTH;
    const tone = new OscillatorNode(context, { frequency: pitch, type: 'sine' });
    const swell = new GainNode(context, { gain: 0 });
    swell.gain.setValueAtTime(0, from);
    swell.gain.linearRampToValueAtTime(LOUDNESS, from + 0.015);
    swell.gain.linearRampToValueAtTime(0, from + LENGTH);
    tone.connect(swell).connect(context.destination);
    tone.start(from);
    tone.stop(from + LENGTH);
  });
}

/** Plays the tones of a run while it is shown. Says whether the browser still waits for somebody to press a key. */
export function useTones(tones: readonly Tone[], timeAt: () => Seconds): { readonly waits: boolean } {
  const context = useRef<AudioContext | null>(null);
  const [waits, setWaits] = useState(false);
  useEffect(() => {
    const made = new AudioContext();
    context.current = made;
    const look = () => setWaits(made.state === 'suspended');
    const wake = () => void made.resume();
    look();
    made.addEventListener('statechange', look);
    window.addEventListener('pointerdown', wake);
    window.addEventListener('keydown', wake);
    return () => {
      made.removeEventListener('statechange', look);
      window.removeEventListener('pointerdown', wake);
      window.removeEventListener('keydown', wake);
      void made.close();
    };
  }, []);
  const before = useRef<Seconds>(Number.POSITIVE_INFINITY);
  const show = useCallback(
    (t: Seconds) => {
      const now = context.current;
      // Time stands still in one that waits: what is put there sounds all at once when it wakes.
      if (now?.state === 'running') for (const { kind } of between(tones, before.current, t)) play(now, kind);
      before.current = t;
    },
    [tones],
  );
  useEachFrame(timeAt, show);
  return { waits };
}
