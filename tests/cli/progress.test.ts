import { expect, test } from "vitest";
import { progressOn } from "../../src/cli/progress.ts";

function lineAt() {
  const clock = { milliseconds: 0 };
  const written: string[] = [];
  return { clock, written, line: { write: (text: string) => written.push(text), now: () => clock.milliseconds } };
}

const terminal = { isTerminal: true };

test("rate and time left are those of the last seconds, not of the whole run", () => {
  const { clock, written, line } = lineAt();
  const tell = progressOn(terminal, false, line);
  for (let done = 1; done <= 300; done += 1) {
    // Ten a second for 20 s, then two a second.
    clock.milliseconds += done <= 200 ? 100 : 500;
    tell(done, 1000);
  }
  expect(written.at(-1)).toContain("300 of 1000, 2.0 a second, 350 s left");
});

test("it is written a few times a second, and gone when all is done", () => {
  const { clock, written, line } = lineAt();
  const tell = progressOn(terminal, false, line);
  for (let done = 1; done <= 1000; done += 1) {
    clock.milliseconds += 1;
    tell(done, 1000);
  }
  expect(written.length).toBeLessThanOrEqual(6);
  expect(written.at(-1)).toBe("\r\u001b[K");
});

test("nothing where nobody watches, where it was not wanted, and for a handful", () => {
  const { written, line } = lineAt();
  progressOn({ isTerminal: false }, false, line)(5, 100);
  progressOn(terminal, true, line)(5, 100);
  progressOn(terminal, false, line)(5, 9);
  expect(written).toEqual([]);
});
