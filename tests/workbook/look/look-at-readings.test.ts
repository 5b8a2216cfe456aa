import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { readDelimited } from "../../../src/workbook/files/read-delimited.ts";
import { columnsMeant, firstReading, lookAtReadings } from "../../../src/workbook/look/look-at-readings.ts";

async function looked(text: string) {
  const problems = new ProblemList();
  const bytes = new TextEncoder().encode(text);
  const raw = await firstReading(async (first) => readDelimited({ name: "r.csv", bytes }, "readings", first), problems);
  if (raw === undefined) throw new Error("looked: no table");
  const table = lookAtReadings(raw, problems);
  const rows = Array.from(table.rows, ({ cells }) => cells.join(" "));
  const codes = problems.all.map(({ code }) => code);
  const isPhaseTold = codes.includes("look/phase-assumed");
  expect(isPhaseTold).toBe(!table.header.includes("phase") && table.rows.length > 0);
  return {
    header: table.header,
    rows,
    mark: table.decimalMark,
    codes: codes.filter((code) => code !== "look/phase-assumed"),
    problems,
  };
}

test.each([
  [
    ["distance", "mA"],
    ["reference", "signal"],
  ],
  [
    ["set", "actual", "V"],
    ["point", "reference", "signal"],
  ],
  [
    ["set", "reading"],
    ["reference", "signal"],
  ],
  [
    ["Actual (mm)", "Output", "PLC", "up/down", "who"],
    ["reference", "signal", "value", "direction", undefined],
  ],
  [
    ["distance", "reference", "signal"],
    [undefined, "reference", "signal"],
  ],
])("%j are the columns %j", (header, columns) => {
  const meant = columnsMeant(header);
  expect(header.map((_, index) => meant.get(index))).toEqual(columns);
});

test("columns are named, words are those of the table, and what was assumed is told", async () => {
  const { header, rows, codes, problems } = await looked(
    "set;actual;mA;up/down\n200;199,9;4,01;up\n2000;2000,1;20,01;Down\n",
  );
  expect(header).toEqual(["point", "reference", "signal (mA)", "direction"]);
  expect(rows).toEqual(["200 199,9 4,01 rising", "2000 2000,1 20,01 falling"]);
  expect(codes).toEqual(["look/columns-read-as"]);
  expect(problems.all[0]?.values.columns).toBe("set as point, actual as reference, mA as signal, up/down as direction");
});

test("the decimal mark is settled by the columns of numbers, whatever they are called, and told once", async () => {
  expect((await looked("Weg;mA\n1,5;2\n")).codes).toEqual(["look/columns-unknown"]);
  const { mark } = await looked("distance;mA;up/down\n1,5;4,01;up\n");
  expect(mark).toBe("comma");
  const mixed = await looked("reference;mA;up/down\n1,5;4.01;up\n2;4;up\n");
  expect(mixed.codes.filter((code) => code === "tables/decimal-mark-mixed")).toHaveLength(1);
});

test("directions and cycles come from the order of the rows, phase by phase", async () => {
  const { header, rows, codes } = await looked(
    "state,distance,mA\nbefore,0,4\nbefore,9,19\nbefore,0,4.1\nafter,0,4\nafter,9,20\n".replace("state", "phase"),
  );
  expect(header).toEqual(["direction", "cycle", "phase", "reference", "signal (mA)"]);
  expect(rows.map((row) => row.split(" ").slice(0, 3).join(" "))).toEqual([
    ...["rising 1 as_found", "rising 1 as_found", "falling 1 as_found", "rising 1 as_left", "rising 1 as_left"],
  ]);
  expect(codes).toEqual(["look/columns-read-as", "look/direction-from-order"]);
});

test("a table with its own names and directions is left as it is, and nothing is told", async () => {
  const { header, codes } = await looked("direction,reference,signal\nrising,0,4\nfalling,0,4\n");
  expect(header).toEqual(["direction", "reference", "signal"]);
  expect(codes).toEqual([]);
});

test("a first row of numbers names nothing, and the example has as many columns", async () => {
  const { codes, problems } = await looked("200,4.01,x\n650,8.02,y\n");
  expect(codes).toEqual(["look/columns-unknown"]);
  expect(problems.all[0]?.values).toEqual({ header: "200, 4.01, x", example: "distance,mA,note 1" });
});
