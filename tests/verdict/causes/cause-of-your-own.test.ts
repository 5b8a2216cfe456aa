import { expect, test } from "vitest";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { recordSchema } from "../../../src/record/record-schema.ts";
import { renderPage } from "../../../src/report/page.tsx";
import type { Cause } from "../../../src/verdict/causes/cause.ts";
import { causes } from "../../../src/verdict/causes/causes.ts";
import { recordOfRows, rowsOfDraw } from "../../computed/faults/record-of-draw.ts";
import { plantedDraw, seed } from "./planted.ts";
import { shortRail } from "./short-rail.ts";

const noDrawings = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };
const draw = plantedDraw({ seen: (part) => part + 0.05 }, { points: [0, 0.15, 0.3, 0.45, 0.6, 0.75] });
const record = withOneMore(shortRail, () => recordOfRows(rowsOfDraw(draw, seed)));

/** What is made while the list of causes has one more. Test files share the list, so that it is as before afterwards. */
function withOneMore<Made>(cause: Cause, make: () => Made): Made {
  const list = causes as Cause[];
  // The one line.
  list.push(cause);
  try {
    return make();
  } finally {
    list.pop();
  }
}

test("a cause of one's own reaches the record with its rivals", () => {
  const finding = record.causes?.asFound?.findings.find(({ id }) => id === "rail-too-short");
  expect(finding).toMatchObject({
    title: "rail too short for the range",
    stage: "rig",
    rivals: [{ id: "target-beyond-range", title: "target beyond the range of the sensor" }],
    separatedBy: "measure the rail, and compare with the range",
  });
  expect(recordSchema.safeParse(record).success).toBe(true);
});

test("what cures it is recommended, and its finding is the reason", () => {
  const step = record.recommendation?.asFound;
  expect(step).toMatchObject({ action: "repair wiring or set-up", of: "set-up" });
  expect(step?.does).toBe("Use a rail that reaches the far end of the range.");
  expect(step?.reasons[0]?.cause).toEqual({ id: "rail-too-short", stage: "rig" });
  expect(step?.before).toBe("To be sure of the cause: measure the rail, and compare with the range.");
});

test("it stands on the page, once among the causes and once as the reason of what to do", () => {
  const page = renderPage(sealRecord(record), noDrawings).replace(/<script[\s\S]*<\/script>/u, "");
  expect(page).toContain("Rail too short for the range");
  expect(page).toContain("target beyond the range of the sensor");
  expect(page).toContain("Use a rail that reaches the far end of the range.");
  expect(page).not.toContain("Likely cause (opinion)");
});
