import type { LateCalibration, OpenFinding, Register, RegisterStandard } from "../../record/register-form.ts";
import { counted } from "../../units/counted.ts";
import { lateColumns, openFindingColumns, registerStandardColumns } from "../columns/register-columns.tsx";
import { DataTable } from "../table/data-table.tsx";
import { Counts } from "./counts.tsx";

/** How the folder stands, in numbers; what calls for somebody first. */
export function RegisterAnswer({ register }: { register: Register }) {
  const { rows, standards, openFindings, records, soonDays } = register;
  const inState = (state: string) => rows.filter(({ due }) => due.state === state).length;
  const past = standards.filter(({ isOverdue }) => isOverdue).length;
  const counts = [
    { count: inState("overdue"), what: "overdue", isGrave: true },
    { count: inState("not in tolerance"), what: "not left in tolerance", isGrave: true },
    { count: inState("not complete"), what: "not complete", isGrave: true },
    { count: openFindings.length, what: "found out of tolerance, not decided yet", isGrave: true },
    { count: past, what: past === 1 ? "standard past its day" : "standards past their day", isGrave: true },
    { count: inState("due soon"), what: `due within ${soonDays} days`, isGrave: false },
    {
      count: rows.length,
      what: `${rows.length === 1 ? "loop" : "loops"}, ${counted(records, "record")}`,
      isGrave: false,
    },
  ];
  return <Counts title="How it stands" counts={counts} />;
}

/** Found out of tolerance, and nobody wrote what was decided about it. */
export function OpenFindings({ openFindings }: { openFindings: readonly OpenFinding[] }) {
  if (openFindings.length === 0) return null;
  return (
    <section aria-labelledby="open-title">
      <h2 id="open-title">Found out of tolerance, not decided yet</h2>
      <DataTable columns={openFindingColumns} rows={openFindings} />
    </section>
  );
}

/** Done after the day on which it was due; the last first. */
export function LateCalibrations({ late }: { late: readonly LateCalibration[] }) {
  if (late.length === 0) return null;
  return (
    <section aria-labelledby="late-title">
      <h2 id="late-title">Calibrated late</h2>
      <DataTable columns={lateColumns} rows={late} />
    </section>
  );
}

/** The standards that the last records rest on. */
export function RegisterStandards({ standards }: { standards: readonly RegisterStandard[] }) {
  if (standards.length === 0) return null;
  return (
    <section aria-labelledby="standards-title">
      <h2 id="standards-title">Standards in use</h2>
      <DataTable columns={registerStandardColumns} rows={standards} />
    </section>
  );
}
