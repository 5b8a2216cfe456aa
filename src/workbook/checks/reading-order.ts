import type { Reading } from "../../model/calibration.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { spanOf } from "../../model/range.ts";
import { gapShare } from "../../model/test-points.ts";
import type { DraftRow } from "../table-row.ts";
import type { CheckContext, ReadingsCheck } from "./check-context.ts";
import { shownNumber } from "./shown-number.ts";

type ReadingDraft = DraftRow<"readings">;

/** Rising readings rise and falling readings fall, within a run out or back; each point is read once a run. */
export const readingOrder: ReadingsCheck = ({ name, readings }, context) => {
  const used = readings.filter(({ row }) => row.rejected === undefined && row.direction !== undefined);
  const nearness = gapShare * spanOfCalibration(name, context);
  const contradicted = new Set<ReadingDraft>();
  for (const cycle of groupedBy(used, ({ row }) => `${row.phase} ${row.cycle}`).values()) {
    const wrong = new Set(contradictedIn(cycle, nearness));
    for (const run of runsOf(cycle))
      reportDirection(
        run.filter((draft) => wrong.has(draft)),
        context,
      );
    for (const draft of wrong) contradicted.add(draft);
  }
  checkRuns(used, contradicted, context);
  checkTwice(used, contradicted, context);
};

function spanOfCalibration(name: string | undefined, { calibrationByName, instrumentByTag }: CheckContext): number {
  const tag = name === undefined ? undefined : calibrationByName.get(name)?.row.tag;
  const { rangeLower = 0, rangeUpper = 0 } = (tag === undefined ? undefined : instrumentByTag.get(tag)?.row) ?? {};
  return Math.max(0, spanOf({ rangeLower, rangeUpper }));
}

const sides = { rising: 1, falling: -1 } as const;

/** Where that part of the steps stays at one place, the rows are sorted by place, and their order says nothing. */
const mostStill = 1 / 3;

/** The readings that the reference reaches and leaves the other way than their direction says. */
function contradictedIn(cycle: readonly ReadingDraft[], nearness: number): readonly ReadingDraft[] {
  const steps = cycle.slice(1).map((draft, place) => stepBetween(cycle[place] as ReadingDraft, draft, nearness));
  const still = steps.filter((step) => step === 0).length;
  if (steps.length < 2 || still > mostStill * steps.length) return [];
  return cycle.filter(({ row }, place) => {
    const side = sides[row.direction ?? "rising"];
    const around = [steps[place - 1] ?? 0, steps[place] ?? 0];
    return around.includes(-side) && !around.includes(side);
  });
}

/** 1 where the reference rises, −1 where it falls, 0 where it stays at one test point. */
function stepBetween({ row: before }: ReadingDraft, { row: after }: ReadingDraft, nearness: number): number {
  if (before.reference === undefined || after.reference === undefined) return 0;
  if (after.point !== undefined && after.point === before.point) return 0;
  const step = after.reference - before.reference;
  return Math.abs(step) <= nearness ? 0 : Math.sign(step);
}

/** Told once a run, at the first of its readings. */
function reportDirection([first, ...others]: readonly ReadingDraft[], { report }: CheckContext): void {
  if (first === undefined) return;
  const { direction = "rising" } = first.row;
  const isRising = direction === "rising";
  const more = others.length === 0 ? "" : `; so at ${others.length} more of the run`;
  const values = { actual: isRising ? "down" : "up", direction, more, fits: isRising ? "falling" : "rising" };
  report("readings", first, "model/direction-contradicted", { column: "direction", values });
}

/** Told once a run. */
function checkRuns(
  used: readonly ReadingDraft[],
  contradicted: ReadonlySet<ReadingDraft>,
  { report }: CheckContext,
): void {
  for (const run of runsOf(used.filter((draft) => !contradicted.has(draft)))) {
    const turned = run.find((draft, index) => turnsBack(run[index - 1]?.row, draft.row));
    if (turned === undefined) continue;
    const { direction = "rising", cycle = 1 } = turned.row;
    const values = { actual: direction === "rising" ? "down" : "up", direction, cycle };
    report("readings", turned, "model/readings-out-of-order", { column: "reference", values });
  }
}

/** Readings that follow each other in one phase and cycle, parted where the direction changes. */
function runsOf(used: readonly ReadingDraft[]): readonly ReadingDraft[][] {
  const cycles = groupedBy(used, ({ row }) => `${row.phase} ${row.cycle}`);
  return [...cycles.values()].flatMap((cycle) => {
    const runs: ReadingDraft[][] = [];
    for (const draft of cycle) {
      const last = runs.at(-1);
      if (last?.[0]?.row.direction === draft.row.direction) last?.push(draft);
      else runs.push([draft]);
    }
    return runs;
  });
}

/** Readings of one named point may scatter either way. */
function turnsBack(before: Partial<Reading> | undefined, { point, reference, direction }: Partial<Reading>): boolean {
  if (before?.reference === undefined || reference === undefined) return false;
  if (point !== undefined && point === before.point) return false;
  return direction === "rising" ? reference < before.reference : reference > before.reference;
}

/** Where more places of a run are read twice, that is the way in which the work was done. */
const mostTwice = 0.2;

function checkTwice(
  used: readonly ReadingDraft[],
  contradicted: ReadonlySet<ReadingDraft>,
  { report }: CheckContext,
): void {
  const placed = used.filter(
    (draft) => draft.row.point !== undefined && draft.row.cycle !== undefined && !contradicted.has(draft),
  );
  const places = [
    ...groupedBy(placed, ({ row: { phase, cycle, direction, point } }) =>
      JSON.stringify([phase, cycle, direction, point]),
    ).values(),
  ];
  const twice = places.filter(({ length }) => length > 1);
  if (twice.length > Math.max(1, mostTwice * places.length)) return;
  for (const [first, ...others] of twice) {
    for (const draft of others) {
      const { phase = "", cycle = 1, direction = "", point = 0 } = draft.row;
      const values = {
        point: shownNumber(point),
        cycle,
        direction,
        phase: phase.replace("_", " "),
        line: first?.line ?? 0,
      };
      report("readings", draft, "model/read-twice", { column: "point", values });
    }
  }
}
