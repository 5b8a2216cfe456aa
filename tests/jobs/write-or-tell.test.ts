import { expect, test } from "vitest";
import { CannotWrite } from "../../src/jobs/disk.ts";
import { writeOrTell } from "../../src/jobs/write-or-tell.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";

async function tried(write: () => Promise<void>) {
  const problems = new ProblemList();
  return { isWritten: await writeOrTell(write, "out.html", problems), told: problems.all.map(sentence) };
}

test("what was written is done, and nothing is told", async () => {
  expect(await tried(async () => undefined)).toEqual({ isWritten: true, told: [] });
});

test("a disk that refuses is told with its reason, at the file", async () => {
  const { isWritten, told } = await tried(() => Promise.reject(new CannotWrite("no room")));
  expect(isWritten).toBe(false);
  expect(told[0]).toMatch(/^out\.html: nothing could be written there: no room;/u);
});

test("any other fault goes on", async () => {
  await expect(tried(() => Promise.reject(new TypeError("a bug")))).rejects.toThrow("a bug");
});
