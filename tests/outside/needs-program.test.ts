import { describe, expect, it } from "vitest";
import { isRequired, programPath } from "./needs-program.ts";

describe("programPath", () => {
  it("finds a program that is on the path", () => {
    expect(programPath("sh", "/nowhere:/bin")).toBe("/bin/sh");
  });

  it("finds nothing where no folder has it", () => {
    expect(programPath("no-such-program", "/bin:/usr/bin")).toBeUndefined();
    expect(programPath("sh", "")).toBeUndefined();
  });
});

describe("isRequired", () => {
  it.each(["1", "true", "yes"])("asks for every program where CI is %s", (ci) => {
    expect(isRequired(ci)).toBe(true);
  });

  it.each([undefined, "", "0", "false"])("lets tests be skipped where CI is %s", (ci) => {
    expect(isRequired(ci)).toBe(false);
  });
});
