import { expect, test } from "vitest";
import { tripChart } from "../../src/charts/trip-chart.ts";
import { fourCycles, type SwitchingChanges, switchingRecord } from "../record/sample-switching.ts";
import { frozen } from "./frozen.ts";
import { expectGolden } from "./golden.ts";
import { svgTexts } from "./svg-texts.ts";

const asLeft = fourCycles.map((trip) => ({ ...trip, phase: "as_left" as const, reference: (trip.reference ?? 0) - 3 }));
const both: SwitchingChanges = frozen({ trips: [...fourCycles, ...asLeft] });
const titleOf = async (changes: SwitchingChanges) => (await tripChart(switchingRecord(changes), 0))?.title;

test("the trip chart is the golden, and the same bytes twice", async () => {
  const record = frozen(switchingRecord(both));
  const drawing = await tripChart(record, 0);
  expect((await tripChart(record, 0))?.svg).toBe(drawing?.svg);
  expectGolden("trips", drawing?.svg ?? "");
});

test("it has a row for each cycle of each phase, and says what its marks mean", async () => {
  const texts = svgTexts((await tripChart(switchingRecord(both), 0))?.svg ?? "");
  for (const phase of ["as found", "as left"]) {
    for (const cycle of [1, 2, 3, 4]) expect(texts).toContain(`${phase} ${cycle}`);
  }
  for (const word of ["approach", "recede", "set point", "tolerance"]) expect(texts).toContain(word);
});

test("its title says how far the output is from its set point, in the direction that matters", async () => {
  // Means 100.15 and 97.15 on approach, 104.1 and 101.1 on recede; U 0.41 mm and 0.31 mm.
  expect(await titleOf(both)).toBe(
    "Output Q1 operates 0.15 mm beyond its set point (100 ± 0.5 mm) as found and 2.85 mm short of it as left.",
  );
  expect(await titleOf({ output: { criticalDirection: "recede", setPointTolerance: undefined } })).toBe(
    "Output Q1 releases 4.10 mm beyond its set point (100 mm) as found.",
  );
  const exact = fourCycles.map((trip) => ({ ...trip, reference: 100 }));
  expect(await titleOf({ trips: exact })).toBe("Output Q1 operates at its set point (100 ± 0.5 mm) as found.");
  expect(await titleOf({ trips: [{ direction: "recede", reference: 104 }] })).toBe(
    "Output Q1 operates at an unknown distance from its set point (100 ± 0.5 mm) as found.",
  );
});

test("a tolerance is written with the digits that it has", async () => {
  const title = await titleOf({ output: { setPoint: 150, setPointTolerance: 120 } });
  expect(title).toContain("(150 ± 120 mm)");
});

test("trips without tolerance, without cycles, in one direction, or all at one place are drawn", async () => {
  const awkward: readonly SwitchingChanges[] = [
    { output: { setPointTolerance: undefined } },
    { trips: fourCycles.map(({ cycle: _, ...trip }) => trip) },
    { trips: [{ direction: "recede", reference: 104 }] },
    { output: { setPointTolerance: undefined }, trips: [{ reference: 100 }] },
    { trips: [...fourCycles, ...fourCycles] },
  ];
  for (const changes of awkward) {
    const svg = (await tripChart(switchingRecord(changes), 0))?.svg ?? "";
    expect(svgTexts(svg)).toContain("as found 1");
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null|\[object/u);
  }
});

test("an output that was not tripped, or is not there, has no picture", async () => {
  expect(await tripChart(switchingRecord({ trips: [] }), 0)).toBeUndefined();
  expect(await tripChart(switchingRecord(), 1)).toBeUndefined();
});
