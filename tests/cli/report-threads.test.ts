import { expect, test } from "vitest";
import { onThreads, reportThreads, type Thread, threadsAsked } from "../../src/cli/report-threads.ts";
import type { CaseToReport, ReportedCase } from "../../src/jobs/records/report-case.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";

const caseOf = (place: number) => ({ out: String(place) }) as CaseToReport;

async function* cases(count: number, onBegun: (place: number) => void = () => undefined) {
  for (let place = 0; place < count; place += 1) {
    onBegun(place);
    yield caseOf(place);
  }
}

/** Threads that answer after as many turns as they are told, the later the sooner, and count how they were ended. */
function slowThreads() {
  const counts = { made: 0, ended: 0 };
  const newThread = (): Thread => {
    counts.made += 1;
    return {
      report: async ({ out }) => {
        for (let turn = Number(out); turn < 40; turn += 1) await Promise.resolve();
        return { written: undefined, problems: [], out } as ReportedCase;
      },
      end: async () => {
        counts.ended += 1;
      },
    };
  };
  return { counts, newThread };
}

test("results come in the order of the cases, with few begun before their turn, and the threads are ended", async () => {
  const { counts, newThread } = slowThreads();
  const got: string[] = [];
  let farthestAhead = 0;
  const begun = (place: number) => {
    farthestAhead = Math.max(farthestAhead, place - got.length);
  };
  for await (const reported of onThreads(newThread, 3)(cases(40, begun))) {
    got.push((reported as ReportedCase & { out: string }).out);
  }
  expect(got).toEqual(Array.from({ length: 40 }, (_, place) => String(place)));
  expect(farthestAhead).toBeLessThanOrEqual(9);
  expect(counts).toEqual({ made: 3, ended: 3 });
});

test("a fault of a thread is told when its turn comes, and ends the others", async () => {
  const { counts, newThread } = slowThreads();
  const failing = (): Thread => ({
    ...newThread(),
    report: async ({ out }) => {
      if (out === "5") throw new Error("a bug");
      return { written: undefined, problems: [] };
    },
  });
  let got = 0;
  const run = async () => {
    for await (const _ of onThreads(failing, 2)(cases(20))) got += 1;
  };
  await expect(run()).rejects.toThrow("a bug");
  expect(got).toBe(5);
  expect(counts.ended).toBe(2);
});

test("a handful of records is made one by one", () => {
  expect(reportThreads(49, undefined)).toBeUndefined();
  expect(reportThreads(2000, 1)).toBeUndefined();
});

test("--workers takes a count", () => {
  const problems = new ProblemList();
  expect(threadsAsked("4", problems)).toBe(4);
  expect(threadsAsked(undefined, problems)).toBeUndefined();
  expect(problems.all).toEqual([]);
  for (const read of ["0", "2.5", "many", "", "65"]) expect(threadsAsked(read, problems)).toBeUndefined();
  expect(problems.all.map(({ code }) => code)).toEqual(Array(5).fill("options/not-understood"));
});
