import { expect, test } from "vitest";
import { fleetByYear } from "../../src/fleet/fleet-order.ts";
import { entry } from "../filing/sample-entries.ts";

const first = entry({ tag: "LT-2", calibration: "A", performedOn: "2024-05-01" });
const revised = entry({ tag: "LT-2", calibration: "A", performedOn: "2024-05-01", revision: 2 });
const second = entry({ tag: "LT-2", calibration: "B", performedOn: "2025-05-01" });
const other = entry({ tag: "LT-1", calibration: "C", performedOn: "2024-01-01" });
const undated = entry({ tag: "LT-3", calibration: "D", performedOn: null });
const byYear = fleetByYear({ entries: [first, second, revised, other, undated], tagLines: [] });

test("every entry stands in the year of its work, by tag, then by line; one without a day by itself", () => {
  const listed = [...byYear].map(([year, all]) => [year, all.map((one) => one.entry)]);
  expect(listed).toEqual([
    ["2024", [other, first, revised]],
    ["2025", [second]],
    ["no-day", [undated]],
  ]);
});

test("a superseded revision is not current, and knows itself alone; one of several calibrations is the last", () => {
  const [, superseded, current] = byYear.get("2024") ?? [];
  expect(superseded).toMatchObject({ isCurrent: false, isLast: false, untilThen: [first] });
  expect(current).toMatchObject({ isCurrent: true, isLast: false, untilThen: [revised] });
  expect(byYear.get("2025")?.[0]).toMatchObject({ isCurrent: true, isLast: true, untilThen: [revised, second] });
});
