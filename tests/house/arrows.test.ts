import { describe, expect, it } from 'vitest';
import { type Import, importsOf, sources } from './files.ts';

/**
 * Who may import whom. A folder may import itself and what stands beside its name; the arrows of the
 * engine are transitive only where they are written out.
 */
const SHARED: Record<string, readonly string[]> = {
  geometry: [],
  documents: ['geometry'],
  kit: ['geometry', 'documents'],
  track: ['geometry', 'documents', 'kit'],
  rules: ['geometry', 'documents', 'kit', 'track'],
  run: ['geometry', 'documents', 'kit', 'track'],
  odds: ['geometry', 'documents', 'kit', 'track', 'run'],
  steadiness: ['geometry', 'documents', 'kit', 'track', 'run'],
  goals: ['geometry', 'documents', 'kit', 'track', 'rules', 'run', 'odds', 'steadiness'],
  points: ['geometry', 'documents', 'kit', 'track', 'rules', 'run', 'odds', 'steadiness', 'goals'],
  judge: ['geometry', 'documents', 'kit', 'track', 'rules', 'run', 'odds', 'steadiness', 'goals', 'points'],
  search: [
    'geometry',
    'documents',
    'kit',
    'track',
    'rules',
    'run',
    'odds',
    'steadiness',
    'goals',
    'points',
    'judge',
    'library',
  ],
  library: ['geometry', 'documents', 'kit', 'track'],
  picture: ['geometry', 'documents', 'track'],
  description: ['geometry', 'documents', 'track'],
  wording: ['geometry', 'documents', 'room', 'wire', 'prep', 'evidence'],
  room: ['geometry', 'documents'],
  wire: ['geometry', 'documents', 'room', 'prep'],
  prep: ['geometry', 'documents', 'steadiness'],
  /** What a lesson has shown: above the engine and the room, below everything that shows it. */
  evidence: ['geometry', 'documents', 'kit', 'track', 'run', 'goals', 'judge', 'room'],
};

/** Packages that only one folder knows, and packages that the engine may use. */
const OWNERS: Record<string, string> = {
  konva: 'client/canvas/',
  'react-konva': 'client/canvas/',
  'socket.io': 'server/sockets/',
  'socket.io-client': 'client/link/',
  express: 'server/http/',
  helmet: 'server/http/',
  kysely: 'server/log/',
  libsql: 'server/log/',
  pg: 'server/log/',
  piscina: 'server/judging/',
  'prom-client': 'server/meter.ts',
  tar: 'server/building/',
  'pdf-lib': 'server/print/',
  '@pdf-lib/fontkit': 'server/print/',
  culori: 'shared/kit/',
  flatbush: 'shared/geometry/',
};
/** Commands and tests may speak to a server as a client does. */
const EXCEPTIONS: Record<string, readonly string[]> = { 'socket.io-client': ['server/commands/'] };

const files = sources('shared', 'server', 'client');
const imports = files.flatMap(importsOf);
const inProject = (i: Import) => /^(shared|server|client|tests)\//.test(i.to);
const folderOf = (path: string) => path.split('/').slice(0, 2).join('/');
const packageOf = (name: string) =>
  name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/');
const shown = (list: readonly Import[]) => list.map((i) => `${i.from} -> ${i.to}`);

describe('arrows between folders', () => {
  it('shared follows the order of the engine', () => {
    const wrong = imports.filter((i) => {
      if (!i.from.startsWith('shared/') || !inProject(i)) return false;
      const [from, to] = [i.from.split('/')[1]!, i.to.split('/')[1]!];
      return !i.to.startsWith('shared/') || (from !== to && !SHARED[from]?.includes(to));
    });
    expect(shown(wrong)).toEqual([]);
  });

  it('server and client never meet', () => {
    const wrong = imports.filter(
      (i) =>
        (i.from.startsWith('server/') && i.to.startsWith('client/')) ||
        (i.from.startsWith('client/') && i.to.startsWith('server/')),
    );
    expect(shown(wrong)).toEqual([]);
  });

  it('pages never import one another', () => {
    const pages = ['client/desk', 'client/board', 'client/tablet', 'client/check'];
    const wrong = imports.filter((i) => {
      const [from, to] = [folderOf(i.from), folderOf(i.to)];
      return pages.includes(to) && from !== to;
    });
    expect(shown(wrong)).toEqual([]);
  });

  it('a package that one folder owns is imported by that folder alone', () => {
    const wrong = imports.filter((i) => {
      const owner = OWNERS[packageOf(i.to)];
      if (inProject(i) || !owner || i.from.startsWith(owner)) return false;
      return !EXCEPTIONS[packageOf(i.to)]?.some((folder) => i.from.startsWith(folder));
    });
    expect(shown(wrong)).toEqual([]);
  });

  it('the link has no React', () => {
    const wrong = imports.filter((i) => i.from.startsWith('client/link/') && /^react/.test(i.to));
    expect(shown(wrong)).toEqual([]);
  });

  it('every import inside the project leads to a file', () => {
    const known = new Set(files.map((f) => f.path));
    const wrong = imports.filter((i) => inProject(i) && /\.tsx?$/.test(i.to) && !known.has(i.to));
    expect(shown(wrong)).toEqual([]);
  });

  it('there is no ring of imports', () => {
    const graph = new Map<string, string[]>();
    for (const i of imports.filter(inProject)) graph.set(i.from, [...(graph.get(i.from) ?? []), i.to]);
    expect(ringIn(graph)).toEqual([]);
  });
});

/** The first ring found by depth-first search, or an empty list. */
function ringIn(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const way: string[] = [];
  const visit = (node: string): string[] => {
    if (way.includes(node)) return [...way.slice(way.indexOf(node)), node];
    if (done.has(node)) return [];
    way.push(node);
    for (const next of graph.get(node) ?? []) {
      const ring = visit(next);
      if (ring.length > 0) return ring;
    }
    way.pop();
    done.add(node);
    return [];
  };
  for (const node of graph.keys()) {
    const ring = visit(node);
    if (ring.length > 0) return ring;
  }
  return [];
}
