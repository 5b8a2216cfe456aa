import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import type { Column } from "../../../src/report/table/column.ts";
import { Head } from "../../../src/report/table/table-head.tsx";

const columns: readonly Column<string>[] = [
  { heading: "Point", isRowHeader: true, text: (row) => row },
  { heading: "Rising", kind: "number", over: "As found", text: (row) => row },
  { heading: "Falling", kind: "number", over: "As found", text: (row) => row },
  { heading: "Remark", text: (row) => row },
];
const headOf = (inNumbers: boolean) => renderToString(<Head columns={columns} inNumbers={inNumbers} />);

test("neighbours under one heading stand below it, the others are two rows high", () => {
  const html = headOf(true);
  expect(html).toContain('<th scope="colgroup" colspan="2" class="over">As found</th>');
  expect(html).toContain('<th scope="col" rowspan="2" class="text">Remark</th>');
  expect(html).toContain('</tr><tr><th scope="col">Rising</th><th scope="col">Falling</th></tr>');
});

test("in a table of words the numbers say that they are numbers", () => {
  expect(headOf(false)).toContain('<th scope="col" class="number">Rising</th>');
  expect(headOf(false)).toContain('<th scope="col" rowspan="2">Remark</th>');
});
