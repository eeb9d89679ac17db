// One place in a document that is wrong: where, which fault, and what to do about it. Plain data, so that an editor can point at the place.

/** From the root of the document: keys of objects and positions in lists. */
export type DocumentPath = readonly (string | number)[];

export interface DocumentFault {
  readonly path: DocumentPath;
  readonly code: string;
  /** A plain sentence that says what to do. */
  readonly message: string;
  readonly hint?: string;
}
