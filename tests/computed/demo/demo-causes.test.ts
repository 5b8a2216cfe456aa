import { describe, expect, it } from "vitest";
import { demoRecords } from "../../report/demo-records.ts";

/** What was planted in each loop of data-demo that has something wrong, as found; ids of causes. */
const planted: Readonly<Record<string, readonly string[]>> = {
  "LT-310": ["datum-shifted", "output-and-value-shifted"],
  "ZT-115": ["ends-taught-wrong"],
  "ZT-407": ["hysteresis-of-sensor"],
  "LT-702": ["high-constant-wrong"],
  "LT-318": ["air-temperature"],
  "ZT-330": ["live-zero-scaled-from-zero", "datum-shifted"],
  "ZT-331": ["current-limited", "typing-error"],
  "LT-332": ["blind-zone", "air-temperature"],
  "LT-333": ["shunt-or-gain-off", "value-clamped-or-cut"],
};

const idsOf = (tag: string) =>
  demoRecords
    .find(({ instrument }) => instrument.tag === tag)
    ?.causes?.asFound?.findings.map(({ id }) => id)
    .toSorted();

describe("the causes that the demo shows", () => {
  it.each(Object.entries(planted))("%s is consistent with %j, as planted", (tag, ids) => {
    expect(idsOf(tag)).toEqual(ids.toSorted());
  });

  it("are at least ten different ones", () => {
    expect(new Set(Object.values(planted).flat()).size).toBeGreaterThanOrEqual(10);
  });

  it("are none where nothing was planted beyond the tolerance", () => {
    expect(idsOf("ZT-201")).toEqual([]);
    expect(idsOf("ZT-233")).toEqual([]);
  });

  it("name the typing slip by its number: 14.001 mA was read and 10.401 mA typed", () => {
    const record = demoRecords.find(({ instrument }) => instrument.tag === "ZT-331");
    const slip = record?.causes?.asFound?.findings.find(({ id }) => id === "typing-error");
    expect(slip?.evidence.map(({ value }) => value).slice(0, 2)).toEqual([10.401, 14.001]);
  });
});
