import { expect, test } from "vitest";
import { standardContributions } from "../../src/analysis/uncertainty/standard-contributions.ts";
import { certificateSource } from "../../src/model/certificate-source.ts";

test("the certificate of GB-1 is found in a budget by its name", () => {
  expect(certificateSource("GB-1")).toBe("GB-1: certificate");
  const { shared } = standardContributions(
    [
      {
        ...{ standard: "GB-1", certificate: "EX-1", calibratedOn: "2026-01-14", dueOn: "2027-01-14" },
        ...{ expandedUncertainty: 0.2, uncertaintyUnit: "mm", coverageFactor: 2, driftPerYear: 0.1 },
      },
    ],
    {
      ...{ role: "reference distance", kind: "distance", unit: "mm", sensitivity: 1, typedStep: 0.1 },
      performedOn: "2026-03-04",
    },
  );
  expect(shared.filter(({ source }) => source === certificateSource("GB-1"))).toHaveLength(1);
});
