import { expect, test } from "vitest";
import { rowsExchanged, wildReading } from "../../../src/verdict/causes/apart-causes.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const apartCauses = [rowsExchanged, wildReading];

test("one reading far out, which no slip explains, is wild; the loop is judged without it", () => {
  const evidence = planted({ sheet: (readings) => readings.with(4, { ...readings[4]!, signal: 17.777 }) });
  const [found] = findingsOf(apartCauses, evidence);
  expect(found?.id).toBe("wild-reading");
  expect(found?.says).toContain("600 mm (rising, cycle 1)");
  expect(found?.rivals.map(({ id }) => id)).toContain("typing-error");
  expect(evidence.stages[0]?.readings.some(({ index }) => index === 4)).toBe(false);
});

test("two rows whose signals changed places are named as that, with both places", () => {
  const evidence = planted({
    sheet: (readings) =>
      readings
        .with(3, { ...readings[3]!, signal: readings[6]!.signal! })
        .with(6, { ...readings[6]!, signal: readings[3]!.signal! }),
  });
  const found = findingsOf(apartCauses, evidence);
  expect(found.map(({ id }) => id)).toEqual(["rows-exchanged"]);
  expect(found[0]?.says).toMatch(/499.8 mm .+ and 799.9 mm/u);
});

test("a healthy loop and a shifted one have neither", () => {
  expect(idsOf(apartCauses, planted(nothingWrong))).toEqual([]);
  expect(idsOf(apartCauses, planted({ seen: (part) => part + 0.02 }))).toEqual([]);
});
