// An expected "no" is plain data, so that it survives JSON and the border between server and browser.

export type Result<T, R> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: R };

export const accept = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const refuse = <R>(refusal: R): { readonly ok: false; readonly refusal: R } => ({ ok: false, refusal });
