// The bytes of a draft and of an edition: RFC 8785 text. The SHA-256 of an edition's bytes is its name, and anyone can compute it from the
// exported file. Its number stands in the bytes: going back to older rules makes another edition with another name.
import { canonicalJson } from '../base/canonical-json.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';

export const draftText = (rulebook: Rulebook): string => canonicalJson(rulebook);

export const editionText = (rulebook: Rulebook, editionNo: number): string => canonicalJson({ ...rulebook, editionNo });
