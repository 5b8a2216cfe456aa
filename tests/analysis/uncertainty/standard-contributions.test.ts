import { describe, expect, test } from "vitest";
import {
  type StandardUse,
  standardContributions,
  standardsOf,
} from "../../../src/analysis/uncertainty/standard-contributions.ts";
import type { Standard } from "../../../src/model/calibration.ts";
import { frozen } from "../../charts/frozen.ts";
import { meter, rail, thermometer } from "../sample-basis.ts";
import { expectNear } from "../sample-loop.ts";

/** A few roundings of numbers up to 10. */
const rounding = 1e-14;

const use: StandardUse = frozen({
  role: "reference distance",
  kind: "distance",
  unit: "mm",
  sensitivity: 1,
  typedStep: 0.1,
  performedOn: "2026-03-04",
});

const without = (standard: Standard, ...keys: (keyof Standard)[]): Standard =>
  Object.fromEntries(Object.entries(standard).filter(([key]) => !keys.includes(key as keyof Standard))) as Standard;

test("0.2 mm with k = 2 is a standard uncertainty of 0.1 mm", () => {
  const { shared } = standardContributions(
    [
      {
        standard: "GB-1",
        certificate: "EX-1",
        calibratedOn: "2026-01-14",
        dueOn: "2027-01-14",
        expandedUncertainty: 0.2,
        uncertaintyUnit: "mm",
        coverageFactor: 2,
      },
    ],
    {
      role: "reference distance",
      kind: "distance",
      unit: "mm",
      sensitivity: 1,
      typedStep: 0.1,
      performedOn: "2026-03-04",
    },
  );
  expect(shared[0]?.standardUncertainty).toBe(0.1);
});

test("a standard that states everything gives certificate, drift and resolution, and nothing is missing", () => {
  const { shared, own, missing } = standardContributions([rail], use);
  expect(shared.map(({ source }) => source)).toEqual(["GB-1: certificate", "GB-1: drift since the certificate"]);
  expect(own.map(({ source }) => source)).toEqual(["GB-1: resolution"]);
  expect(missing).toEqual([]);
  // 14 January to 4 March are 17 + 28 + 4 = 49 days of 365.25.
  expectNear(shared[1]?.value, (0.05 * 49) / 365.25, rounding);
  expectNear(shared[1]?.standardUncertainty, (0.05 * 49) / 365.25 / Math.sqrt(3), rounding);
  expectNear(own[0]?.standardUncertainty, 0.05 / Math.sqrt(3), rounding);
});

test("another unit of the same kind is converted: certificate, drift and resolution of 1 in are 25.4 mm", () => {
  const inches: Standard = { ...rail, uncertaintyUnit: "in" };
  const { shared, own } = standardContributions([inches], use);
  const inMillimetres = standardContributions([rail], use);
  for (const [index, line] of [...shared, ...own].entries()) {
    const other = [...inMillimetres.shared, ...inMillimetres.own][index]!;
    expectNear(line.standardUncertainty / other.standardUncertainty, 25.4, 1e-13);
    expect(line.unit).toBe("mm");
  }
});

test("the sensitivity turns the unit of the standard into distance: 2 µA are 0.2 mm at 100 mm/mA", () => {
  const signal = { ...use, role: "signal meter", kind: "current", unit: "mA", sensitivity: 100 } as const;
  const { shared } = standardContributions([rail, meter], signal);
  expect(shared.map(({ source }) => source)).toEqual(["MM-1: certificate", "MM-1: drift since the certificate"]);
  expectNear(shared[0]?.value, 0.002, rounding);
  expectNear(shared[0]?.standardUncertainty, 0.1, rounding);
});

test("a difference of temperature is converted without the zero points of the scales", () => {
  const air = { ...use, role: "air temperature", kind: "temperature", unit: "°C", sensitivity: 1 } as const;
  expectNear(standardContributions([thermometer], air).shared[0]?.standardUncertainty, 0.15, rounding);
});

describe("what a standard does not state is said, and what it does state is taken", () => {
  test.each<[string, Standard, readonly string[], readonly string[]]>([
    [
      "no uncertainty",
      without(rail, "expandedUncertainty"),
      ["drift since the certificate"],
      ["no expanded uncertainty is stated"],
    ],
    [
      "no k",
      without(rail, "coverageFactor"),
      ["certificate", "drift since the certificate"],
      ["no coverage factor is stated; 2 is taken"],
    ],
    ["no drift", without(rail, "driftPerYear"), ["certificate"], ["no drift is stated"]],
    [
      "nothing at all",
      without(rail, "expandedUncertainty", "coverageFactor", "driftPerYear"),
      [],
      ["no expanded uncertainty is stated", "no drift is stated"],
    ],
  ])("%s", (_, standard, shared, missing) => {
    const found = standardContributions([standard], use);
    expect(found.shared.map(({ source }) => source)).toEqual(shared.map((what) => `GB-1: ${what}`));
    expect(found.missing).toEqual(missing.map((what) => `GB-1: ${what}`));
  });

  test("without k the certificate is taken with 2", () => {
    const [certificate] = standardContributions([without(rail, "coverageFactor")], use).shared;
    expect(certificate).toMatchObject({ divisor: 2, standardUncertainty: 0.1 });
  });

  test("without a resolution half the step that was typed is taken", () => {
    const [step] = standardContributions([without(rail, "resolution")], use).own;
    expect(step).toMatchObject({ source: "reference distance: step of the readings", value: 0.05 });
  });

  test("without the day of the work the drift is not known, for another reason than a drift that is not stated", () => {
    const { shared, missing } = standardContributions([rail], { ...use, performedOn: undefined });
    expect(shared.map(({ source }) => source)).toEqual(["GB-1: certificate"]);
    expect(missing).toEqual(["GB-1: the drift is not known: the day of the work is not stated"]);
  });

  test("a certificate of a later day has not drifted, and a drift of 0 is none", () => {
    const later = standardContributions([{ ...rail, calibratedOn: "2026-03-05" }], use);
    const none = standardContributions([{ ...rail, driftPerYear: 0 }], use);
    for (const { shared, missing } of [later, none]) {
      expect(shared.map(({ source }) => source)).toEqual(["GB-1: certificate"]);
      expect(missing).toEqual([]);
    }
  });
});

describe("no standard of the kind", () => {
  const none = "reference distance: no standard with an uncertainty in mm is named";

  test("none at all, or of another kind: the typed step alone, and it is said", () => {
    for (const standards of [[], [meter, thermometer]]) {
      const found = standardContributions(standards, use);
      expect(found).toMatchObject({ shared: [], missing: [none], own: [{ value: 0.05 }] });
    }
  });

  test.each<[string, Partial<Standard>]>([
    ["in percent", { uncertaintyUnit: "%" }],
    ["in a unit of another kind", { uncertaintyUnit: "mA" }],
    ["in a unit that is not named", { uncertaintyUnit: undefined }],
  ])("a standard of distance whose uncertainty is %s is told by its name", (_, change) => {
    const found = standardContributions([{ ...rail, ...change }], use);
    const unfit = "GB-1: its uncertainty is not stated in a unit of distance";
    expect(found).toMatchObject({ shared: [], missing: [unfit, none] });
    const beside = standardContributions(
      [
        { ...rail, ...change },
        { ...rail, standard: "GB-2" },
      ],
      use,
    );
    expect(beside.missing).toEqual([unfit]);
    expect(beside.shared).toHaveLength(2);
  });
});

test("two standards of a kind both take part", () => {
  const { shared, own } = standardContributions([rail, { ...rail, standard: "GB-2" }], use);
  expect([shared.length, own.length]).toEqual([4, 2]);
});

test("the unit says of which kind a standard is", () => {
  const gauge: Standard = {
    standard: "GB-1",
    certificate: "EX-1",
    calibratedOn: "2026-01-14",
    dueOn: "2027-01-14",
    expandedUncertainty: 0.2,
    uncertaintyUnit: "mm",
  };
  expect(standardsOf([gauge], "distance").length).toBe(1);
  expect(standardsOf([rail, meter, thermometer], "current")).toEqual([meter]);
  expect(
    standardsOf(
      [
        { ...rail, uncertaintyUnit: "%" },
        { ...rail, uncertaintyUnit: undefined },
      ],
      "distance",
    ),
  ).toEqual([]);
});
