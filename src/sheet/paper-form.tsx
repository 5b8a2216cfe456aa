import { idealOutput } from "../analysis/readings/ideal-characteristic.ts";
import { loopOf } from "../analysis/readings/loop.ts";
import type { Instrument } from "../model/instrument.ts";
import { toleranceWords } from "../record/tolerance-words.ts";
import { workCautions } from "../record/work-cautions.ts";
import { marked, withDecimalMark } from "../units/decimal-mark.ts";
import { readNumber } from "../units/read-number.ts";
import { writePlain } from "../units/write-number.ts";
import { limitWords } from "../verdict/loop-check/limit-words.ts";
import type { PlannedRow, SheetData } from "./sheet-data.ts";
import type { SheetLoop } from "./sheet-loop.ts";

type FormProps = { data: SheetData; loop: SheetLoop };

/** One calibration to be written by hand: what the loop should give is printed, boxes are wide enough for a pen. */
export function PaperForm({ data, loop }: FormProps) {
  const { instrument } = loop;
  return withDecimalMark(data.mark, () => (
    <div class="paper-form">
      <header>
        <h1>{data.tag}</h1>
        <p>
          Calibration {data.calibration}, sheet {data.sheet}.{" "}
          {instrument.description === undefined ? "" : `${instrument.description}, `}
          {writePlain(instrument.rangeLower)} to {writePlain(instrument.rangeUpper)} {instrument.distanceUnit},{" "}
          {writePlain(instrument.signalLower)} to {writePlain(instrument.signalUpper)} {instrument.signalUnit},
          tolerance {marked(toleranceWords(instrument))}.
        </p>
      </header>
      <ul class="form-cautions">
        {workCautions(instrument, "sheet").map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <Lines asks={linesBefore} data={data} />
      <PhaseForm data={data} loop={loop} phase="as_found" title="As found" />
      <Lines asks={linesOfAdjustment} data={data} />
      <PhaseForm data={data} loop={loop} phase="as_left" title="As left" />
      <ChecksForm data={data} loop={loop} />
      <Lines asks={linesAfter} data={data} />
    </div>
  ));
}

const linesBefore = [
  ["performed_on", "Day"],
  ["performed_by", "Performed by"],
  ["place", "Place"],
  ["reason", "Reason"],
  ["procedure", "Procedure"],
  ["work_order", "Work order"],
  ["standards", "Standards used"],
  ["air_temperature", "Air, °C"],
  ["relative_humidity", "Humidity, %"],
  ["pressure", "Pressure, hPa"],
  ["target_material", "Target, material and size"],
  ["bypass_permit", "Permit to bypass"],
] as const;
const linesOfAdjustment = [
  ["adjustment", "Adjusted: none, re-teach, re-scale, repair, replace"],
  ["adjustment_note", "How"],
] as const;
const linesAfter = [
  ["returned_to_service", "Handed back, when and by whom"],
  ["remarks", "Remarks"],
  ["", "Signature"],
] as const;

function Lines({ asks, data }: { asks: readonly (readonly [column: string, label: string])[]; data: SheetData }) {
  const cells = data.planned.find(({ table }) => table === "calibrations")?.cells ?? {};
  return (
    <dl class="form-lines">
      {asks.map(([column, label]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{cells[column] ?? ""}</dd>
        </div>
      ))}
    </dl>
  );
}

function PhaseForm({ data, loop, phase, title }: FormProps & { phase: string; title: string }) {
  const { instrument, outputs } = loop;
  const rows = data.planned.filter(({ table, cells }) => table === "readings" && cells.phase === phase);
  const hasCounts = instrument.countsLower !== undefined;
  const hasValue = instrument.valueLower !== undefined;
  return (
    <section>
      <h2>{title}</h2>
      <table class="form-table">
        <thead>
          <Marks data={data} columns={7 + Number(hasCounts) + Number(hasValue)} />
          <tr>
            <th>No.</th>
            <th>Run</th>
            <th>Point, {instrument.distanceUnit}</th>
            <th>Reference, {instrument.distanceUnit}</th>
            <th>Expected, {instrument.signalUnit}</th>
            <th>Signal, {instrument.signalUnit}</th>
            {hasCounts && <th>Counts</th>}
            {hasValue && <th>Controller{instrument.valueUnit === undefined ? "" : `, ${instrument.valueUnit}`}</th>}
            <th>Remark</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, place) => (
            <ReadingForm
              key={row.id}
              row={row}
              number={place + 1}
              instrument={instrument}
              boxes={{ hasCounts, hasValue }}
            />
          ))}
        </tbody>
      </table>
      {outputs.length > 0 && <TripsForm data={data} loop={loop} />}
    </section>
  );
}

/** Heads of tables repeat on every printed side: whose sheet it is stands in each. */
function Marks({ data, columns }: { data: SheetData; columns: number }) {
  return (
    <tr class="form-marks">
      <th colSpan={columns}>
        {data.tag}, calibration {data.calibration}, sheet {data.sheet}
      </th>
    </tr>
  );
}

type ReadingFormProps = {
  row: PlannedRow;
  number: number;
  instrument: Instrument;
  boxes: { hasCounts: boolean; hasValue: boolean };
};

function ReadingForm({ row: { cells }, number, instrument, boxes }: ReadingFormProps) {
  const point = cells.point ?? cells.reference ?? "";
  const at = readNumber(point, "point")?.value;
  const expected =
    at === undefined ? "" : writePlain(Number(idealOutput(loopOf(instrument).characteristics.signal, at).toFixed(3)));
  return (
    <tr>
      <th>{number}</th>
      <td>
        {cells.cycle ?? ""} {cells.direction === "falling" ? "↓" : "↑"}
      </td>
      <td class="printed">{marked(point)}</td>
      <td class="box">{cells.reference ?? ""}</td>
      <td class="printed">{expected}</td>
      <td class="box">{cells.signal ?? ""}</td>
      {boxes.hasCounts && <td class="box">{cells.counts ?? ""}</td>}
      {boxes.hasValue && <td class="box">{cells.value ?? ""}</td>}
      <td class="box">{cells.remark ?? ""}</td>
    </tr>
  );
}

/** Runs for which an output has boxes. */
const runs = [1, 2, 3] as const;

function TripsForm({ data, loop: { instrument, outputs } }: FormProps) {
  return (
    <table class="form-table">
      <thead>
        <Marks data={data} columns={2 + 2 * runs.length} />
        <tr>
          <th>Output</th>
          <th>Set point, {instrument.distanceUnit}</th>
          {runs.map((run) => (
            <th key={run}>Approach {run}</th>
          ))}
          {runs.map((run) => (
            <th key={run}>Recede {run}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {outputs.map(({ output, setPoint }) => (
          <tr key={output}>
            <th>{output}</th>
            <td class="printed">{writePlain(setPoint)}</td>
            {[...runs, ...runs].map((run, place) => (
              <td key={`${run} ${place}`} class="box" />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ChecksForm({ data, loop }: FormProps) {
  const rows = data.planned.filter(({ table }) => table === "loop_checks");
  return (
    <section>
      <h2>Loop check</h2>
      <table class="form-table">
        <thead>
          <Marks data={data} columns={6} />
          <tr>
            <th>Item</th>
            <th>Accepted</th>
            <th>Measured</th>
            <th>Pass</th>
            <th>Fail</th>
            <th>N. a.</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, cells }) => {
            const { item, limit } = loop.checks.get(cells.item ?? "") ?? {};
            const { low = null, high = null } = limit ?? {};
            const here = low === null && high === null ? "" : `; here ${limitWords({ low, high }, item?.unit ?? null)}`;
            return (
              <tr key={id}>
                <th>{cells.item}</th>
                <td class="printed">{`${marked(item?.accepted ?? "")}${here}`}</td>
                <td class="box">{cells.measured ?? ""}</td>
                <td class="box tick-box">{cells.result === "pass" ? "✓" : ""}</td>
                <td class="box tick-box">{cells.result === "fail" ? "✓" : ""}</td>
                <td class="box tick-box">{cells.result === "not applicable" ? "✓" : ""}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
