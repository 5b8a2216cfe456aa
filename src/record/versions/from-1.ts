import type { JsonObject } from "./changed-at.ts";

/**
 * A record of form 1, as spanwright 0.1.0 and 0.2.0 wrote it, in form 2. A line a change; the record itself stays as it
 * was written.
 *
 * @param written says of itself that it is of form 1; whether it is, is asked of what comes out
 * @returns the same in form 2, seal and signatures as they are
 * Source: own choice.
 * @example from1({ schema: "spanwright-record/1", revision: 1 }) // { schema: "spanwright-record/2", revision: 1 }
 */
export function from1(written: JsonObject): JsonObject {
  return { ...written, schema: "spanwright-record/2" };
}
