import { expect, test } from "vitest";
import { switchedStates } from "../../src/assembly/switched-states.ts";
import { demoRecord } from "../report/demo-records.ts";

test("each output stands with its wiring and with what the phase found of it", () => {
  const record = demoRecord("LT-310");
  const [found] = switchedStates(record, "asFound");
  expect(found?.output.output).toBe("Q1");
  expect(found?.found).toBe(record.switching?.[0]?.phases.asFound);
  expect(switchedStates(record, "asLeft")[0]?.found?.statement).toBe("pass");
});

test("an output that was not tripped in a phase has nothing found; a tag without outputs has no state", () => {
  expect(switchedStates(demoRecord("ZT-201"), "asLeft")).toMatchObject([{ found: null }]);
  expect(switchedStates(demoRecord("ZT-233"), "asFound")).toEqual([]);
});
