import { expect, test } from "vitest";
import {
  type ChangedFigure,
  changedFigures,
  changedFor,
  figureAt,
  isSameFigure,
} from "../../src/record/changed-figures.ts";

test.each([
  ["phases.asFound.points[].specificRisk", "specificRisk"],
  ["phases.asLeft.zeroError.percentSpan", "zeroError"],
  ["falseAccept.falseAccept", "globalFalseAccept"],
  ["phases.asFound.verdict", undefined],
  ["phases.asFound.points[].beauty", undefined],
])("at %s stands %s", (path, key) => expect(figureAt(path)).toBe(key));

test("a figure that changed is another for versions before the change, and the same from it on", () => {
  const path = "impact.rows[].errorDistance";
  const versions = ["0.1.0", "0.1.9", "0.2.0", "0.2.1", "0.10.0", "1.0.0"];
  expect(versions.map((version) => isSameFigure(path, version))).toEqual([false, false, true, true, true, true]);
});

test("a change of one figure is one of it wherever it stands; a change of a part is one of all in it and of nothing else", () => {
  const changes: ChangedFigure[] = [
    { key: "zeroError", since: "0.3.0", why: "" },
    { below: "impact.rows[]", since: "0.3.0", why: "" },
  ];
  const isSame = (path: string) => isSameFigure(path, "0.2.0", changes);
  expect(["phases.asFound.zeroError.percentSpan", "impact.rows[].errorDistance", "impact.rows[]"].map(isSame)).toEqual([
    ...[false, false, false],
  ]);
  expect(["phases.asFound.spanError.percentSpan", "impact.rowsOf", "impact.outside[].from"].map(isSame)).toEqual([
    ...[true, true, true],
  ]);
});

test("every change says from which version on, and why", () => {
  for (const { since, why } of changedFigures) {
    expect(since).toMatch(/^\d+\.\d+\.\d+$/u);
    expect(why).toMatch(/\w{3}/u);
  }
});

test("a phase with a reading at an end of the signal is not held to the figures of earlier versions, others are", () => {
  const changes = changedFor({ asFound: { readings: [{ railed: "low" }] }, asLeft: { readings: [{}] } });
  expect(isSameFigure("phases.asFound.verdict", "0.2.0", changes)).toBe(false);
  expect(isSameFigure("phases.asLeft.verdict", "0.2.0", changes)).toBe(true);
  expect(isSameFigure("phases.asFound.verdict", "0.3.0", changes)).toBe(true);
});
