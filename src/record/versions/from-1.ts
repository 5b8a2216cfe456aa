import { findingWithId, noteWithIds, stepWithReasons } from "./causes-of-form-1.ts";
import { changedAt, type JsonObject } from "./changed-at.ts";

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
  const changes: readonly (readonly [path: string, change: (found: JsonObject) => JsonObject])[] = [
    ["history[]", ({ serial = null, pointsOf = null, ...rest }) => ({ ...rest, serial, pointsOf })],
    ["overTheYears.staircase", ({ isAgreed, ...rest }) => ({ isStated: isAgreed, ...rest })],
    ["causes.*.findings[]", findingWithId],
    ["causes.*.notes[]", noteWithIds],
    ["recommendation.*", stepWithReasons],
    ["recommendation.*.also[]", stepWithReasons],
    ["phases.*", endOfLoop],
    ["instrument", ruleOfForm2("decisionRule")],
    ["decisionRule", ruleOfForm2("name")],
    ["decisionRule.givenForThisRun", ruleOfForm2("name")],
  ];
  const asForm2: JsonObject = { ...written, schema: "spanwright-record/2" };
  return changes.reduce((record, [path, change]) => changedAt(record, path, change) as JsonObject, asForm2);
}

/** Form 1 called the rule with a non-binary statement after its four words. */
function ruleOfForm2(field: string): (found: JsonObject) => JsonObject {
  return (found) => (found[field] === "four words" ? { ...found, [field]: "non-binary guard band" } : found);
}

/** Form 1 knew the sensor and the controller only, and did not ask whether enough was read. */
function endOfLoop({ controllerPoints, ...phase }: JsonObject): JsonObject {
  const hasController = controllerPoints !== undefined;
  return {
    ...phase,
    ...(hasController && { endPoints: controllerPoints }),
    endOf: hasController ? "controller" : "sensor",
    complete: true,
    missing: [],
  };
}
