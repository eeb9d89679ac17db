// The bytes of an edition: RFC 8785 text of its document. Its SHA-256 is the edition's name, and anyone can compute it from the exported file.
import { canonicalJson } from '../base/canonical-json.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';

export const editionText = (rulebook: Rulebook): string => canonicalJson(rulebook);
