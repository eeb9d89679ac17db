// The wire document and the domain type are one shape: a key, a unit or an option that only one of them knows fails to compile.
import { expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import type { rulebookSchema } from '#lib/contracts/rulebook.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';

type Leaf = string | number | boolean | null | undefined;

/** The schema's type with every level read-only, as the domain has it. */
type Frozen<T> = T extends Leaf
  ? T
  : T extends readonly (infer Item)[]
    ? readonly Frozen<Item>[]
    : { readonly [Key in keyof T]: Frozen<T[Key]> };

type Wire = Frozen<z.output<typeof rulebookSchema>>;
type Domain = Frozen<Rulebook>;

test('the parsed wire document is exactly the domain type', () => {
  expectTypeOf<Wire>().toEqualTypeOf<Domain>();
  expectTypeOf<Wire>().toExtend<Rulebook>();
  expectTypeOf<Rulebook>().toExtend<Wire>();
});

test('freezing the domain type changes nothing: it is read-only at every level', () => {
  expectTypeOf<Domain>().toEqualTypeOf<Rulebook>();
});
