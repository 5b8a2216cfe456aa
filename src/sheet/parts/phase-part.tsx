import { useCallback, useRef } from "preact/hooks";
import { counted } from "../../units/counted.ts";
import { cycleRows } from "../more-rows.ts";
import type { RowSays } from "../state/row-says.ts";
import { type SoFar, titleOf } from "../state/so-far.ts";
import { ReadingRow } from "./reading-row.tsx";
import { Kept, type RowView, useSheet } from "./sheet-context.ts";

export type PhaseProps = {
  phase: "as_found" | "as_left";
  views: readonly RowView[];
  says: ReadonlyMap<string, RowSays>;
  soFar: SoFar;
  /** Why nothing may be typed here yet. */
  locked?: string | undefined;
};

/** The readings of one phase in the order of the work: rising, then falling, cycle by cycle. */
export function PhasePart({ phase, views, says, soFar, locked }: PhaseProps) {
  const { instrument, add, freshId } = useSheet();
  const columns = columnsOf(instrument, views);
  const title = titleOf(phase);
  const latest = useRef(says);
  latest.current = says;
  const errors = useCallback(
    (id: string) => [...latest.current].flatMap(([other, one]) => (other === id ? [] : [one.errorDistance])),
    [],
  );
  return (
    <section id={phase} aria-labelledby={`${phase}-title`}>
      <h2 id={`${phase}-title`}>{title}: readings</h2>
      <p class="state">
        {soFar.filled} of {soFar.of} · {soFar.word}
      </p>
      {locked !== undefined && <p class="locked">{locked}</p>}
      <fieldset disabled={locked !== undefined}>
        <legend class="hidden">{title}: readings</legend>
        <table class="readings">
          <Head columns={columns} />
          <tbody>
            {runsOf(views).map(({ name, from, own }) => (
              <Kept
                key={`${name} ${from}`}
                of={[columns.join(" "), from, ...own, ...own.map(({ row }) => says.get(row.id))]}
                draw={() => <Run name={name} from={from} own={own} columns={columns} says={says} errors={errors} />}
              />
            ))}
          </tbody>
        </table>
        <p class="more">
          <button type="button" onClick={() => add(cycleRows(phase, views, freshId))}>
            One more run out and back
          </button>{" "}
          <button type="button" onClick={() => add([ownRow(views, phase, freshId("readings"))])}>
            One more reading
          </button>
        </p>
      </fieldset>
      <Missing reasons={soFar.missing} />
    </section>
  );
}

function Head({ columns }: { columns: readonly string[] }) {
  const { instrument } = useSheet();
  return (
    <thead>
      <tr>
        <th scope="col">No.</th>
        <th scope="col">Reference, {instrument.distanceUnit}</th>
        {columns.map((column) => (
          <th key={column} scope="col">
            {heading(column, instrument)}
          </th>
        ))}
        <th scope="col">Error</th>
      </tr>
    </thead>
  );
}

/** What the whole proof still lacks. */
function Missing({ reasons }: { reasons: readonly string[] }) {
  if (reasons.length === 0) return null;
  return (
    <details class="missing">
      <summary>Not complete: {counted(reasons.length, "reason")}</summary>
      <ul>
        {reasons.map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
    </details>
  );
}

type RunProps = {
  name: string;
  from: number;
  own: readonly RowView[];
  columns: readonly string[];
  says: ReadonlyMap<string, RowSays>;
  /** Errors of the other readings of the phase. */
  errors: (id: string) => readonly number[];
};

/** The readings of one way of one run, under its name. */
function Run({ name, from, own, columns, says, errors }: RunProps) {
  return (
    <>
      <tr class="run">
        <th colSpan={columns.length + 3} scope="rowgroup">
          {name}
        </th>
      </tr>
      {own.map((view, place) => (
        <Kept
          key={view.row.id}
          of={[columns.join(" "), view, says.get(view.row.id), from + place]}
          draw={() => (
            <ReadingRow
              view={view}
              number={from + place + 1}
              columns={columns}
              says={says.get(view.row.id)}
              fellows={() => errors(view.row.id)}
            />
          )}
        />
      ))}
    </>
  );
}

/** Readings that follow each other in one way of one run. */
function runsOf(views: readonly RowView[]): readonly { name: string; from: number; own: readonly RowView[] }[] {
  const runs: { name: string; from: number; own: RowView[] }[] = [];
  for (const [place, view] of views.entries()) {
    const name = runOf(view);
    const last = runs.at(-1);
    if (last?.name === name) last.own.push(view);
    else runs.push({ name, from: place, own: [view] });
  }
  return runs;
}

/** The run that a reading belongs to, as its heading. */
function runOf({ cells }: RowView): string {
  return ["Run", cells.cycle, cells.direction].filter((word) => word !== undefined && word !== "").join(" ");
}

/** What is read of this loop: counts and a controller's value only where the instrument says what they should be. */
function columnsOf(
  { countsLower, valueLower }: { countsLower?: number | undefined; valueLower?: number | undefined },
  views: readonly RowView[],
): readonly string[] {
  const isUsed = (column: string) => views.some(({ cells }) => (cells[column] ?? "") !== "");
  return [
    "signal",
    ...(isUsed("signal_at_card") ? ["signal_at_card"] : []),
    ...(countsLower !== undefined || isUsed("counts") ? ["counts"] : []),
    ...(valueLower !== undefined || isUsed("value") ? ["value"] : []),
  ];
}

function heading(
  column: string,
  { signalUnit, valueUnit }: { signalUnit: string; valueUnit?: string | undefined },
): string {
  if (column === "signal") return `Signal, ${signalUnit}`;
  if (column === "signal_at_card") return `At the card, ${signalUnit}`;
  return column === "counts" ? "Counts" : `Controller${valueUnit === undefined ? "" : `, ${valueUnit}`}`;
}

/** A reading at a point of the technician's own: in the direction and the run of the last one. */
function ownRow(views: readonly RowView[], phase: string, id: string) {
  const { calibration = "", cycle = "1", direction = "rising" } = views.at(-1)?.cells ?? {};
  return { id, table: "readings" as const, cells: { calibration, phase, cycle, direction } };
}
