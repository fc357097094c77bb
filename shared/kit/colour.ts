import {
  convertLrgbToRgb,
  convertRgbToLrgb,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  modeLab65,
  modeLrgb,
  modeRgb,
  modeXyz65,
  parseHex,
  type Rgb,
  useMode as registerMode,
} from 'culori/fn';

/** Colour differences are shown to a teacher who sets up a kit; no verdict depends on them. */

for (const mode of [modeRgb, modeLrgb, modeXyz65, modeLab65]) registerMode(mode);

/** Normal sight, and the three kinds of colour-deficient sight, each fully so. */
export const SIGHTS = ['normal', 'protan', 'deutan', 'tritan'] as const;
export type Sight = (typeof SIGHTS)[number];

/** Whether the published matrices are applied to light (linear) or to the encoded values (gamma). */
export const CONVENTIONS = ['linear', 'gamma'] as const;
export type Convention = (typeof CONVENTIONS)[number];

/** sRGB, each part 0 to 1 (a simulated colour may lie a little outside). */
export interface Srgb {
  readonly r: number;
  readonly g: number;
  readonly b: number;
}

/** CIE L*, a*, b* (D65). */
export interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

const ciede2000 = differenceCiede2000();
const asRgb = ({ r, g, b }: Srgb): Rgb => ({ mode: 'rgb', r, g, b });

/** Reads `#RRGGBB`; throws on anything else, which a kit's schema refuses before. */
export function srgbOf(hex: string): Srgb {
  const rgb = parseHex(hex);
  if (!rgb) throw new RangeError(`not a colour: ${hex}`);
  return { r: rgb.r, g: rgb.g, b: rgb.b };
}

/** CIEDE2000 (Sharma, Wu and Dalal 2005) of two Lab colours. */
export const labDifference = (one: Lab, two: Lab): number =>
  ciede2000({ mode: 'lab65', ...one }, { mode: 'lab65', ...two });

/** CIEDE2000 of two sRGB colours. */
export const colourDifference = (one: Srgb, two: Srgb): number => ciede2000(asRgb(one), asRgb(two));

/**
 * The colour as colour-deficient sight has it (Machado, Oliveira and Fernandes 2009); `severity` 0 to 1,
 * between its published steps of 0.1 the neighbouring matrices are mixed.
 */
export function seen(colour: Srgb, sight: Sight, convention: Convention, severity = 1): Srgb {
  if (sight === 'normal') return colour;
  if (convention === 'gamma') return clamped(mixed(asRgb(colour), sight, severity));
  const light = mixed({ ...convertRgbToLrgb(asRgb(colour)), mode: 'rgb' }, sight, severity);
  return clamped(convertLrgbToRgb(clamped(light)));
}

/** By the two published matrices beside a severity; the library takes the nearest of them. */
function mixed(colour: Rgb, sight: Exclude<Sight, 'normal'>, severity: number): Srgb {
  const step = Math.floor(severity * 10);
  const [low, high] = [step, step + 1].map((tenths) => FILTERS[sight](Math.min(1, tenths / 10))(colour));
  const share = severity * 10 - step;
  const mix = (part: 'r' | 'g' | 'b'): number => low![part] * (1 - share) + high![part] * share;
  return { r: mix('r'), g: mix('g'), b: mix('b') };
}

const FILTERS = {
  protan: filterDeficiencyProt,
  deutan: filterDeficiencyDeuter,
  tritan: filterDeficiencyTrit,
} as const;

const unit = (value: number): number => Math.min(Math.max(value, 0), 1);
const clamped = ({ r, g, b }: Srgb): Srgb => ({ r: unit(r), g: unit(g), b: unit(b) });

/** A way to look at colours. */
export interface Look {
  readonly sight: Sight;
  readonly convention: Convention;
}

/** Normal sight once, which nobody simulates; every other kind in both conventions. */
export const LOOKS: readonly Look[] = SIGHTS.flatMap((sight) =>
  (sight === 'normal' ? CONVENTIONS.slice(0, 1) : CONVENTIONS).map((convention) => ({ sight, convention })),
);

export interface SeenDifference extends Look {
  readonly difference: number;
}

/** CIEDE2000 of two colours, `#RRGGBB`, in each of LOOKS. */
export function differences(one: string, two: string): SeenDifference[] {
  const [a, b] = [srgbOf(one), srgbOf(two)];
  return LOOKS.map(({ sight, convention }) => ({
    difference: colourDifference(seen(a, sight, convention), seen(b, sight, convention)),
    sight,
    convention,
  }));
}

/** The smallest of some differences; of equal ones the first. */
export const leastOf = <T extends { readonly difference: number }>(all: readonly T[]): T =>
  all.reduce((least, found) => (found.difference < least.difference ? found : least));
