/** Joins class names, leaving out what is not there. */
export const classNames = (...names: readonly (string | false | undefined)[]): string => names.filter(Boolean).join(' ');
