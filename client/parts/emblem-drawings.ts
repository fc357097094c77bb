import { createLucideIcon } from 'lucide-react';
import { DRAWN_EMBLEMS, type DrawnEmblem } from '../../shared/picture/emblems.ts';
import type { IconShape } from './icon.tsx';

/** An icon of our own from paths on the library's grid of 24 units. */
const drawn = (name: DrawnEmblem): IconShape =>
  createLucideIcon(
    name,
    DRAWN_EMBLEMS[name].map((d, i) => ['path', { d, key: String(i) }]),
  );

/** Emblems that the icon library lacks. */
export const Kite = drawn('kite');
export const Lantern = drawn('lantern');
export const Candle = drawn('candle');
export const Ladder = drawn('ladder');
export const Bucket = drawn('bucket');
export const Teapot = drawn('teapot');
