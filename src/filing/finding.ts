import { isInTolerance } from "../record/phase-statement.ts";
import type { Statement } from "../record/record-schema.ts";

/** Whether a loop found so needs a decision about what it did before: out of tolerance, or not surely inside. */
export function isFinding(asFound: Statement | null | undefined): boolean {
  return asFound !== null && asFound !== undefined && !isInTolerance(asFound);
}
