import { expect, test } from "vitest";
import { Ledger } from "../../src/filing/ledger.ts";
import { ledgerText, lineHash, noLine } from "../../src/filing/ledger-line.ts";
import { sampleLines, textOfLines } from "./sample-lines.ts";

const bytes = (text: string) => new TextEncoder().encode(text);

test("an empty ledger has no line and the head that the first line names", () => {
  const ledger = new Ledger();
  expect(ledger.readOn(bytes(""))).toEqual({ torn: 0 });
  expect([ledger.lines, ledger.head, ledger.length]).toEqual([[], noLine, 0]);
});

test("lines are read in one go or one by one, with the same end", () => {
  const lines = sampleLines(3);
  const whole = new Ledger();
  whole.readOn(bytes(textOfLines(lines)));
  const parts = new Ledger();
  for (const line of lines) expect(parts.readOn(bytes(`${ledgerText(line)}\n`))).toEqual({ torn: 0 });
  expect(parts.lines).toEqual(lines);
  expect([parts.head, parts.length]).toEqual([whole.head, whole.length]);
  expect(whole.head).toBe(lineHash(ledgerText(lines[2] as (typeof lines)[number])));
  expect(whole.length).toBe(bytes(textOfLines(lines)).length);
});

test("a filed revision is found by tag, calibration and revision together", () => {
  const ledger = new Ledger();
  ledger.readOn(bytes(textOfLines(sampleLines(3))));
  expect(ledger.filed({ tag: "LT-1", calibration: "C-2", revision: 1 })?.number).toBe(2);
  expect(ledger.filed({ tag: "LT-1", calibration: "C-2", revision: 2 })).toBeUndefined();
  expect(ledger.filed({ tag: "LT-2", calibration: "C-2", revision: 1 })).toBeUndefined();
});

test.each([1, 10, 200])("a last line without its newline is no line yet: %i bytes of it", (length) => {
  const lines = sampleLines(2);
  const torn = ledgerText(lines[1] as (typeof lines)[number]).slice(0, length);
  const ledger = new Ledger();
  expect(ledger.readOn(bytes(textOfLines(lines.slice(0, 1)) + torn))).toEqual({ torn: length });
  expect(ledger.lines).toHaveLength(1);
});

test("the first line that does not follow is told, and nothing from there on is taken in", () => {
  const lines = sampleLines(4);
  const without = new Ledger();
  expect(without.readOn(bytes(textOfLines(lines.filter(({ number }) => number !== 2))))).toEqual({
    wrong: "line 2 has the number 3",
  });
  expect(without.lines).toHaveLength(1);

  const altered = lines.map((line) => (line.number === 2 ? { ...line, tag: "LT-9" } : line));
  expect(new Ledger().readOn(bytes(textOfLines(altered)))).toEqual({
    wrong: "line 3 does not hold the hash of the line before it",
  });
  expect(new Ledger().readOn(bytes("nonsense\n"))).toEqual({ wrong: "line 1 is no line of a ledger" });
});
