import { expect, vi } from "vitest";
import { slowTests } from "./slow-tests.ts";

/** Each test of a slow file may take as long as the list says, and each hook, which may start a browser. */
const { testPath = "" } = expect.getState();
const name = Object.keys(slowTests).find((path) => testPath.endsWith(`/tests/${path}`));
if (name === undefined) throw new RangeError(`slow-limit: ${testPath} is not in the list`);
const limit = 1000 * (slowTests[name] ?? 0);
vi.setConfig({ testTimeout: limit, hookTimeout: limit });
