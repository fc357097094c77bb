import { createHash } from 'node:crypto';
import type { Plugin, Rolldown } from 'vite';

type OutputBundle = Rolldown.OutputBundle;
type OutputChunk = Rolldown.OutputChunk;

/** The chunk that becomes the worker at the root of the server. */
export const OFFLINE_WORKER = 'offline-worker';

const chunksOf = (bundle: OutputBundle): OutputChunk[] =>
  Object.values(bundle).filter((file): file is OutputChunk => file.type === 'chunk');

/** A page's script with everything that it asks for, at once or later. */
function reached(bundle: OutputBundle, entry: string): Set<string> {
  const files = new Set<string>();
  const visit = (name: string) => {
    const file = bundle[name];
    if (!file || files.has(name)) return;
    files.add(name);
    if (file.type !== 'chunk') return;
    for (const next of [...file.imports, ...file.dynamicImports]) visit(next);
    for (const next of [
      ...(file.viteMetadata?.importedCss ?? []),
      ...(file.viteMetadata?.importedAssets ?? []),
    ])
      visit(next);
  };
  for (const chunk of chunksOf(bundle)) if (chunk.isEntry && chunk.name === entry) visit(chunk.fileName);
  return files;
}

/**
 * Tells the offline worker the files of its build: those of the tablet's page, and what no chunk names
 * (fonts and the judge's worker).
 */
export const offlinePlugin = (): Plugin => ({
  name: 'offline-files',
  generateBundle(_, bundle) {
    const worker = chunksOf(bundle).find(({ name }) => name === OFFLINE_WORKER);
    if (!worker) return;
    const tablet = reached(bundle, 'tablet');
    const others = ['desk', 'board', 'check'].flatMap((page) => [...reached(bundle, page)]);
    const files = Object.keys(bundle)
      .filter((name) => name.startsWith('assets/') && (tablet.has(name) || !others.includes(name)))
      .map((name) => `/${name}`);
    const all = [...files.sort(), '/mark.svg'];
    const build = createHash('sha256').update(all.join('\n')).digest('hex').slice(0, 16);
    worker.code = `self.FILES=${JSON.stringify(all)};self.BUILD=${JSON.stringify(build)};\n${worker.code}`;
  },
});
