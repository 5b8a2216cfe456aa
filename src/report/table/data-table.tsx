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
  const layout = layoutOf(
    columns,
    groups.flatMap(({ rows }) => rows),
  );
  const { placed, inNumbers, isNumbered } = layout;
  const ofAll = [kind, inNumbers && "numeric", isNumbered && "numbered"].filter(Boolean).join(" ");
  return (
    <table id={id} class={ofAll}>
      {caption && <caption>{caption}</caption>}
      {!hasNoHead && <Head columns={placed.map(({ column }) => column)} inNumbers={inNumbers} />}
      {groups.map(({ title, rows }, place) => (
        <tbody key={title ?? String(place)}>
          {title && (
            <tr>
              <th scope="rowgroup" colSpan={placed.length} class="group">
                {title}
              </th>
            </tr>
          )}
          {rows.map((row) => tableRow(row, layout, props))}
        </tbody>
      ))}
      <Foot layout={layout} />
    </table>
  );
}

/** The rows of such a table alone, as HTML each. */
export function tableRows<Row>({
  rows,
  ...table
}: Pick<DataTableProps<Row>, "columns" | "stateOf"> & { rows: readonly Row[] }): readonly string[] {
  const layout = layoutOf(table.columns, rows);
  return rows.map((row) => compactHtml(renderToString(tableRow(row, layout, table))));
}

/** A column with its own place, what stands below its content, and the room of its widest decimals. */
type Placed<Row> = { column: Column<Row>; below: readonly Column<Row>[]; widest: number };

/**
 * The columns of a table, whether most of their cells are numbers, and whether its rows are headed by numbers: then the table
 * says so once, the other cells say what they are, and a page is shorter by that.
 */
type Layout<Row> = { placed: readonly Placed<Row>[]; inNumbers: boolean; isNumbered: boolean };

function layoutOf<Row>(columns: readonly Column<Row>[], rows: readonly Row[]): Layout<Row> {
  const placed = columns
    .filter(({ under }) => under === undefined)
    .map((column) => ({
      column,
      below: columns.filter(({ under }) => under !== undefined && under === column.heading),
      widest: widestDecimals(
        column.kind === "decimal" ? [...rows.map((row) => column.text?.(row) ?? ""), column.foot?.text ?? ""] : [],
      ),
    }));
  const cells = placed.filter(({ column }) => !column.isRowHeader);
  const inNumbers = 2 * numbersAmong(cells).length > cells.length;
  return { placed, inNumbers, isNumbered: numbersAmong(placed).some(({ column }) => column.isRowHeader) };
}

function numbersAmong<Row>(placed: readonly Placed<Row>[]): readonly Placed<Row>[] {
  return placed.filter(({ column }) => isNumber(column.kind));
}

// Rows and cells are made by functions: as a component with its content in another, a cell, of which a page has a thousand,
// would be four elements to the renderer in the place of one.

function tableRow<Row>(
  row: Row,
  { placed, inNumbers }: Layout<Row>,
  { classOf, stateOf, instead }: Pick<DataTableProps<Row>, "classOf" | "stateOf" | "instead">,
) {
  const words = instead?.(row);
  const shown = words === undefined ? placed : placed.filter(({ column }) => column.isRowHeader);
  return (
    <tr class={classOf?.(row) || undefined} data-state={stateOf?.(row)}>
      {shown.map((one) => tableCell(row, one, inNumbers))}
      {words !== undefined && (
        <td colSpan={placed.length - shown.length} class="not-determined">
          {words}
        </td>
      )}
    </tr>
  );
}

function tableCell<Row>(row: Row, { column, below, widest }: Placed<Row>, inNumbers: boolean) {
  const { isRowHeader, classOf, sortBy } = column;
  const kind = isRowHeader && isNumber(column.kind) ? undefined : classOfKind(column.kind, inNumbers && !isRowHeader);
  const classes = [kind, classOf?.(row)].filter(Boolean).join(" ") || undefined;
  const own = column.kind === "decimal" ? decimal(String(contentOf(column, row)), widest) : contentOf(column, row);
  const content = below.length === 0 ? own : [own, ...below.map((other) => lesser(contentOf(other, row)))];
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

/** What stands small below the content of a cell. */
function lesser(content: ComponentChildren) {
  return content === null || content === "" ? null : <span class="where">{content}</span>;
}

function contentOf<Row>({ cell, text }: Column<Row>, row: Row): ComponentChildren {
  return cell === undefined ? text?.(row) : cell(row);
}

/** A number that has its decimal point below those of its column. */
function decimal(text: string, widest: number) {
  const room = roomAfter(text, widest);
  return room === 0 ? text : <span style={{ paddingRight: `${String(room)}ch` }}>{text}</span>;
}

/** One row; a column without a foot has an empty cell, unless another's lies over it. */
function Foot<Row>({ layout: { placed, inNumbers } }: { layout: Layout<Row> }) {
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
            <FootCell key={String(place)} column={column} widest={widest} inNumbers={inNumbers} />
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
  return <td class={classOfKind(kind, inNumbers)}>{foot && decimal(foot.text, widest)}</td>;
}

/** Said is what a cell is beside the most of its table. */
function classOfKind(kind: Column<never>["kind"], inNumbers: boolean): string | undefined {
  if (inNumbers) return isNumber(kind) ? undefined : ["text", kind].filter(Boolean).join(" ");
  return isNumber(kind) ? "number" : kind;
}
