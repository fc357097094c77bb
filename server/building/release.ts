import { createHash } from 'node:crypto';
import { chmodSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { create } from 'tar';
import { type Installed, licenceTexts, manifestIn, namedIn, neededBy } from './packages.ts';

/** What a teacher unpacks and starts, without an install step and without administrator rights. */

export interface ReleaseOptions {
  readonly root: string;
  /** The built pages and server. */
  readonly pages: string;
  readonly server: string;
  /** Where the archive is put. */
  readonly into: string;
  /** Puts this Node runtime into the archive; without it one must be installed. */
  readonly node: string | null;
}

export interface Release {
  readonly archive: string;
  /** The name of the folder that the archive unpacks to. */
  readonly name: string;
  readonly files: number;
  readonly parts: number;
}

const UNIX_START = `#!/bin/sh
# Starts Harbour Lines; Ctrl-C or closing this window ends it. Rooms are kept in the folder .data beside this file.
cd "$(dirname "$0")" || exit 1
if [ -x node/node ]; then exec node/node server/main.js; fi
if command -v node >/dev/null 2>&1; then exec node server/main.js; fi
echo "Harbour Lines needs Node.js 20.19 or newer, which is not installed here." >&2
exit 1
`;
const WINDOWS_START = `@echo off
rem Starts Harbour Lines; Ctrl-C or closing this window ends it. Rooms are kept in the folder .data beside this file.
cd /d "%~dp0"
if exist node\\node.exe (node\\node.exe server\\main.js) else (node server\\main.js)
if errorlevel 1 pause
`;
const EXECUTABLE = 0o755;
/** Named in the server for running from source, or only needed for building. */
const TOOLS = ['tsx', 'vite', '@vitejs/plugin-react'];
/** Of a package nobody needs at run time; every licence text is in PARTS.txt. */
const NOT_SHIPPED = /\.(map|d\.ts|d\.mts|d\.cts|md|markdown)$/i;

function filesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesIn(path) : [path];
  });
}

const textOf = (folders: readonly string[], ends: RegExp): string =>
  folders
    .flatMap(filesIn)
    .filter((file) => ends.test(file))
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n');

function copyPackage({ folder, place }: Installed, home: string): void {
  cpSync(folder, join(home, place), {
    recursive: true,
    dereference: true,
    // A package inside this one is a part of its own, if it is one at all.
    filter: (from) => relative(folder, from).split(sep)[0] !== 'node_modules' && !NOT_SHIPPED.test(from),
  });
}

/** Every part with its licence, and the texts of the licences. */
function partsList(parts: readonly Installed[], node: string | null): string {
  const rows = parts.map((part) => `${part.name} ${part.version}: ${part.licence}`);
  if (node) rows.push(`Node.js ${process.versions.node}: MIT, and the licences of its own parts`);
  const texts = parts.map((part) => {
    const found = licenceTexts(part);
    const text =
      found.length > 0 ? found.join('\n\n') : `The package brings no text; it states: ${part.licence}`;
    return `${'-'.repeat(78)}\n${part.name} ${part.version}\n\n${text}\n`;
  });
  return `Harbour Lines is MIT licensed, see LICENSE. It contains these parts:\n\n${rows.join('\n')}\n\n${texts.join('\n')}`;
}

const sumOf = (file: string) => createHash('sha256').update(readFileSync(file)).digest('hex');
const slashed = (path: string) => path.split(sep).join('/');

/** In the form that `sha256sum -c` reads. */
const sumsOf = (home: string): string =>
  filesIn(home)
    .map((file) => `${sumOf(file)}  ${slashed(relative(home, file))}\n`)
    .sort((a, b) => (a.slice(66) < b.slice(66) ? -1 : 1))
    .join('');

function putNode(node: string, home: string): void {
  const name = process.platform === 'win32' ? 'node.exe' : 'node';
  mkdirSync(join(home, 'node'));
  cpSync(node, join(home, 'node', name), { dereference: true });
  chmodSync(join(home, 'node', name), EXECUTABLE);
}

function putStarts(home: string): void {
  for (const name of ['start.sh', 'start.command']) {
    writeFileSync(join(home, name), UNIX_START);
    chmodSync(join(home, name), EXECUTABLE);
  }
  writeFileSync(join(home, 'start.bat'), WINDOWS_START.replaceAll('\n', '\r\n'));
}

/** Builds the archive for this kind of machine. What it needs is read off the built files themselves. */
export async function makeRelease({ root, pages, server, into, node }: ReleaseOptions): Promise<Release> {
  const { version = '0', dependencies = {} } = manifestIn(root);
  const name = `harbour-lines-${version}-${process.platform}-${process.arch}`;
  const home = join(into, name);
  rmSync(home, { recursive: true, force: true });
  mkdirSync(home, { recursive: true });
  const all = Object.keys(dependencies).filter((dependency) => !TOOLS.includes(dependency));
  const onServer = neededBy(root, namedIn(textOf([server], /\.js$/), all));
  const sources = textOf([join(root, 'client'), join(root, 'shared')], /\.(tsx?|css)$/);
  const onPages = neededBy(root, namedIn(sources, all));
  cpSync(pages, join(home, 'pages'), { recursive: true });
  cpSync(server, join(home, 'server'), { recursive: true });
  for (const part of onServer) copyPackage(part, home);
  for (const file of ['LICENSE', 'README.md']) cpSync(join(root, file), join(home, file));
  const manifest = { name: 'harbour-lines', version, private: true, type: 'module' };
  writeFileSync(join(home, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  const parts = [...new Map([...onServer, ...onPages].map((part) => [part.place, part])).values()];
  writeFileSync(join(home, 'PARTS.txt'), partsList(parts, node));
  if (node) putNode(node, home);
  putStarts(home);
  const sums = sumsOf(home);
  writeFileSync(join(home, 'SHA256SUMS'), sums);
  const archive = join(into, `${name}.tar.gz`);
  await create({ gzip: true, portable: true, cwd: into, file: archive }, [name]);
  writeFileSync(`${archive}.sha256`, `${sumOf(archive)}  ${name}.tar.gz\n`);
  rmSync(home, { recursive: true, force: true });
  return { archive, name, files: sums.split('\n').length - 1, parts: parts.length };
}
