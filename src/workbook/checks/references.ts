import { groupedBy } from "../../model/grouped-by.ts";
import type { TableName } from "../../model/table-names.ts";
import type { ProblemCode } from "../../problems/catalogue.ts";
import type { Problem } from "../../problems/problem.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext, ReadingsCheck } from "./check-context.ts";

/** Every tag and every standard that a row names stands in its table. */
export const namesOfPlant: Check = (context) => {
  knownTags(context);
  knownStandards(context);
};

/** A reading that names no calibration could belong to any: it stops them all, once a name and not once a row. */
export const readingsOfSome: ReadingsCheck = ({ name, readings }, context) => {
  if (!context.isKnown("calibrations") || !isMissing(name, context.calibrationByName)) return;
  reportOnceAName(context, { table: "readings", column: "calibration", code: "model/calibration-unknown" }, readings);
};

/** The same of the other tables; every output that was tripped stands in the table of outputs. */
export const namesOfWork: Check = (context) => {
  knownCalibrations(context);
  knownOutputs(context);
};

function knownTags({ drafts, instrumentByTag, isKnown, report }: CheckContext): void {
  if (!isKnown("instruments")) return;
  for (const draft of drafts.calibrations) {
    if (isMissing(draft.row.tag, instrumentByTag))
      report("calibrations", draft, "model/tag-unknown", { column: "tag" });
  }
  for (const table of ["outputs", "controller_limits"] as const) {
    for (const draft of drafts[table]) {
      if (!isMissing(draft.row.tag, instrumentByTag)) continue;
      report(table, draft, "model/tag-unknown", { column: "tag", belongsTo: "everything" });
    }
  }
  for (const draft of drafts.candidates) {
    const unknown = draft.row.tags?.filter((tag) => !instrumentByTag.has(tag)) ?? [];
    for (const read of unknown) report("candidates", draft, "model/tag-unknown", { column: "tags", read });
  }
}

function knownStandards({ drafts, standardByName, isKnown, firstLook, report }: CheckContext): void {
  if (!isKnown("standards") || firstLook) return;
  for (const draft of drafts.calibrations) {
    const unknown = draft.row.standards?.filter((name) => !standardByName.has(name)) ?? [];
    for (const read of unknown) report("calibrations", draft, "model/standard-unknown", { column: "standards", read });
  }
}

function knownCalibrations(context: CheckContext): void {
  const { drafts, calibrationByName, isKnown } = context;
  if (!isKnown("calibrations")) return;
  for (const table of ["trips", "loop_checks"] as const) {
    const strays = (drafts[table] as readonly DraftRow<"trips">[]).filter(({ row }) =>
      isMissing(row.calibration, calibrationByName),
    );
    reportOnceAName(context, { table, column: "calibration", code: "model/calibration-unknown" }, strays);
  }
}

function knownOutputs(context: CheckContext): void {
  const { drafts, calibrationByName, instrumentByTag, isKnown, report } = context;
  if (!isKnown("outputs")) return;
  const known = new Set(drafts.outputs.map(({ row }) => JSON.stringify([row.tag, row.output])));
  for (const draft of drafts.trips) {
    const { calibration, output } = draft.row;
    const tag = calibration === undefined ? undefined : calibrationByName.get(calibration)?.row.tag;
    if (output === undefined || tag === undefined || !instrumentByTag.has(tag)) continue;
    if (known.has(JSON.stringify([tag, output]))) continue;
    report("trips", draft, "model/output-unknown", { column: "output", values: { tag } });
  }
}

function isMissing(name: string | undefined, byName: ReadonlyMap<string, unknown>): boolean {
  return name !== undefined && !byName.has(name);
}

type Unknown = { table: TableName; column: string; code: ProblemCode; values?: Problem["values"] };

function reportOnceAName(
  { report, leaveOut }: CheckContext,
  { table, column, code }: Unknown,
  strays: readonly DraftRow[],
): void {
  for (const [first, ...others] of groupedBy(strays, ({ cells }) => cells[column]).values()) {
    if (first !== undefined) report(table, first, code, { column, belongsTo: "everything" });
    for (const other of others) leaveOut(other);
  }
}
