import { expect, test } from "vitest";
import { chanceOfPass, type PlannedReading } from "../../../src/verdict/teaching/chance-of-pass.ts";
import { howMany } from "../../how-many.ts";

const range = { rangeLower: 0, rangeUpper: 100 };
const seed = Uint8Array.from({ length: 32 }, (_, place) => (37 * place + 11) % 256);

/** Another generator than the program's: a 32-bit mixer (mulberry32), turned normal by G. Box and M. Muller. */
function normalsFrom(start: number): () => number {
  let state = start;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

type Sensor = { noise: number; bow: number; cycles: number; points: number };

/** All readings of a plan from a sensor whose line is `zero` and `span` off. */
function read(
  { noise, bow, cycles, points }: Sensor,
  normal: () => number,
  zero: number,
  span: number,
): PlannedReading[] {
  return Array.from({ length: cycles }, (_, cycle) => cycle).flatMap((cycle) =>
    (["rising", "falling"] as const).flatMap((direction) =>
      Array.from({ length: points }, (_, place) => {
        const reference = (100 * place) / (points - 1);
        const bend = bow * (1 - ((reference - 50) / 50) ** 2);
        const indicated = reference + zero + (span * reference) / 100 + bend + noise * normal();
        return { point: reference, direction, cycle, reference, indicated, acceptance: { low: -1, high: 1 } };
      }),
    ),
  );
}

const passesIn = (readings: readonly PlannedReading[]) =>
  readings.every(({ indicated, reference }) => Math.abs(indicated - reference) <= 1);

test("the chance is what comes out: sensors taught and read again by another generator", () => {
  const sensors: readonly Sensor[] = [
    { noise: 0.2, bow: 0, cycles: 3, points: 5 },
    { noise: 0.3, bow: 0, cycles: 3, points: 9 },
    { noise: 0.25, bow: 0.5, cycles: 2, points: 9 },
    { noise: 0.15, bow: 0, cycles: 1, points: 11 },
  ];
  const normal = normalsFrom(20_261_126);
  for (const sensor of sensors) {
    const loops = howMany(40, 150);
    let [foretold, passed] = [0, 0];
    for (let loop = 0; loop < loops; loop++) {
      foretold += chanceOfPass(read(sensor, normal, 3, -2), range, "reading", seed)!.chance / loops;
      // Taught at both ends, each with the scatter of one reading; the bow is nothing there.
      const [lower, upper] = [sensor.noise * normal(), sensor.noise * normal()];
      if (passesIn(read(sensor, normal, -lower, lower - upper))) passed += 1 / loops;
    }
    // The share has this standard deviation at most, 0.08 of 40 and 0.04 of 150; 0.1 is what is asked of the chance.
    const share = Math.sqrt(0.25 / loops);
    expect(Math.abs(foretold - passed), JSON.stringify(sensor)).toBeLessThan(0.1 + share);
  }
});

test("the same readings give the same chance; a wide bend gives none, a steady sensor one", () => {
  const normal = normalsFrom(1);
  const readings = read({ noise: 0.2, bow: 0, cycles: 3, points: 5 }, normal, 1, 1);
  expect(chanceOfPass(readings, range, "reading", seed)).toEqual(chanceOfPass(readings, range, "reading", seed));
  const bent = read({ noise: 0.02, bow: 3, cycles: 3, points: 9 }, normal, 0, 0);
  expect(chanceOfPass(bent, range, "mean", seed)).toEqual({ chance: 0, draws: 100 });
  const steady = read({ noise: 0.02, bow: 0, cycles: 3, points: 9 }, normal, 5, 2);
  expect(chanceOfPass(steady, range, "mean", seed)).toEqual({ chance: 1, draws: 100 });
  expect(chanceOfPass([], range, "mean", seed)).toBeUndefined();
});

test("fewer draws say what many say, within 0.04 of them", () => {
  const normal = normalsFrom(7);
  const seedOf = (number: number) => Uint8Array.from(seed, (byte, place) => (place === 0 ? number : byte));
  const used = new Set<number>();
  for (const noise of [0.1, 0.18, 0.22, 0.26, 0.3, 0.4]) {
    const readings = read({ noise, bow: 0.2, cycles: 2, points: 5 }, normal, 1, 1);
    const each = Array.from(
      { length: howMany(10, 40) },
      (_, number) => chanceOfPass(readings, range, "reading", seedOf(number))!,
    );
    const all = each.reduce((sum, { chance }) => sum + chance, 0) / each.length;
    for (const { chance, draws } of each) {
      used.add(draws);
      // Four standard deviations of 0.01, or of 0.022 where 500 were too few.
      expect(Math.abs(chance - all), `noise ${noise}, ${draws} draws`).toBeLessThan(draws < 500 ? 0.04 : 0.09);
    }
  }
  expect(used.size).toBeGreaterThan(2);
});
