import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';

/** An installed package that a release needs. */
export interface Installed {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Its folder, and the same below the project's root with slashes. */
  readonly folder: string;
  readonly place: string;
}

interface Manifest {
  readonly name?: string;
  readonly version?: string;
  readonly license?: string | { readonly type?: string };
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

export const manifestIn = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest;

/** Where Node finds `name` from `folder`; undefined for an optional one of another system. */
function findFrom(folder: string, name: string): string | undefined {
  for (let up = folder; ; up = dirname(up)) {
    const found = join(up, 'node_modules', name);
    if (existsSync(join(found, 'package.json'))) return found;
    if (up === dirname(up)) return undefined;
  }
}

/** Which of `names` are named as a module in `text`: imported, required or resolved. */
export const namedIn = (text: string, names: readonly string[]): string[] =>
  names.filter((name) => new RegExp(`["'\`]${name.replaceAll('.', '\\.')}(/|["'\`])`).test(text));

/** The packages called `names` in `root`, and everything that they need in turn, by place. */
export function neededBy(root: string, names: readonly string[]): Installed[] {
  const found = new Map<string, Installed>();
  const look = (from: string, name: string, optional: boolean) => {
    const folder = findFrom(from, name);
    if (!folder && optional) return;
    if (!folder) throw new Error(`The package ${name} is not installed. Run npm install first.`);
    if (found.has(folder)) return;
    const manifest = manifestIn(folder);
    const { license, dependencies = {}, optionalDependencies = {} } = manifest;
    found.set(folder, {
      name: manifest.name ?? name,
      version: manifest.version ?? '',
      licence: (typeof license === 'object' ? license.type : license) ?? 'not stated',
      folder,
      place: relative(root, folder).split(sep).join('/'),
    });
    const all = Object.keys({ ...dependencies, ...optionalDependencies });
    // Types are for compilers.
    for (const needed of all.filter((each) => !each.startsWith('@types/')))
      look(folder, needed, needed in optionalDependencies);
  };
  for (const name of names) look(root, name, false);
  return [...found.values()].sort((a, b) => (a.place < b.place ? -1 : 1));
}

/** The texts of licences and notices that a package brings along. */
export const licenceTexts = ({ folder }: Installed): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && /^(licen[cs]e|copying|notice)/i.test(entry.name))
    .map((entry) => readFileSync(join(folder, entry.name), 'utf8').trim());
