import { whole as en } from '../../shared/wording/en/whole.ts';
import { whole as es } from '../../shared/wording/es/whole.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { ofBuilding } from './building.ts';
import { ofClosing } from './closing.ts';
import { ofDriving } from './driving.ts';
import { ofForetelling } from './foretelling.ts';
import { ofGoals, ofQuestions } from './goals.ts';
import { ofKits } from './kits.ts';
import { ofBefore, ofMakers, ofPreparing, ofRefusals, ofReports } from './makers.ts';
import { listedOnes, plainOnes } from './pages.ts';
import { ofFindings, ofRuns } from './runs.ts';
import { ofScenes } from './scenes.ts';
import { ofSheet } from './sheet.ts';
import { ofStage } from './stage.ts';

/** Every sentence of a language, as pages could say it: strings, and functions with sample values. */

export interface Said {
  /** Where it stands: `tablet.handing.points`. */
  readonly path: string;
  /** With what it was asked; empty for a string. */
  readonly asked: string;
  readonly text: string;
}

const LANGUAGES = { en, es } as const;

/** Strings of a value, however deep. */
const textsOf = (value: unknown): string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(textsOf)
      : [];

/** The same words, noting what is said by whom. `names` gets the path of each function. */
function heard(words: unknown, said: Said[], names: Set<string>, path = ''): unknown {
  if (typeof words === 'string') said.push({ path, asked: '', text: words });
  if (typeof words === 'function') {
    names.add(path);
    return (...asked: unknown[]) => {
      const answer: unknown = words(...asked);
      for (const text of textsOf(answer)) said.push({ path, asked: JSON.stringify(asked), text });
      return answer;
    };
  }
  if (typeof words !== 'object' || words === null) return words;
  const parts = Object.entries(words).map(([name, part]) => [
    name,
    heard(part, said, names, path === '' ? name : `${path}.${name}`),
  ]);
  return Object.fromEntries(parts);
}

export interface Heard {
  readonly said: readonly Said[];
  /** Functions that nobody asked. */
  readonly silent: readonly string[];
}

const ASKED: readonly ((words: Wording) => void)[] = [
  plainOnes,
  listedOnes,
  ofFindings,
  ofRuns,
  ofGoals,
  ofQuestions,
  ofKits,
  ofMakers,
  ofRefusals,
  ofReports,
  ofForetelling,
  ofClosing,
  ofDriving,
  ofPreparing,
  ofBefore,
  ofSheet,
  ofScenes,
  ofStage,
  ofBuilding,
];

/** Asks a language for everything. */
export function everySentence(language: keyof typeof LANGUAGES): Heard {
  const said: Said[] = [];
  const names = new Set<string>();
  const words = heard(LANGUAGES[language], said, names) as Wording;
  for (const ask of ASKED) ask(words);
  const asked = new Set(said.map(({ path }) => path));
  const plumbing = /^(numbers|desk\.list|desk\.time)\b/;
  // Two languages list their words in orders of their own; what is asked keeps its order.
  said.sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0));
  return { said, silent: [...names].filter((name) => !asked.has(name) && !plumbing.test(name)) };
}
