import { expect, test } from "vitest";
import * as z from "zod";
import { columnsOf, requiredNumber, text } from "../../src/model/column.ts";

test("the columns of a schema stand in its order with what each of them means", () => {
  const schema = z.strictObject({
    rangeLower: requiredNumber("distance", "nearest", { atLeast: 0 }),
    remark: text("a note"),
  });
  expect(columnsOf(schema)).toEqual([
    {
      key: "rangeLower",
      name: "range_lower",
      reads: "number",
      unit: "distance",
      required: true,
      about: "nearest",
      atLeast: 0,
    },
    { key: "remark", name: "remark", reads: "text", required: false, about: "a note" },
  ]);
});

test("a field that no one gave a meaning is a mistake of the code", () => {
  expect(() => columnsOf(z.strictObject({ stray: z.string() }))).toThrow("stray has no meaning as a column");
});
