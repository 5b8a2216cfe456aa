import { expect, test } from "vitest";
import { budgets } from "../../../src/jobs/self-test/budget-examples.ts";
import { impedance, thermometer } from "../../../src/jobs/self-test/gum-examples.ts";
import { uncertainBoth, unknownUncertainty, weighted } from "../../../src/jobs/self-test/line-examples.ts";
import { mavro, noInt1, norris } from "../../../src/jobs/self-test/nist-data.ts";
import { canonical, edwards } from "../../../src/jobs/self-test/proof-examples.ts";
import { runSelfTest } from "../../../src/jobs/self-test/run-self-test.ts";
import { readColumns, readExpected } from "../../published/read-data.ts";

test("every example comes out as published, and each compares something", () => {
  const results = runSelfTest();
  expect(results.filter(({ isPassed }) => !isPassed)).toEqual([]);
  expect(results.length).toBeGreaterThanOrEqual(17);
  expect(results.every(({ figures, source }) => figures > 0 && source !== "")).toBe(true);
});

test("its data are those of tests/published, which says where they were read", () => {
  expect({ x: [...norris.x], y: [...norris.y] }).toEqual(readColumns("nist-norris"));
  expect({ x: [...noInt1.x], y: [...noInt1.y] }).toEqual(readColumns("nist-noint1"));
  expect([...mavro]).toEqual(readColumns("nist-mavro").y);
  const { V, I_mA, phi_rad } = readColumns("gum-h2-impedance");
  expect(impedance).toEqual({ volts: V, milliamps: I_mA, radians: phi_rad });
  const { t_k_degC, b_k_degC } = readColumns("gum-h3-thermometer");
  expect(thermometer).toEqual({ celsius: t_k_degC, corrections: b_k_degC });
  const { x, y } = readColumns("iso-28037-weighted");
  expect(weighted).toEqual({ x, y });
  expect(unknownUncertainty).toEqual(readColumns("iso-28037-annex-e"));
  const both = readColumns("iso-28037-errors-in-both");
  expect(uncertainBoth).toEqual({
    ...{ abscissas: both.x, ordinates: both.y },
    ...{ abscissaUncertainties: both.x_uncertainty, ordinateUncertainties: both.y_uncertainty },
  });
});

test("its budgets are those of EA-4/02 as they were read", () => {
  type Example = {
    lines: readonly (readonly [number, number, number | null, string])[];
    combined: number;
    factor: number;
  };
  const published = readExpected<Record<string, Example>>("ea-4-02");
  for (const { name, lines, combined, factor } of budgets) {
    const read = published[name.split(",")[0]!]!;
    expect(
      lines.map(([value, by, freedom, shape]) => [value, by, Number.isFinite(freedom) ? freedom : null, shape]),
    ).toEqual(read.lines);
    expect([combined[0], factor[0]]).toEqual([read.combined, read.factor]);
  }
});

test("its vectors are those of RFC 8785 and RFC 8037 as they were read", () => {
  const json = readExpected<{ sample: string; sampleBytes: string }>("rfc8785");
  expect(JSON.parse(canonical.sample)).toEqual(JSON.parse(json.sample));
  expect(canonical.text).toBe(Buffer.from(json.sampleBytes.replaceAll(" ", ""), "hex").toString("utf8"));
  type Key = { privateKey: { x: string }; thumbprint: string; signingInput: string; signature: string };
  const key = readExpected<Key>("rfc8037");
  const { thumbprint, signingInput, signature } = key;
  expect(edwards).toEqual({ publicKey: key.privateKey.x, thumbprint, signingInput, signature });
});

test.each([
  ["a number that is off", () => [{ figure: "u", computed: 1.6, published: 1, allowed: 0.5 }], "0.60 of 0.50"],
  ["no number", () => [{ figure: "u", computed: Number.NaN, published: 1, allowed: 0.5 }], "NaN of 0.50"],
  ["another text", () => [{ figure: "u", computed: "a", published: "b" }], "a for b"],
  ["nothing", () => [], "nothing was compared"],
])("an example that gives %s has not passed", (_, compare, gap) => {
  expect(runSelfTest([{ name: "one", source: "a book", compare }])).toMatchObject([{ isPassed: false, gap }]);
});

test("an example that throws has not passed, and the next one is computed", () => {
  const broken = () => {
    throw new RangeError("no line");
  };
  const right = () => [{ figure: "u", computed: 1, published: 1, allowed: 0 }];
  const results = runSelfTest([
    { name: "one", source: "a book", compare: broken },
    { name: "two", source: "a book", compare: right },
  ]);
  expect(results.map(({ isPassed, worst }) => ({ isPassed, worst }))).toEqual([
    { isPassed: false, worst: "no line" },
    { isPassed: true, worst: "u" },
  ]);
});
