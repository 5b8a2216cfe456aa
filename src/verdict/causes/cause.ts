import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import type { CausePlace, Evidence, NamedCause } from "./finding.ts";

/** What cures a cause: at which place, and in words for whoever does it. */
export type Remedy =
  | { cures: "set-up" | "wiring"; does: string }
  /** New constants, unless the block itself is wrong and they would stay as they are. */
  | { cures: "scaling"; does: string; isOfConstants?: false }
  /** With `isFirst` nothing is said of the sensor before, whatever else is found. */
  | { cures: "readings"; does: string; isFirst?: true }
  /** Whether a sensor is taught anew or replaced is for the forecast to say; `before` is to be seen to before a teach. */
  | { cures: "sensor"; does: null; before?: string }
  /** A switched output is judged by itself. */
  | { cures: "switched output"; does: null };

/** What a detector saw of its cause in the readings of a phase. */
export type Sighting = {
  /** In words, as an opinion: "consistent with". */
  says: string;
  evidence: Evidence[];
  /** Ids of what is not excluded yet; the cause itself is none of its rivals. */
  rivals: readonly string[];
  /** Where it is not at the usual place of the cause. */
  stage?: CausePlace;
  /** Where something else than usual would tell. */
  separatedBy?: string;
};

/** One cause: what it is called, where it sits, what would tell it from others, what cures it, how it is found. */
export type Cause = NamedCause & {
  /** A slug that records carry: once published it keeps its meaning. */
  id: string;
  place: CausePlace;
  separatedBy: string;
  remedy: Remedy;
  /** Where something else cures it when it is found at another place. */
  remedyAt?: Partial<Record<CausePlace, Remedy>>;
  /** Where one of its rivals, cured elsewhere, is as likely: what is done while that is not excluded. */
  remedyBeside?: { rival: string; remedy: Remedy };
  /** Of the wiring, and yet in the signal at the sensor already. */
  isSeenAtSensor?: true;
  /** Sightings in the order of the loop; none where the readings do not show it. */
  detect: (evidence: CauseEvidence) => readonly Sighting[];
};
