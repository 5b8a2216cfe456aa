/** Where in the loop a cause sits; "readings" is the sheet itself. */
export type CausePlace = "sensor" | "wiring" | "input card" | "scaling" | "switched output" | "rig" | "readings";

/** A number that a finding rests on. */
export type Evidence = { name: string; value: number; unit: string; standardUncertainty?: number };

/** A cause as a record names it: by its id, and in words, so that the record can be read without this program. */
export type NamedCause = { id: string; title: string };

/** One thing that the numbers are consistent with: an opinion, with what it rests on and what would overturn it. */
export type Finding = NamedCause & {
  stage: CausePlace;
  says: string;
  evidence: Evidence[];
  /** What the numbers do not exclude yet. */
  rivals: NamedCause[];
  /** The one measurement that would tell them apart. */
  separatedBy: string;
};

/** What the readings cannot tell, and what would. */
export type CauseNote = {
  title: string;
  says: string;
  evidence: Evidence[];
  candidates: NamedCause[];
  separatedBy: string;
};
