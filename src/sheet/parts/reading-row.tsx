import { useState } from "preact/hooks";
import { idealOutput } from "../../analysis/readings/ideal-characteristic.ts";
import { loopOf } from "../../analysis/readings/loop.ts";
import { readNumber } from "../../units/read-number.ts";
import { writePlain } from "../../units/write-number.ts";
import { atItsPoint, errorWords, type RowSays, type Slip, slipIn } from "../state/row-says.ts";
import { Field } from "./field.tsx";
import { RowProblems } from "./row-problems.tsx";
import { type RowView, useSheet } from "./sheet-context.ts";

export type ReadingProps = {
  view: RowView;
  number: number;
  columns: readonly string[];
  says: RowSays | undefined;
  /** Errors of the other readings of the phase, distance; asked for when a field is left. */
  fellows: () => readonly number[];
};

/** One reading: where, what was read, and at once what that says. */
export function ReadingRow({ view, number, columns, says, fellows }: ReadingProps) {
  const { instrument } = useSheet();
  const { row, cells } = view;
  const [doubt, setDoubt] = useState<{ column: string; slip: Slip; text: string; isKept: boolean }>();
  const point = cells.point ?? "";
  const name = `reading ${number}, ${cells.direction ?? ""}${point === "" ? "" : `, ${point} ${instrument.distanceUnit}`}`;
  const isAbout = (column: string) => doubt?.column === column && doubt.text === cells[column];
  const keep = () => setDoubt(doubt && { ...doubt, isKept: true });
  /** Asks about a number that does not fit, once; whether the field may be left. */
  const ask = (column: string) => {
    if (isAbout(column)) {
      keep();
      return true;
    }
    const slip = slipOf(view, column, fellows(), instrument);
    if (slip !== undefined) setDoubt({ column, slip, text: cells[column] ?? "", isKept: false });
    return slip === undefined;
  };
  return (
    <tr class={says?.isOutside ? "is-outside" : ""} data-reading={row.id}>
      <th scope="row">
        <span class="number">{number}</span> <Arrow direction={cells.direction ?? ""} />
        <span class="hidden"> {cells.direction}</span>
      </th>
      <td>
        <Field
          view={view}
          column="reference"
          label={`reference of ${name}`}
          isLabelHidden
          isPassedOver={point !== ""}
          placeholder={point}
        />
      </td>
      {columns.map((column) => (
        <td key={column}>
          <Field
            view={view}
            column={column}
            label={`${words[column] ?? column} of ${name}`}
            isLabelHidden
            placeholder={expected(view, column, instrument)}
            onEnter={() => ask(column)}
            onLeft={() => isAbout(column) || ask(column)}
          />
        </td>
      ))}
      <td class="says">
        {says && <Bar says={says} unit={instrument.distanceUnit} />}
        {doubt !== undefined && isAbout(doubt.column) && !doubt.isKept && <Doubt {...doubt} keep={keep} />}
        <Below view={view} name={name} />
      </td>
    </tr>
  );
}

/** What is wrong with the row, and a way to take out one that was added. */
function Below({ view: { row, problems }, name }: { view: RowView; name: string }) {
  const { remove } = useSheet();
  return (
    <>
      <RowProblems problems={problems} />
      {!row.isGiven && row.id.includes("+") && (
        <button type="button" class="small" onClick={() => remove(row)}>
          Take out {name}
        </button>
      )}
    </>
  );
}

const words: Readonly<Record<string, string>> = {
  signal: "signal",
  signal_at_card: "signal at the card",
  counts: "counts",
  value: "controller value",
};

function Arrow({ direction }: { direction: string }) {
  return <span aria-hidden="true">{direction === "falling" ? "↓" : "↑"}</span>;
}

/** The error against the tolerance as a bar from the middle, and in words. */
function Bar({ says, unit }: { says: RowSays; unit: string }) {
  const part = says.part === null ? 1 : Math.min(Math.abs(says.part), fullBar) / fullBar;
  const side = says.errorDistance < 0 ? "right" : "left";
  return (
    <>
      <span class="bar" aria-hidden="true">
        <span class={`fill ${says.isOutside ? "is-outside" : ""}`} style={{ width: `${50 * part}%`, [side]: "50%" }} />
      </span>
      <span class="error">
        {errorWords(says, unit)}
        {says.isOutside && <strong>, outside</strong>}
      </span>
    </>
  );
}

/** The bar ends at one and a half tolerances on each side. */
const fullBar = 1.5;

function Doubt({ text, slip, keep }: { text: string; slip: Slip; keep: () => void }) {
  return (
    <div class="doubt" role="alert">
      <p>
        {slip.meant} would fit: typing error ({slip.kind})? Enter keeps {text}, Escape takes it again.
      </p>
      <button type="button" class="small" onClick={keep}>
        Keep {text}
      </button>
    </div>
  );
}

function slipOf(
  { cells }: RowView,
  column: string,
  fellows: readonly number[],
  instrument: Parameters<typeof slipIn>[2],
): Slip | undefined {
  return slipIn({ cells: atItsPoint(cells), column }, fellows, instrument);
}

/** What the loop should give there, shown while nothing is typed. */
function expected({ cells }: RowView, column: string, instrument: Parameters<typeof slipIn>[2]): string | undefined {
  const { signal, counts, value } = loopOf(instrument).characteristics;
  const characteristic = { signal, signal_at_card: signal, counts, value }[column];
  const at = readNumber(atItsPoint(cells).reference ?? "", "point")?.value;
  if (characteristic === undefined || at === undefined) return undefined;
  return writePlain(Number(idealOutput(characteristic, at).toFixed(column === "counts" ? 0 : 3)));
}
