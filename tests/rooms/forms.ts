import fc from 'fast-check';
import type * as z from 'zod/mini';

/** Random values from the forms themselves, so that a new command is sent without being named here. */

export type Form = z.ZodMiniType<unknown, unknown>;

interface Check {
  readonly check: string;
  readonly value?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly pattern?: RegExp;
}

interface Def {
  readonly type: string;
  readonly shape?: Readonly<Record<string, Form>>;
  readonly options?: readonly Form[];
  readonly values?: readonly unknown[];
  readonly entries?: Readonly<Record<string, string>>;
  readonly innerType?: Form;
  readonly element?: Form;
  readonly checks?: readonly { readonly _zod: { readonly def: Check } }[];
}

/** What stands where a form takes any text, or anything at all. */
export interface Fillings {
  readonly text: fc.Arbitrary<string>;
  readonly open: fc.Arbitrary<unknown>;
}

const MOST = 100_000;

function boundsOf({ checks = [] }: Def) {
  const all = checks.map((one) => one._zod.def);
  const of = (name: string) => all.find((one) => one.check === name);
  return {
    least: of('greater_than')?.value ?? of('min_length')?.minimum,
    most: of('less_than')?.value ?? of('max_length')?.maximum,
    pattern: of('string_format')?.pattern,
  };
}

function textOf(def: Def, text: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const { least = 0, most = 64, pattern } = boundsOf(def);
  if (pattern) return fc.oneof(text, fc.stringMatching(pattern));
  return fc.oneof(text, fc.string({ minLength: least, maxLength: Math.min(most, 64) }));
}

/** Values that a form accepts, but for refinements that only the form knows. Throws for a form of a new type. */
export function arbitraryOf(form: Form, fillings: Fillings): fc.Arbitrary<unknown> {
  const def = form._zod.def as unknown as Def;
  const of = (inner: Form) => arbitraryOf(inner, fillings);
  const { least, most } = boundsOf(def);
  switch (def.type) {
    case 'object':
      return fc.record(Object.fromEntries(Object.entries(def.shape!).map(([key, each]) => [key, of(each)])));
    case 'union':
      return fc.oneof(...def.options!.map(of));
    case 'literal':
      return fc.constantFrom(...def.values!);
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries!));
    case 'string':
      return textOf(def, fillings.text);
    case 'number':
      return fc.oneof(
        fc.integer({ min: least ?? -MOST, max: most ?? MOST }),
        fc.integer({ min: Math.max(0, least ?? 0), max: Math.min(3, most ?? 3) }),
      );
    case 'boolean':
      return fc.boolean();
    case 'nullable':
      return fc.option(of(def.innerType!));
    case 'optional':
      return fc.option(of(def.innerType!), { nil: undefined });
    case 'array':
      return fc.array(of(def.element!), { minLength: least ?? 0, maxLength: Math.min(most ?? 3, 3) });
    case 'unknown':
      return fillings.open;
    default:
      throw new Error(`no random values for a form of type ${def.type}`);
  }
}
