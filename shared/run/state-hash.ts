import type { RobotState } from './robot.ts';

/** A fingerprint of states (FNV-1a over 32-bit words): equal runs have equal ones, bit for bit. */
export interface StateHash {
  value: number;
  readonly numbers: Float64Array;
  readonly words: Uint32Array;
}

/** Goes into every hash, so that a change of what is hashed can't pass for a change of the run. */
export const HASH_VERSION = 1;
const FNV_BASIS = 0x811c9dc5;
const FNV_PRIME = 0x01000193;

export function newStateHash(): StateHash {
  const numbers = new Float64Array(10);
  const hash = { value: FNV_BASIS | 0, numbers, words: new Uint32Array(numbers.buffer) };
  mix(hash, HASH_VERSION);
  return hash;
}

const mix = (hash: StateHash, word: number): void => {
  hash.value = Math.imul(hash.value ^ word, FNV_PRIME);
};

/** Adds a robot's state. */
export function hashState(hash: StateHash, r: RobotState): void {
  const { numbers, words } = hash;
  numbers[0] = r.x;
  numbers[1] = r.y;
  numbers[2] = r.cos;
  numbers[3] = r.sin;
  numbers[4] = r.speedLeft;
  numbers[5] = r.speedRight;
  numbers[6] = r.odometer;
  numbers[7] = r.offset;
  numbers[8] = r.speed;
  numbers[9] = r.turned;
  for (let i = 0; i < words.length; i++) mix(hash, words[i]!);
  mix(hash, (r.stepCount << 4) ^ r.mode);
  mix(hash, (r.readings << 2) ^ r.pace);
}

/** Eight hexadecimal digits. */
export const hashText = (hash: StateHash): string => (hash.value >>> 0).toString(16).padStart(8, '0');
