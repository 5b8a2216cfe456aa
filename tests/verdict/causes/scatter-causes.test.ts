import { expect, test } from "vitest";
import { mainsHum, scatterEverywhere } from "../../../src/verdict/causes/scatter-causes.ts";
import { remedyOf } from "../../../src/verdict/recommendation/cause-remedy.ts";
import { findingsOf, nothingWrong, planted } from "./planted.ts";

// The tolerance of the planted loop is ±0.5 % of span.

test("readings that scatter by the whole tolerance send to target and supply first", () => {
  const [found] = findingsOf([scatterEverywhere], planted(nothingWrong, { noise: 0.4, cycles: 4 }));
  expect(found?.id).toBe("scatter-everywhere");
  // Planted 0.4 % of span; 66 degrees of freedom know it within 30 %.
  expect(Math.abs(found!.evidence[0]!.value / 0.4 - 1)).toBeLessThan(0.3);
  expect(scatterEverywhere.remedy.cures).toBe("set-up");
});

test("a quarter of the tolerance is no finding, whatever the number of cycles", () => {
  for (const cycles of [2, 3, 10]) {
    expect(findingsOf([scatterEverywhere], planted(nothingWrong, { noise: 0.1, cycles }))).toEqual([]);
  }
});

test("a scatter beside drives that move the signal is called hum, and noise alone is not", () => {
  const noisy = { noise: 0.4, cycles: 4 };
  const row = { calibration: "C-1", item: "drives running", result: "fail", measured: 0.2, unit: "mA" } as const;
  const [found] = findingsOf([scatterEverywhere, mainsHum], planted(nothingWrong, { ...noisy, loopChecks: [row] }));
  expect(found?.id).toBe("mains-hum");
  expect(found?.evidence.at(-1)).toMatchObject({ name: "change with drives running", value: 0.2 });
  expect(findingsOf([mainsHum], planted(nothingWrong, noisy))).toEqual([]);
});

test("readings that swing as a sine does are told from noise by their kurtosis, where there are enough of them", () => {
  // A sine read at moments that know nothing of it: the golden angle spreads them evenly over its phase.
  let place = 0;
  const swinging = { seen: (part: number) => part + 0.008 * Math.sin(2.399963 * place++) };
  const [found] = findingsOf([scatterEverywhere, mainsHum], planted(swinging, { cycles: 12 }));
  expect(found?.id).toBe("mains-hum");
  expect(found?.evidence.at(-1)?.value).toBeLessThan(1.8);
  expect(findingsOf([mainsHum], planted(nothingWrong, { noise: 0.5, cycles: 12 }))).toEqual([]);
});

test("what scatters between signal and counts is looked for at the card, and not at the target", () => {
  const jitter = (part: number, { place, cycle }: { place: number; cycle: number }) =>
    part + 0.006 * Math.sin(12.9 * place + 78.2 * cycle);
  const noisy = planted({ counts: jitter }, { hasCounts: true, cycles: 4 });
  const [found, ...others] = findingsOf([scatterEverywhere], noisy);
  expect(others).toEqual([]);
  expect(found).toMatchObject({ stage: "input card" });
  expect(remedyOf(found!).cures).toBe("wiring");
  expect(
    findingsOf([scatterEverywhere], planted(nothingWrong, { hasCounts: true, noise: 0.4, cycles: 4 })),
  ).toMatchObject([{ stage: "sensor" }]);
});

test("a wrong gain that widens the noise in front of it, and a value that is cut to coarse steps, do not scatter by themselves", () => {
  const behind = (fault: Parameters<typeof planted>[0], changes: Parameters<typeof planted>[1] = {}) =>
    findingsOf([scatterEverywhere], planted(fault, { cycles: 4, ...changes })).filter(
      ({ stage }) => stage === "input card",
    );
  expect(behind({ value: (part) => 25.4 * part }, { noise: 0.1 })).toEqual([]);
  expect(behind({ shown: Math.trunc }, { valueEnds: [0, 40], noise: 0.1 })).toEqual([]);
});

test("one point that does not repeat is no scatter near and far", () => {
  const moved = planted({
    seen: (part, { part: place, cycle }) => (Math.round(10 * place) === 6 && cycle === 1 ? part + 0.03 : part),
  });
  expect(findingsOf([scatterEverywhere], moved)).toEqual([]);
});

test("a value that scatters while its counts stand still is looked for in the controller", () => {
  const jitter = (part: number, { place, cycle }: { place: number; cycle: number }) =>
    part + 0.006 * Math.sin(12.9 * place + 78.2 * cycle);
  const [found] = findingsOf([scatterEverywhere], planted({ value: jitter }, { hasCounts: true, cycles: 4 }));
  expect(found).toMatchObject({ stage: "scaling" });
  expect(remedyOf(found!)).toMatchObject({ cures: "scaling", isOfConstants: false });
});
