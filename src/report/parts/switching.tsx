import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { Part } from "../annexes/part.tsx";
import { type SwitchingRecord, sharesWords, type TrippedPhase, voltageWords } from "../texts/switching-texts.ts";
import { BudgetTable } from "./budget-table.tsx";
import { SwitchedFigures } from "./switched-figures.tsx";
import { TripsTable } from "./trips-table.tsx";

/** Switched outputs: each with its figures against their limits, what an error is consistent with, and its wiring. */
export function Switching({ record }: { record: CalibrationRecord }) {
  if (record.switching === undefined) return null;
  return (
    <Part id="switching" title="Switched outputs">
      <p class="small">The statement of an output stands beside that of the loop and does not change it.</p>
      {record.switching.map((switching, index) => (
        <OneOutput key={switching.output.output} record={record} number={index + 1} switching={switching} />
      ))}
    </Part>
  );
}

type OutputProps = { record: CalibrationRecord; number: number; switching: SwitchingRecord };

function OneOutput({ record, number, switching }: OutputProps) {
  const tripped = phasesOf(switching);
  const { output } = switching.output;
  const budgeted = tripped.filter(({ phase }) => phase.setPoint !== null);
  return (
    <>
      <h4>{outputTitle(record, switching)}</h4>
      {tripped.length > 0 && (
        <SwitchedFigures record={record} number={number} switching={switching} tripped={tripped} />
      )}
      {tripped.map(({ name, title, phase }) => {
        const words = sharesWords(record, phase);
        return (
          words && (
            <p key={name} class="small">
              <strong>{title}, why.</strong> {words}
            </p>
          )
        );
      })}
      {untripped(record, tripped).map((title) => (
        <p key={title} class="small not-determined">
          {title}, not determined: no trips of {output} were recorded.
        </p>
      ))}
      <Wiring switching={switching} />
      {tripped.length > 0 && <TripsTable record={record} number={number} output={output} tripped={tripped} />}
      <div class="other-budgets">
        {budgeted.map(({ name, title, phase }) => (
          <details key={name}>
            <summary>
              {output}, {title.toLowerCase()}: uncertainty budget of the set-point error
            </summary>
            {phase.setPoint && (
              <BudgetTable record={record} point={phase.setPoint} label={`output ${number}, ${title.toLowerCase()}`} />
            )}
          </details>
        ))}
      </div>
    </>
  );
}

/** "Q1, set point 450 ± 10 mm on approach, NO". */
function outputTitle({ instrument }: CalibrationRecord, { output }: SwitchingRecord): string {
  const { setPoint, setPointTolerance, criticalDirection = "approach" } = output;
  const tolerance = setPointTolerance === undefined ? "" : ` ± ${writePlain(setPointTolerance)}`;
  const point = `set point ${writePlain(setPoint)}${tolerance} ${instrument.distanceUnit} on ${criticalDirection}`;
  const contact = output.function === undefined ? "NO or NC not stated" : contactWords[output.function];
  return `${output.output}, ${point}, ${contact}`;
}

const contactWords = { NO: "NO (normally open)", NC: "NC (normally closed)" } as const;

function untripped(record: CalibrationRecord, tripped: readonly TrippedPhase[]): readonly string[] {
  return phasesOf(record)
    .filter(({ name }) => !tripped.some((one) => one.name === name))
    .map(({ title }) => title);
}

function functionWords(output: SwitchingRecord["output"], statement: "pass" | "fail" | null): string {
  if (statement === null) return "; its function is not stated";
  return statement === "pass" ? ", as stated" : `, and stated as ${output.function}`;
}

function Wiring({ switching: { output, wiring } }: { switching: SwitchingRecord }) {
  const { inputMatch, onVoltage, offVoltage, functionMatch, notDetermined } = wiring;
  const match =
    inputMatch === null
      ? `fit of output and input not determined: ${notDetermined.inputMatch}`
      : `${output.polarity} output on a ${output.controllerInput} input: ` +
        (inputMatch.statement === "pass" ? "they fit" : `they do not fit, it needs a ${inputMatch.needs} one`);
  const voltages = [
    onVoltage
      ? `on, ${voltageWords(onVoltage)}: ${onVoltage.statement}`
      : `on, not determined: ${notDetermined.onVoltage}`,
    offVoltage
      ? `off, ${voltageWords(offVoltage)}: ${offVoltage.statement}`
      : `off, not determined: ${notDetermined.offVoltage}`,
  ];
  const type = output.inputType === undefined ? "" : ` (IEC 61131-2 type ${output.inputType})`;
  return (
    <p class="small">
      <strong>Wiring{wiring.statement === "fail" ? ", fail" : ""}.</strong> Wire {output.wire ?? "not stated"}, pin{" "}
      {output.pin ?? "not stated"}; {match}. Controller input{type}: {voltages.join("; ")}.
      {functionMatch && ` By its trips it is ${functionMatch.seen}${functionWords(output, functionMatch.statement)}.`}
    </p>
  );
}
