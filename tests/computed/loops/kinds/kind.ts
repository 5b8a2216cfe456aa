import type { Needs } from "../draw-loop.ts";
import type { Change, Loop, ReadingRow } from "../loop.ts";
import type { Random } from "../random.ts";

/** What an engineer can say of a loop. */
export const advices = [
  "leave",
  "re-teach",
  "re-scale",
  "repair wiring or set-up",
  "replace",
  "cannot be decided",
] as const;
export type Advice = (typeof advices)[number];

/** One kind of fault: what it does to a loop, and what an experienced engineer would say of it. */
export type Kind = {
  id: string;
  /** Row of the list of signatures that it comes from; null where it is none of them. */
  row: number | null;
  stage: "sensor" | "wiring" | "input card" | "scaling" | "switched output" | "rig" | "readings";
  needs: Needs;
  /** Sizes that are drawn, in tolerances; none where the fault has a size of its own. */
  sizes?: readonly [number, number];
  apply?: Change;
  /** What is done to the rows that were written, for a fault of whoever wrote them. */
  miswrite?: (rows: readonly ReadingRow[], loop: Loop, size: number, random: Random) => readonly ReadingRow[];
  /** Acceptable advice where the fault matters, the best first. */
  advice: readonly Advice[];
  /** Other kinds that the same readings fit; naming one of them is not wrong. */
  alike?: readonly string[];
  /** Where it arises cannot be told from what is read, so that no name is asked for. */
  isNameless?: true;
  /** It is put right whether or not the loop is in tolerance. */
  isAlwaysMended?: true;
  /** The right answer may be that the table is refused. */
  mayBeRefused?: true;
  /** It stands on top of everything that the sensor gives; a replacement is right where its own curve says so. */
  mayBeReplaced?: "by curve" | "by scatter";
};

/** Most of the span that a fault with a size of its own choice may make. */
export const mostOfSpan = 0.15;
