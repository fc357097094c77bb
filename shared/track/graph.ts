import type { Kit } from '../documents/kit.ts';
import type { Layout } from './layout.ts';
import type { Track } from './track.ts';

/** The planar graph of everything drawn and given, built in the time of its pieces and meetings. */
export function buildTrack(layout: Layout, _kit: Kit): Track {
  return { layout, lines: [], nodes: [], edges: [], crossings: [] };
}
