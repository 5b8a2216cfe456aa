import { type Column, isNumber } from "./column.ts";

type HeadProps<Row> = { columns: readonly Column<Row>[]; inNumbers: boolean };

/** The headings of a table, a second row of them where some stand under one heading. */
export function Head<Row>({ columns, inNumbers }: HeadProps<Row>) {
  const hasTwoRows = columns.some(({ over }) => over !== undefined);
  const runs = runsOf(columns);
  return (
    <thead>
      <tr>
        {runs.map(({ over, columns: [first, ...others] }, place) =>
          over === undefined ? (
            <Heading key={String(place)} column={first} inNumbers={inNumbers} rows={hasTwoRows ? 2 : undefined} />
          ) : (
            <th key={String(place)} scope="colgroup" colSpan={1 + others.length} class="over">
              {over}
            </th>
          ),
        )}
      </tr>
      {hasTwoRows && (
        <tr>
          {columns.map(
            (column, place) =>
              column.over !== undefined && <Heading key={String(place)} column={column} inNumbers={inNumbers} />,
          )}
        </tr>
      )}
    </thead>
  );
}

type Run<Row> = { over: string | undefined; columns: [Column<Row>, ...Column<Row>[]] };

/** Neighbours under one heading together. */
function runsOf<Row>(columns: readonly Column<Row>[]): readonly Run<Row>[] {
  const runs: Run<Row>[] = [];
  for (const column of columns) {
    const last = runs.at(-1);
    if (column.over !== undefined && last?.over === column.over) last.columns.push(column);
    else runs.push({ over: column.over, columns: [column] });
  }
  return runs;
}

type HeadingProps<Row> = { column: Column<Row>; inNumbers: boolean; rows?: number | undefined };

function Heading<Row>({ column: { heading, unit, kind }, inNumbers, rows }: HeadingProps<Row>) {
  const isAsMost = isNumber(kind) === inNumbers;
  return (
    <th scope="col" rowSpan={rows} class={isAsMost ? undefined : inNumbers ? "text" : "number"}>
      {heading}
      {unit && `, ${unit}`}
    </th>
  );
}
