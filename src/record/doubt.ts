/** What a doubt is about, in the order in which they are told. */
export const doubtSubjects = ["file", "seal", "signatures", "figures", "page", "ledger", "folder"] as const;

/** Something that keeps a record, or a folder of them, from being believed: found by checking, never by a user's typing. */
export type Doubt = {
  about: (typeof doubtSubjects)[number];
  /** The file, the line of a ledger, or the path inside the record. */
  place: string;
  /** What was found and what was expected, in one sentence. */
  says: string;
};
