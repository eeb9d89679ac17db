// One brand helper for every quantity. A number without a brand is a count or a pure ratio; all else says what it measures.
import { invariant } from '../base/invariant.ts';

declare const unit: unique symbol;

/** A number that measures one thing only; made by the constructors of this folder. */
export type Unit<N extends string> = number & { readonly [unit]: N };

/** The same for exact products that leave the range of whole doubles. */
export type BigUnit<N extends string> = bigint & { readonly [unit]: N };

/** A constructor for whole, non-negative quantities. Throws a Fault on anything else. */
export function wholeUnit<N extends string>(name: N): (value: number) => Unit<N> {
  return (value) => {
    invariant(Number.isSafeInteger(value) && value >= 0, `${name} must be a whole number from 0 up, not ${value}`);
    return value as Unit<N>;
  };
}

/** A constructor for whole quantities that may be negative. Throws a Fault on anything else. */
export function signedUnit<N extends string>(name: N): (value: number) => Unit<N> {
  return (value) => {
    invariant(Number.isSafeInteger(value), `${name} must be a whole number, not ${value}`);
    return value as Unit<N>;
  };
}
