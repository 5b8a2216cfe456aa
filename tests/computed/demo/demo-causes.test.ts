import { describe, expect, it } from "vitest";
import { demoRecords } from "../../report/demo-records.ts";

/** What was planted in each loop of data-demo that has something wrong, as found; rows of the list of causes. */
const planted: Readonly<Record<string, readonly number[]>> = {
  "LT-310": [10, 27],
  "ZT-115": [21],
  "ZT-407": [22],
  "LT-702": [4],
  "LT-318": [20],
  "ZT-330": [1, 10],
  "ZT-331": [13, 33],
  "LT-332": [15, 20],
  "LT-333": [11, 28],
};

const rowsOf = (tag: string) =>
  demoRecords
    .find(({ instrument }) => instrument.tag === tag)
    ?.causes?.asFound?.findings.map(({ row }) => row)
    .sort((left, right) => left - right);

describe("the causes that the demo shows", () => {
  it.each(Object.entries(planted))("%s is consistent with rows %j, as planted", (tag, rows) => {
    expect(rowsOf(tag)).toEqual(rows);
  });

  it("are at least ten different ones", () => {
    expect(new Set(Object.values(planted).flat()).size).toBeGreaterThanOrEqual(10);
  });

  it("are none where nothing was planted beyond the tolerance", () => {
    expect(rowsOf("ZT-201")).toEqual([]);
    expect(rowsOf("ZT-233")).toEqual([]);
  });

  it("name the typing slip by its number: 14.001 mA was read and 10.401 mA typed", () => {
    const record = demoRecords.find(({ instrument }) => instrument.tag === "ZT-331");
    const slip = record?.causes?.asFound?.findings.find(({ row }) => row === 33);
    expect(slip?.evidence.map(({ value }) => value).slice(0, 2)).toEqual([10.401, 14.001]);
  });
});
