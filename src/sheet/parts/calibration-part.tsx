import { readNumber } from "../../units/read-number.ts";
import { Field } from "./field.tsx";
import { RowProblems } from "./row-problems.tsx";
import { type RowView, useSheet } from "./sheet-context.ts";

/** A field of the calibration: its column, what it asks for, the list of words that it offers. */
type Asked = { column: string; label: string; unit?: string; list?: string };

export const peopleList = "people";

const before: readonly Asked[] = [
  { column: "performed_on", label: "day of the work" },
  { column: "performed_by", label: "performed by", list: peopleList },
  { column: "place", label: "place" },
  { column: "reason", label: "reason" },
  { column: "procedure", label: "procedure and edition" },
  { column: "work_order", label: "work order" },
  { column: "bypass_permit", label: "permit to bypass the loop" },
  { column: "condition_received", label: "condition before the work" },
];

const conditions: readonly Asked[] = [
  { column: "air_temperature", label: "air temperature", unit: "°C" },
  { column: "relative_humidity", label: "relative humidity", unit: "%" },
  { column: "pressure", label: "air pressure", unit: "hPa" },
  { column: "medium", label: "medium, where other than in service" },
];

const target: readonly Asked[] = [
  { column: "target_material", label: "material" },
  { column: "target_width", label: "width", unit: "distance" },
  { column: "target_height", label: "height", unit: "distance" },
  { column: "target_tilt", label: "tilt", unit: "°" },
  { column: "target_surface", label: "surface" },
  { column: "alignment_angle", label: "angle between reference and axis", unit: "°" },
];

const adjusted: readonly Asked[] = [
  { column: "adjustment", label: "what was adjusted" },
  { column: "adjustment_note", label: "how" },
];

const after: readonly Asked[] = [
  { column: "returned_to_service", label: "handed back: when and by whom" },
  { column: "deviations", label: "departures from the procedure" },
  { column: "remarks", label: "remarks" },
];

/** Who, where, with what, under which conditions: before the first reading. */
export function BeforePart({ view }: { view: RowView }) {
  return (
    <section aria-labelledby="before-title">
      <h2 id="before-title">Before the first reading</h2>
      <Fields view={view} asked={before} />
      <Standards view={view} />
      <h3>Conditions</h3>
      <Fields view={view} asked={conditions} />
      <h3>Target</h3>
      <Fields view={view} asked={target} />
      <RowProblems problems={view.problems} />
    </section>
  );
}

export function AdjustmentPart({ view }: { view: RowView }) {
  return (
    <section aria-labelledby="adjustment-title">
      <h2 id="adjustment-title">What was adjusted</h2>
      <Fields view={view} asked={adjusted} />
    </section>
  );
}

export function AfterPart({ view }: { view: RowView }) {
  return (
    <section aria-labelledby="after-title">
      <h2 id="after-title">Handed back</h2>
      <Fields view={view} asked={after} />
    </section>
  );
}

function Fields({ view, asked }: { view: RowView; asked: readonly Asked[] }) {
  const { instrument } = useSheet();
  return (
    <div class="fields">
      {asked.map(({ column, label, unit, list }) => (
        <Field
          key={column}
          view={view}
          column={column}
          label={label}
          unit={unit === "distance" ? instrument.distanceUnit : unit}
          {...(list !== undefined && { list })}
        />
      ))}
    </div>
  );
}

/** The standards of the workbook, to be ticked; what is past its day says so before it is used. */
function Standards({ view }: { view: RowView }) {
  const { data, set } = useSheet();
  const table = data.carried.find((one) => one.table === "standards");
  const used = (view.cells.standards ?? "").split(/[;,+|]/u).flatMap((name) => name.trim() || []);
  const isLocked = view.row.isGiven === true && (view.row.cells.standards ?? "") !== "";
  const standards = (table?.rows ?? []).map(
    (row) => (column: string) => row[table?.columns.indexOf(column) ?? -1] ?? "",
  );
  if (standards.length === 0) return null;
  const toggle = (name: string) => {
    const names = used.includes(name) ? used.filter((one) => one !== name) : [...used, name];
    set([{ row: view.row, column: "standards", text: names.join("; ") }]);
  };
  return (
    <fieldset class="standards" disabled={isLocked}>
      <legend>Standards used</legend>
      {standards.map((cell) => (
        <label key={cell("standard")} class="tick">
          <input type="checkbox" checked={used.includes(cell("standard"))} onChange={() => toggle(cell("standard"))} />
          <span>
            {cell("standard")}, {cell("description")}; may be used until {cell("due_on")}
            {stated(cell("expanded_uncertainty")) ? "" : "; no uncertainty stated"}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

function stated(uncertainty: string): boolean {
  return readNumber(uncertainty, "point") !== undefined;
}
