import type { Kit } from '../../../shared/documents/kit.ts';
import { type DocumentProblem, parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { KIT_FILE, KitFile } from '../../../shared/wire/kits.ts';
import { LIMITS } from '../../../shared/wire/protocol.ts';

/** Kits as files: written with line breaks, so that people and version control can read them. */

export const kitAsFile = (kit: Kit): string =>
  `${JSON.stringify(writeDocument(KitFile, { ...KIT_FILE, kit }), null, 2)}\n`;

export type ReadKit =
  | { readonly ok: true; readonly kit: Kit }
  /** `problem`: the first thing that is wrong in a file which is one of a kit. */
  | { readonly ok: false; readonly trouble: 'not-a-kit' | 'too-large'; readonly problem?: DocumentProblem };

/** Line breaks and blanks make a file larger than what is sent. */
export const LARGEST_KIT_FILE = 4 * LIMITS.kitBytes;

export function kitFromFile(text: string): ReadKit {
  if (text.length > LARGEST_KIT_FILE) return { ok: false, trouble: 'too-large' };
  try {
    const read = parseDocument(KitFile, JSON.parse(text));
    if (read.ok) return { ok: true, kit: read.value.kit };
    const problem = read.problems.find(({ path }) => path[0] === 'kit');
    return { ok: false, trouble: 'not-a-kit', ...(problem && { problem }) };
  } catch {
    return { ok: false, trouble: 'not-a-kit' };
  }
}

/** Letters, digits and lines, so that every system takes it. */
export const fileName = ({ name }: Kit, ending: string): string =>
  `${name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'kit'}.${ending}`;
