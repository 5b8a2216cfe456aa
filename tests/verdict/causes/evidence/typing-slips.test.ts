import { expect, test } from "vitest";
import { planted } from "../planted.ts";

const withTyped = (place: number, column: "reference" | "signal" | "value", typed: number) =>
  planted({ sheet: (readings) => readings.with(place, { ...readings[place]!, [column]: typed }) });

test("14.28 typed for 12.48, the mark moved, and a zero that went in front are each found in their column", () => {
  // The fifth point out of eleven is read near 10.4 mA, 40 % and 600 mm.
  const at = planted({}).readings[4]!.reading;
  const slips = (evidence: ReturnType<typeof planted>) =>
    evidence.slips.map(({ axis, kind, index }) => [axis, kind, index]);
  expect(slips(withTyped(4, "signal", 10 * at.signal!))).toEqual([["signal", "decimal mark moved", 4]]);
  expect(slips(withTyped(4, "value", at.value! / 10))).toEqual([["value", "decimal mark moved", 4]]);
  const digits = [...at.reference.toFixed(1)];
  const exchanged = Number([digits[1], digits[0], ...digits.slice(2)].join(""));
  const [slip] = withTyped(4, "reference", exchanged).slips;
  expect(slip).toMatchObject({
    axis: "reference",
    kind: "two digits exchanged",
    typed: exchanged,
    meant: at.reference,
  });
});

test("a digit that was typed twice is taken once where that fits", () => {
  const at = planted({}).readings[4]!.reading;
  const doubled = (text: string) => Number(text[0] + text);
  const [reference] = withTyped(4, "reference", doubled(at.reference.toFixed(1))).slips;
  expect(reference).toMatchObject({ axis: "reference", kind: "one digit typed twice", meant: at.reference });
  const [signal] = withTyped(4, "signal", doubled(at.signal!.toFixed(3))).slips;
  expect(signal).toMatchObject({ axis: "signal", kind: "one digit typed twice", meant: at.signal });
});

test("a wild number that no slip explains, and readings without one, give none", () => {
  expect(withTyped(4, "signal", 17.777).slips).toEqual([]);
  expect(planted({}).slips).toEqual([]);
});

test("references filled down beside points that say another distance are slips, however many of the first half they are", () => {
  const filled = (count: number) =>
    planted({
      sheet: (readings) => {
        const named = readings.map((reading) => ({ ...reading, point: Math.round(reading.reference) }));
        return named.map((reading, place) =>
          place > 0 && place <= count ? { ...reading, reference: named[0]!.reference } : reading,
        );
      },
    });
  const { slips, readings } = filled(4);
  expect(slips.map(({ index, axis, kind }) => [index, axis, kind])).toEqual(
    [1, 2, 3, 4].map((index) => [index, "reference", "the reference is not that of its point"]),
  );
  for (const { index, meant } of slips) expect(meant).toBeCloseTo(readings[index]!.reading.point!, 9);
  expect(filled(0).slips).toEqual([]);
  const half = filled(readings.length / 2).slips.filter(
    ({ kind }) => kind === "the reference is not that of its point",
  );
  expect(half).toEqual([]);
});

test("where readings scatter the more the farther the target is, no slip is looked for", () => {
  const wide = planted({
    noise: (noise, { part }) => noise * (1 + 60 * Math.max(0, part) ** 2),
    sheet: (readings) => readings.with(4, { ...readings[4]!, value: readings[4]!.value! / 10 }),
  });
  expect(wide.slips).toEqual([]);
});

test("readings of a plateau are no slips, though a moved mark might fit some of them", () => {
  expect(planted({ value: (part) => Math.max(part, 0.386) }).slips).toEqual([]);
});

test("where the other readings of a point are as far off, a number that would fit is no slip", () => {
  const off = planted({ seen: (part, { part: place }) => (Math.round(10 * place) === 5 ? part + 0.012 : part) });
  expect(off.slips).toEqual([]);
  // One of four: 12.2 typed as 12.22 beside three that agree with the line.
  const at = planted({}).readings[5]!.reading;
  const [slip] = withTyped(5, "signal", Number(at.signal!.toFixed(3).replace(/(\d)\./u, "$1$1."))).slips;
  expect(slip).toMatchObject({ axis: "signal", kind: "one digit typed twice" });
});
