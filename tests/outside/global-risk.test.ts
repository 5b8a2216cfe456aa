import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { chancesOutside } from "../../src/numeric/chance-outside.ts";
import { globalFalseAccept, reach, spreadOf, tabulated } from "../../src/verdict/decision/global-false-accept.ts";
import { describeWithProgram } from "./needs-program.ts";

/** What R's integration and spline are good to, parts of 1. */
const tolerance = 3e-7;
const script = fileURLToPath(new URL("./global-risk.R", import.meta.url));

type Result = { acceptance: number; common: number; group: number; own: number; count: number };
type Case = { results: readonly Result[]; groups: number; rate: number };

const result = (acceptance: number, common: number, own: number, count: number, group = 0): Result => ({
  ...{ acceptance, common, own, count, group },
});
const cases: Readonly<Record<string, Case>> = {
  "one result": { results: [result(1, 0, 0.125, 1)], groups: 1, rate: 0.95 },
  "every reading of eleven points, six each": { results: [result(1, 0.1, 0.08, 66)], groups: 1, rate: 0.9 },
  "tolerance and scatter from point to point": {
    results: [result(1, 0.2, 0.05, 2), result(0.9, 0.1, 0.12, 4), result(1, 0.05, 0.2, 3)],
    ...{ groups: 1, rate: 0.8 },
  },
  "a guard band, means of two directions": { results: [result(0.7, 0.12, 0.06, 22)], groups: 1, rate: 0.7 },
  "cycles that differ": {
    results: [result(1, 0.1, 0.08, 2, 0.1), result(1, 0.12, 0.1, 2, 0.1)],
    ...{ groups: 3, rate: 0.85 },
  },
  "cycles that differ, readings that hardly scatter": {
    results: [result(1, 0.1, 0.02, 2, 0.12), result(0.95, 0.12, 0.03, 3, 0.12)],
    ...{ groups: 3, rate: 0.85 },
  },
  "nothing shared": { results: [result(1, 0, 0.15, 30)], groups: 1, rate: 0.6 },
  "measuring alone explains the rate": { results: [result(1, 0.3, 0.4, 40)], groups: 1, rate: 0.5 },
};

describeWithProgram(
  "Rscript",
  "base R's adaptive integration finds the same spread and risks over all loops",
  (rscript) => {
    it.each(Object.entries(fromR(rscript, cases)))("%s", (name, [spread, falseAccept, falseReject]) => {
      const { results, groups, rate } = cases[name] as Case;
      const noises = results.map(({ common, group, own }) => Math.hypot(common, group, own));
      const loops = tabulated({
        acceptance: Math.min(...results.map(({ acceptance }) => acceptance)),
        noise: { least: Math.min(...noises), greatest: Math.max(...noises) },
        rejectedAt: chancesOutside(
          results.map((one) => ({ ...one, low: -one.acceptance, high: one.acceptance })),
          { groups, sure: reach },
        ),
      });
      const found = spreadOf(loops, rate);
      const risks = globalFalseAccept(loops, found);
      expect(Math.abs(found - spread)).toBeLessThan(tolerance);
      expect(Math.abs(risks.falseAccept - falseAccept)).toBeLessThan(tolerance);
      expect(Math.abs(risks.falseReject - falseReject)).toBeLessThan(tolerance);
    });
  },
);

function fromR(rscript: string, all: typeof cases): Record<string, [number, number, number]> {
  const folder = mkdtempSync(join(tmpdir(), "global-risk-"));
  const file = join(folder, "cases.csv");
  const rows = Object.entries(all).flatMap(([name, { results, groups, rate }]) =>
    results.map(({ acceptance, common, group, own, count }) =>
      [`"${name}"`, acceptance, common, group, own, count, groups, rate].join(","),
    ),
  );
  writeFileSync(file, `case,acceptance,common,group,own,count,groups,rate\n${rows.join("\n")}\n`);
  try {
    const said = execFileSync(rscript, [script, file], { encoding: "utf8" }).trim().split("\n");
    return Object.fromEntries(
      said.map((line) => {
        const cells = line.split(",");
        const [spread, accept, reject] = cells.slice(-3).map(Number) as [number, number, number];
        return [cells.slice(0, -3).join(","), [spread, accept, reject]];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}
