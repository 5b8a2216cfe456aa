import { expect, test } from "vitest";
import { reportThreads } from "../../src/cli/report-threads.ts";
import { onThreads, type Thread } from "../../src/cli/threads.ts";
import { threadsAsked, threadsFor } from "../../src/cli/threads-for.ts";
import { verifyThreads } from "../../src/cli/verify-threads.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";

async function* tasks(count: number, onBegun: (place: number) => void = () => undefined) {
  for (let place = 0; place < count; place += 1) {
    onBegun(place);
    yield place;
  }
}

/** Threads that answer after as many turns as they are told, the later the sooner, and count how they were ended. */
function slowThreads() {
  const counts = { made: 0, ended: 0 };
  const newThread = (): Thread<number, string> => {
    counts.made += 1;
    return {
      do: async (task) => {
        for (let turn = task; turn < 40; turn += 1) await Promise.resolve();
        return String(task);
      },
      end: async () => {
        counts.ended += 1;
      },
    };
  };
  return { counts, newThread };
}

test("results come in the order of the tasks, with few begun before their turn, and the threads are ended", async () => {
  const { counts, newThread } = slowThreads();
  const got: string[] = [];
  let farthestAhead = 0;
  const begun = (place: number) => {
    farthestAhead = Math.max(farthestAhead, place - got.length);
  };
  for await (const result of onThreads(newThread, 3, tasks(40, begun))) got.push(result);
  expect(got).toEqual(Array.from({ length: 40 }, (_, place) => String(place)));
  expect(farthestAhead).toBeLessThanOrEqual(9);
  expect(counts).toEqual({ made: 3, ended: 3 });
});

test("a fault of a thread is told when its turn comes, and ends the others", async () => {
  const { counts, newThread } = slowThreads();
  const failing = (): Thread<number, string> => ({
    ...newThread(),
    do: async (task) => {
      if (task === 5) throw new Error("a bug");
      return String(task);
    },
  });
  let got = 0;
  const run = async () => {
    for await (const _ of onThreads(failing, 2, tasks(20))) got += 1;
  };
  await expect(run()).rejects.toThrow("a bug");
  expect(got).toBe(5);
  expect(counts.ended).toBe(2);
});

test("a handful of records is made and verified one by one", async () => {
  for (const threadsOf of [reportThreads, verifyThreads]) {
    expect(await threadsOf(49, undefined)).toBeUndefined();
    expect(await threadsOf(2000, 1)).toBeUndefined();
  }
  expect([threadsFor(49, undefined), threadsFor(3, 8), threadsFor(2000, 5)]).toEqual([1, 3, 5]);
});

test("--workers takes a count", () => {
  const problems = new ProblemList();
  expect(threadsAsked("4", problems)).toBe(4);
  expect(threadsAsked(undefined, problems)).toBeUndefined();
  expect(problems.all).toEqual([]);
  for (const read of ["0", "2.5", "many", "", "65"]) expect(threadsAsked(read, problems)).toBeUndefined();
  expect(problems.all.map(({ code }) => code)).toEqual(Array(5).fill("options/not-understood"));
});
