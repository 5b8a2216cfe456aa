import { useRef } from "preact/hooks";
import type { Column } from "../../model/column.ts";
import { tableColumns } from "../../model/table-columns.ts";
import { type RowView, useSheet } from "./sheet-context.ts";

export type FieldProps = {
  view: RowView;
  column: string;
  /** What is asked for; read out where it is not seen. */
  label: string;
  placeholder?: string | undefined;
  unit?: string | undefined;
  isLabelHidden?: boolean;
  /** Left out of the order in which Enter goes from field to field. */
  isPassedOver?: boolean;
  list?: string;
  /** Told before the field is left; false holds it. */
  onEnter?: (() => boolean) | undefined;
  onLeft?: (() => void) | undefined;
};

/** One cell of a table as a field: text, number, day or choice, as its column says. */
export function Field(props: FieldProps) {
  const { view, column, label, unit = "", isLabelHidden = false } = props;
  const meaning = columnOf(view.row.table, column);
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control is drawn by Choice or Text.
    <label class="field">
      <span class={isLabelHidden ? "hidden" : "asks"}>
        {label}
        {unit !== "" && <span class="unit">, {unit}</span>}
      </span>
      {meaning.reads === "choice" ? (
        <Choice {...props} choices={meaning.choices} />
      ) : (
        <Text {...props} meaning={meaning} />
      )}
    </label>
  );
}

function columnOf(table: RowView["row"]["table"], name: string): Column {
  const column = tableColumns(table).find((one) => one.name === name);
  if (column === undefined) throw new TypeError(`Field: ${table} has no column ${name}`);
  return column;
}

/** What stood in the workbook is changed there. */
function isLocked({ row }: RowView, column: string): boolean {
  return row.isGiven === true && (row.cells[column] ?? "") !== "";
}

function isWrong({ problems }: RowView, column: string): boolean {
  return problems.some((one) => one.isStop && one.column === column);
}

function Choice({ view, column, choices }: FieldProps & { choices: readonly string[] }) {
  const { set } = useSheet();
  return (
    <select
      data-row={view.row.id}
      data-column={column}
      aria-invalid={isWrong(view, column)}
      disabled={isLocked(view, column)}
      value={view.cells[column] ?? ""}
      onChange={({ currentTarget }) => set([{ row: view.row, column, text: currentTarget.value }])}
    >
      <option value="">–</option>
      {choices.map((choice) => (
        <option key={choice} value={choice}>
          {choice}
        </option>
      ))}
    </select>
  );
}

function Text(props: FieldProps & { meaning: Column }) {
  const { view, column, meaning, placeholder, isPassedOver = false, list, onEnter, onLeft } = props;
  const { type, leave } = useSheet();
  const before = useRef("");
  const text = view.cells[column] ?? "";
  return (
    <input
      data-row={view.row.id}
      data-column={column}
      data-passed-over={isPassedOver}
      type={meaning.reads === "date" ? "date" : "text"}
      inputMode={meaning.reads === "number" ? "decimal" : "text"}
      enterKeyHint="next"
      autoComplete="off"
      spellcheck={false}
      aria-invalid={isWrong(view, column)}
      readOnly={isLocked(view, column)}
      value={text}
      placeholder={placeholder}
      list={list}
      onFocus={() => {
        before.current = text;
      }}
      onInput={({ currentTarget }) => type(view.row, column, currentTarget.value)}
      onBlur={() => {
        leave(view.row, column, before.current);
        onLeft?.();
      }}
      onKeyDown={(event) => {
        if (event.key === "Enter" && onEnter?.() === false) event.preventDefault();
        if (event.key === "Escape") event.currentTarget.select();
      }}
    />
  );
}
