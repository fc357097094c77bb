import { useEffect, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Weather } from '../../shared/documents/outlook.ts';
import type { FleetPiece, FleetRobot } from '../../shared/judge/fleet.ts';
import type { FrayedInk } from '../../shared/steadiness/frayed-ink.ts';

export interface FleetOrder {
  readonly kind: 'fleet';
  readonly challenge: Challenge;
  readonly design: Design;
  readonly weather: Weather;
}
/** null: all has been driven. */
export type FleetAnswer = { readonly fleet: FleetPiece | null };

/** What has been driven so far. */
export interface FleetSoFar {
  readonly robots: readonly FleetRobot[];
  /** null until the last robot is there. */
  readonly frayed: FrayedInk | null;
  /** All that there is to drive has been driven. */
  readonly whole: boolean;
}

const NO_FLEET: FleetSoFar = { robots: [], frayed: null, whole: false };

export function withPiece(fleet: FleetSoFar, piece: FleetPiece | null): FleetSoFar {
  if (piece === null) return { ...fleet, whole: true };
  return 'robot' in piece
    ? { ...fleet, robots: [...fleet.robots, piece.robot] }
    : { ...fleet, frayed: piece.frayed };
}

type OnPiece = (piece: FleetPiece | null) => void;

/** Drives in a worker of its own, or in the page, a robot between frames, where that can't be loaded. Returns how to stop. */
function driveAside(order: FleetOrder, onPiece: OnPiece): () => void {
  let wanted = true;
  const worker = new Worker(new URL('./judge-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<FleetAnswer>) => onPiece(data.fleet);
  worker.onerror = (event) => {
    event.preventDefault();
    void driveHere(
      order,
      (piece) => wanted && onPiece(piece),
      () => wanted,
    ).catch(() => undefined);
  };
  worker.postMessage(order);
  return () => {
    wanted = false;
    worker.terminate();
  };
}

async function driveHere(order: FleetOrder, onPiece: OnPiece, wanted: () => boolean): Promise<void> {
  const { fleetOf } = await import('../../shared/judge/fleet.ts');
  for (const piece of fleetOf(order.challenge, order.design, order.weather)) {
    if (!wanted()) return;
    onPiece(piece);
    await new Promise((resolve) => setTimeout(resolve));
  }
  onPiece(null);
}

/** Twenty disturbed robots on a drawing, as they come; none as long as something is missing. */
export function useFleet(challenge: Challenge | null, design: Design | null, weather: Weather): FleetSoFar {
  const [fleet, setFleet] = useState(NO_FLEET);
  useEffect(() => {
    setFleet(NO_FLEET);
    if (!challenge || !design) return;
    return driveAside({ kind: 'fleet', challenge, design, weather }, (piece) =>
      setFleet((before) => withPiece(before, piece)),
    );
  }, [challenge, design, weather]);
  return fleet;
}
