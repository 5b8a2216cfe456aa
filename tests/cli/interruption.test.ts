import { EventEmitter } from "node:events";
import { expect, test } from "vitest";
import { interruptionOf } from "../../src/cli/interruption.ts";

test("Ctrl-C is noted once, and the next one is the process's own again", () => {
  const process = new EventEmitter() as unknown as NodeJS.Process;
  const { isAsked, end } = interruptionOf(process);
  expect(isAsked()).toBe(false);
  expect(process.listenerCount("SIGINT")).toBe(1);
  process.emit("SIGINT", "SIGINT");
  expect(isAsked()).toBe(true);
  expect(process.listenerCount("SIGINT")).toBe(0);
  end();
});

test("afterwards nothing listens any more", () => {
  const process = new EventEmitter() as unknown as NodeJS.Process;
  interruptionOf(process).end();
  expect(process.listenerCount("SIGINT")).toBe(0);
});
