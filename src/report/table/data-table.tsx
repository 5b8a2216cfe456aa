import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import { compactHtml } from "../compact-html.ts";
import { type Column, isNumber } from "./column.ts";
import { roomAfter, widestDecimals } from "./decimal-column.ts";
import { Head } from "./table-head.tsx";
import { Wide } from "./wide.tsx";

/** Rows below a heading of their own. */
export type RowGroup<Row> = { title?: string; rows: readonly Row[] };

type DataTableProps<Row> = {
  columns: readonly Column<Row>[];
  rows?: readonly Row[];
  groups?: readonly RowGroup<Row>[];
  caption?: string;
  /** What a screen reader calls the place in which a wide table scrolls; none where it fits everywhere. */
  label?: string;
  id?: string;
  /** Classes of the table. */
  kind?: string;
  classOf?: (row: Row) => string | undefined;
  stateOf?: (row: Row) => string;
  /** What stands in the place of all cells but the row's header. */
  instead?: (row: Row) => string | undefined;
  hasNoHead?: boolean;
  /** Notes below it. */
  children?: ComponentChildren;
};

/** Every table of a page: columns are data, a row of the table is a row of the data. */
export function DataTable<Row>(props: DataTableProps<Row>) {
  const { label, children } = props;
  if (label === undefined) return <Table {...props} />;
  return (
    <Wide label={label}>
      <Table {...props} />
      {children}
    </Wide>
  );
}

function Table<Row>(props: DataTableProps<Row>) {
  const { columns, caption, id, kind = "plain", hasNoHead } = props;
  const groups = props.groups ?? [{ rows: props.rows ?? [] }];
  const placed = placedColumns(
    columns,
    groups.flatMap(({ rows }) => rows),
  );
  return (
    <table id={id} class={isNumeric(placed) ? `${kind} numeric` : kind}>
      {caption && <caption>{caption}</caption>}
      {!hasNoHead && <Head columns={placed.map(({ column }) => column)} inNumbers={isNumeric(placed)} />}
      {groups.map(({ title, rows }, place) => (
        <tbody key={title ?? String(place)}>
          {title && (
            <tr>
              <th scope="rowgroup" colSpan={placed.length} class="group">
                {title}
              </th>
            </tr>
          )}
          {rows.map((row, index) => (
            <TableRow key={String(index)} row={row} placed={placed} table={props} />
          ))}
        </tbody>
      ))}
      <Foot placed={placed} />
    </table>
  );
}

/** The rows of such a table alone, as HTML each. */
export function tableRows<Row>({
  rows,
  ...table
}: Pick<DataTableProps<Row>, "columns" | "stateOf"> & { rows: readonly Row[] }): readonly string[] {
  const placed = placedColumns(table.columns, rows);
  return rows.map((row) => compactHtml(renderToString(<TableRow row={row} placed={placed} table={table} />)));
}

/** A column with its own place, what stands below its content, and the room of its widest decimals. */
type Placed<Row> = { column: Column<Row>; below: readonly Column<Row>[]; widest: number };

/** Whether most cells of a table are numbers: then the others say what they are, and a page is shorter by that. */
function isNumeric<Row>(placed: readonly Placed<Row>[]): boolean {
  const cells = placed.filter(({ column }) => !column.isRowHeader);
  return 2 * cells.filter(({ column }) => isNumber(column.kind)).length > cells.length;
}

function placedColumns<Row>(columns: readonly Column<Row>[], rows: readonly Row[]): readonly Placed<Row>[] {
  return columns
    .filter(({ under }) => under === undefined)
    .map((column) => ({
      column,
      below: columns.filter(({ under }) => under !== undefined && under === column.heading),
      widest: widestDecimals(
        column.kind === "decimal" ? [...rows.map((row) => column.text?.(row) ?? ""), column.foot?.text ?? ""] : [],
      ),
    }));
}

type RowProps<Row> = { row: Row; placed: readonly Placed<Row>[]; table: DataTableProps<Row> };

function TableRow<Row>({ row, placed, table: { classOf, stateOf, instead } }: RowProps<Row>) {
  const words = instead?.(row);
  const inNumbers = isNumeric(placed);
  const shown = words === undefined ? placed : placed.filter(({ column }) => column.isRowHeader);
  return (
    <tr class={classOf?.(row) || undefined} data-state={stateOf?.(row)}>
      {shown.map((one, place) => (
        <Cell key={String(place)} row={row} placed={one} inNumbers={inNumbers} />
      ))}
      {words !== undefined && (
        <td colSpan={placed.length - shown.length} class="not-determined">
          {words}
        </td>
      )}
    </tr>
  );
}

type CellProps<Row> = { row: Row; placed: Placed<Row>; inNumbers: boolean };

function Cell<Row>({ row, placed: { column, below, widest }, inNumbers }: CellProps<Row>) {
  const { isRowHeader, classOf, sortBy } = column;
  const kind = classOfKind(column.kind, inNumbers && !isRowHeader);
  const classes = [kind, classOf?.(row)].filter(Boolean).join(" ") || undefined;
  const content = (
    <>
      <Content row={row} column={column} widest={widest} />
      {below.map((other) => (
        <Below key={String(other.heading)} row={row} column={other} />
      ))}
    </>
  );
  return isRowHeader ? (
    <th scope="row" class={classes} data-value={sortBy?.(row)}>
      {content}
    </th>
  ) : (
    <td class={classes} data-value={sortBy?.(row)}>
      {content}
    </td>
  );
}

function Below<Row>({ row, column }: { row: Row; column: Column<Row> }) {
  const content = contentOf(column, row);
  return content === null || content === "" ? null : <span class="where">{content}</span>;
}

function Content<Row>({ row, column, widest }: { row: Row; column: Column<Row>; widest: number }) {
  const content = contentOf(column, row);
  return column.kind === "decimal" ? <Decimal text={String(content)} widest={widest} /> : content;
}

function contentOf<Row>({ cell, text }: Column<Row>, row: Row): ComponentChildren {
  return cell === undefined ? text?.(row) : cell(row);
}

/** A number that has its decimal point below those of its column. */
function Decimal({ text, widest }: { text: string; widest: number }) {
  const room = roomAfter(text, widest);
  return room === 0 ? text : <span style={{ paddingRight: `${String(room)}ch` }}>{text}</span>;
}

/** One row; a column without a foot has an empty cell, unless another's lies over it. */
function Foot<Row>({ placed }: { placed: readonly Placed<Row>[] }) {
  if (placed.every(({ column }) => column.foot === undefined)) return null;
  const covered = new Set(
    placed.flatMap(({ column: { foot } }, place) =>
      Array.from({ length: (foot?.span ?? 1) - 1 }, (_, further) => place + 1 + further),
    ),
  );
  return (
    <tfoot>
      <tr>
        {placed.map(({ column, widest }, place) =>
          covered.has(place) ? null : (
            <FootCell key={String(place)} column={column} widest={widest} inNumbers={isNumeric(placed)} />
          ),
        )}
      </tr>
    </tfoot>
  );
}

type FootProps<Row> = Pick<Placed<Row>, "column" | "widest"> & { inNumbers: boolean };

function FootCell<Row>({ column: { isRowHeader, foot, kind }, widest, inNumbers }: FootProps<Row>) {
  if (isRowHeader) return <th scope="row">{foot?.text}</th>;
  if (foot?.span !== undefined) {
    return (
      <td colSpan={foot.span} class={inNumbers ? "text" : undefined}>
        {foot.text}
      </td>
    );
  }
  return <td class={classOfKind(kind, inNumbers)}>{foot && <Decimal text={foot.text} widest={widest} />}</td>;
}

/** Said is what a cell is beside the most of its table. */
function classOfKind(kind: Column<never>["kind"], inNumbers: boolean): string | undefined {
  if (inNumbers) return isNumber(kind) ? undefined : ["text", kind].filter(Boolean).join(" ");
  return isNumber(kind) ? "number" : kind;
}
