import type { CalibrationRecord } from "../../record/record-schema.ts";
import { typedEntries } from "../../record/typed-entries.ts";

/** Where and when the original observations were typed, and what was typed again. */
export function TypedNote({ record }: { record: CalibrationRecord }) {
  const typed = typedEntries(record);
  if (typed === undefined) return null;
  const { sheets, first, last, again } = typed;
  return (
    <>
      <p>
        Typed into entry {sheets.length === 1 ? "sheet" : "sheets"} {sheets.join(", ")} from {first} to {last}, local
        time.
      </p>
      {again.length > 0 && (
        <>
          <p>Typed again; what stood there before:</p>
          <ul>
            {again.map(({ table, line, before }) => (
              <li key={`${table} ${line}`}>
                {table}, line {line}: {before}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
