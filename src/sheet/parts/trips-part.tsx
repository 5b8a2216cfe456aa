import { useState } from "preact/hooks";
import type { Output } from "../../model/instrument.ts";
import { readNumber } from "../../units/read-number.ts";
import { remarked } from "../../workbook/text-rows.ts";

import { titleOf } from "../state/so-far.ts";
import { Field } from "./field.tsx";
import { RowProblems } from "./row-problems.tsx";
import { type RowView, useSheet } from "./sheet-context.ts";

type TripsProps = { phase: "as_found" | "as_left"; views: readonly RowView[]; locked?: string | undefined };

/** The switched outputs: where the target stands is typed, and one press says that the output switched there. */
export function TripsPart({ phase, views, locked }: TripsProps) {
  const { outputs } = useSheet();
  if (outputs.length === 0) return null;
  const title = `${titleOf(phase)}: switched outputs`;
  return (
    <section aria-labelledby={`${phase}-outputs`}>
      <h2 id={`${phase}-outputs`}>{title}</h2>
      {locked !== undefined && <p class="locked">{locked}</p>}
      <fieldset disabled={locked !== undefined}>
        <legend class="hidden">{title}</legend>
        {outputs.map((output) => (
          <OutputTrips
            key={output.output}
            phase={phase}
            output={output}
            views={views.filter(({ cells }) => cells.output === output.output)}
          />
        ))}
      </fieldset>
    </section>
  );
}

function OutputTrips({ phase, output, views }: TripsProps & { output: Output }) {
  const { data, instrument, add, set, freshId } = useSheet();
  const [at, setAt] = useState("");
  const isRead = readNumber(remarked(at.trim(), "point"), "point") !== undefined;
  const stamp = (direction: "approach" | "recede") => {
    const cycle = views.filter(({ cells }) => cells.direction === direction).length + 1;
    const cells = { calibration: data.calibration, phase, output: output.output, direction, cycle: String(cycle) };
    const row = { id: freshId("trips"), table: "trips" as const, cells };
    add([row]);
    set([{ row, column: "reference", text: at.trim() }]);
  };
  return (
    <div class="output">
      <h3>
        {output.output}, set point {output.setPoint} {instrument.distanceUnit}
      </h3>
      <div class="stamp">
        <label class="field">
          <span class="asks">Target at, {instrument.distanceUnit}</span>
          <input
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={at}
            data-output={`${phase}/${output.output}`}
            onInput={({ currentTarget }) => setAt(currentTarget.value)}
          />
        </label>
        <button type="button" class="big" disabled={!isRead} onClick={() => stamp("approach")}>
          Switched on approach
        </button>
        <button type="button" class="big" disabled={!isRead} onClick={() => stamp("recede")}>
          Switched on recede
        </button>
      </div>
      {views.length > 0 && <Trips views={views} />}
    </div>
  );
}

function Trips({ views }: { views: readonly RowView[] }) {
  const { instrument, remove } = useSheet();
  return (
    <ul class="trips">
      {views.map((view) => {
        const { direction = "", cycle = "" } = view.cells;
        const name = `${direction} ${cycle}`;
        return (
          <li key={view.row.id}>
            <Field view={view} column="reference" label={name} unit={instrument.distanceUnit} />
            <Field view={view} column="state" label={`state after ${name}`} isLabelHidden />
            {!view.row.isGiven && (
              <button type="button" class="small" onClick={() => remove(view.row)}>
                Take out<span class="hidden"> {name}</span>
              </button>
            )}
            <RowProblems problems={view.problems} />
          </li>
        );
      })}
    </ul>
  );
}
