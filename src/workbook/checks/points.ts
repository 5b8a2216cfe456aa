import { type Phase, phases } from "../../model/calibration-words.ts";
import { spanOf } from "../../model/range.ts";
import { placesOf, type TestPoint, testPointsOf, widePoints } from "../../model/test-points.ts";
import type { DraftRow } from "../table-row.ts";
import type { CheckContext, ReadingsCheck } from "./check-context.ts";
import { shownNumber } from "./shown-number.ts";

/** Common practice. */
const fewestPoints = 5;

/** As many line numbers a sentence names before it only counts. */
const mostLines = 12;

type PlacedDraft = DraftRow<"readings"> & { row: { reference: number } };

/** The readings of each phase fall into test points, at least five of them. */
export const points: ReadingsCheck = ({ name, readings }, context) => {
  const tag = name === undefined ? undefined : context.calibrationByName.get(name)?.row.tag;
  const instrument = tag === undefined ? undefined : context.instrumentByTag.get(tag)?.row;
  const { rangeLower, rangeUpper } = instrument ?? {};
  if (rangeLower === undefined || rangeUpper === undefined) return;
  const span = spanOf({ rangeLower, rangeUpper });
  if (!(span > 0)) return;
  for (const phase of phases) {
    const used = readings.filter((draft): draft is PlacedDraft => isUsed(draft, phase));
    if (used.length > 0) checkPhase(used, { phase, span, unit: instrument?.distanceUnit ?? "" }, context);
  }
};

function isUsed({ row }: DraftRow<"readings">, phase: Phase): boolean {
  return row.phase === phase && row.reference !== undefined && row.rejected === undefined;
}

function checkPhase(
  drafts: readonly PlacedDraft[],
  { phase, span, unit }: { phase: Phase; span: number; unit: string },
  { report }: CheckContext,
): void {
  const placed = drafts.map(({ row }) => row);
  const testPoints = testPointsOf(placed, span);
  const wide = widePoints(testPoints, placed, span);
  for (const point of wide) {
    const members = membersByReference(point, drafts);
    const [first] = members;
    if (first === undefined) continue;
    report("readings", first, "model/point-wide", { column: "reference", values: wideValues(members, unit) });
  }
  const [first] = drafts;
  const named = testPoints.map(({ nominal }) => nominal);
  const read = placed.map(({ reference }) => reference);
  const places = placesOf(named, read, span);
  if (wide.length > 0 || places >= fewestPoints || first === undefined) return;
  const values = { points: places, phase: phase.replace("_", " ") };
  report("readings", first, "model/few-points", { values });
}

function membersByReference({ members }: TestPoint, drafts: readonly PlacedDraft[]): readonly PlacedDraft[] {
  return members.flatMap((member) => drafts[member] ?? []).toSorted((a, b) => a.row.reference - b.row.reference);
}

function wideValues(members: readonly PlacedDraft[], unit: string) {
  const lines = members.map(({ line }) => line).toSorted((a, b) => a - b);
  const more = lines.length > mostLines ? ` and ${lines.length - mostLines} more` : "";
  return {
    first: shownNumber(members[0]?.row.reference ?? 0),
    last: shownNumber(members.at(-1)?.row.reference ?? 0),
    unit,
    lines: lines.slice(0, mostLines).join(", ") + more,
  };
}
