import { overallSays } from "../../record/overall-words.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import { type TypedTableName, typedTables } from "../sheet-data.ts";
import type { SheetProblem } from "../state/judge-sheet.ts";

type HandBackProps = {
  record: CalibrationRecord | undefined;
  problems: readonly SheetProblem[];
  /** What happened last: a file was written, a table copied, a file taken in. */
  told: string;
  download: () => void;
  copy: (table: TypedTableName) => void;
  takeIn: (files: readonly File[]) => void;
};

/** What the record will say, what still stops it, and the tables to be handed back. */
export function HandBackPart({ record, problems, told, download, copy, takeIn }: HandBackProps) {
  const stops = problems.filter(({ isStop }) => isStop);
  const others = problems.filter(({ isStop }) => !isStop);
  return (
    <section aria-labelledby="hand-back-title">
      <h2 id="hand-back-title">Result and handing back</h2>
      {record && <Result record={record} />}
      {stops.length > 0 && (
        <Problems title={`No record yet: ${counted(stops.length, "thing")} to put right`} problems={stops} />
      )}
      {others.length > 0 && (
        <Problems title={`${counted(others.length, "warning")} that the record will carry`} problems={others} />
      )}
      <p>The record is made, sealed and signed by the command from these tables: spanwright collect takes them in.</p>
      <p class="hand-back">
        <button type="button" class="big" onClick={download}>
          Download all tables
        </button>
        {typedTables.map((table) => (
          <button key={table} type="button" onClick={() => copy(table)}>
            Copy {table}
          </button>
        ))}
      </p>
      <p>
        <label class="field">
          <span class="asks">Take in tables that were typed elsewhere: .csv, or the .zip of a sheet</span>
          <input
            type="file"
            accept=".csv,.zip"
            multiple
            onChange={({ currentTarget }) => takeIn([...(currentTarget.files ?? [])])}
          />
        </label>
      </p>
      <p class="told" role="status">
        {told}
      </p>
    </section>
  );
}

function Result({ record }: { record: CalibrationRecord }) {
  const { overall, recommendation } = record;
  const now = recommendation?.asLeft ?? recommendation?.asFound;
  return (
    <div class="result">
      <p class="word">{overall === undefined ? "not complete" : overallSays(overall.word, overall.complete)}</p>
      {(overall?.missing ?? []).map(({ says }) => (
        <p key={says}>{says}</p>
      ))}
      {now && (
        <p class="opinion">
          What to do, an opinion from the readings so far: {now.action === "leave" ? "leave it as it is" : now.does}
        </p>
      )}
    </div>
  );
}

function Problems({ title, problems }: { title: string; problems: readonly SheetProblem[] }) {
  return (
    <details class="problems">
      <summary>{title}</summary>
      <ul>
        {problems.map(({ place, column, says }, index) => (
          <li key={index}>
            {place}
            {column === undefined ? "" : `, ${column}`}: {says}
          </li>
        ))}
      </ul>
    </details>
  );
}
