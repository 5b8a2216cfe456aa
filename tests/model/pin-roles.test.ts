import { expect, test } from "vitest";
import { foldedRole, pinRoles } from "../../src/model/pin-roles.ts";

test("the fourth of “1 L+; 4 Q1” carries Q1", () => {
  expect(pinRoles("1 L+; 4 Q1")?.get("4")).toBe("q1");
});

test("semicolons or commas, colons or equals signs, spaces and capitals do not matter", () => {
  const expected = new Map([
    ["1", "l+"],
    ["2", "signal"],
    ["3", "0v"],
  ]);
  for (const text of ["1 L+; 2 signal; 3 0 V", "1: l+, 2: Signal, 3: 0V;", "pin 1 = L+;2=SIGNAL;Pin 3 0 v"]) {
    expect(pinRoles(text)).toEqual(expected);
  }
});

test("what does not read so, or names a pin twice, is no list of pins", () => {
  for (const text of ["", " ; ", "as the old one", "1 L+; signal", "1 L+; 1 0 V", "1"]) {
    expect(pinRoles(text), text).toBeUndefined();
  }
});

test("spaces and capitals of a role do not count", () => {
  expect(foldedRole("0 V")).toBe("0v");
});
