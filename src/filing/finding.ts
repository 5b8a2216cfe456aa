import type { Statement } from "../record/record-schema.ts";

/** Whether a loop found so needs a decision about what it did before: out of tolerance, or not surely inside. */
export function isFinding(asFound: Statement | null | undefined): boolean {
  return asFound === "fail" || asFound === "conditional fail" || asFound === "cannot be decided";
}
