import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { dueCalendar } from "../../src/filing/due-calendar.ts";
import { dueList } from "../../src/filing/due-list.ts";
import { makeRegister } from "../../src/filing/make-register.ts";
import { entry } from "./sample-entries.ts";

const made = "2026-11-25T14:30:15.250+01:00";
const hostile = 'Tank 3; north, \\ "lid"\nBEGIN:VALARM\u0007 — Füllstand 😀 '.repeat(4);
const list = dueList(
  makeRegister(
    {
      entries: [
        entry({ tag: "LT-1", nextDue: "2026-12-01" }, { description: hostile, location: "hall" }),
        entry(
          { tag: "LT-2", nextDue: "2026-12-31" },
          { standards: [{ standard: "BAR-1", certificate: "B, 7", dueOn: "2026-12-02" }] },
        ),
      ],
      decisions: [],
    },
    "2026-11-25",
    60,
  ),
  60,
);
const text = dueCalendar(list, made);

// ical.js reads iCalendar independently of this program (RFC 5545).
describe("another program reads the calendar", () => {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  const events = calendar.getAllSubcomponents("vevent").map((component) => new ICAL.Event(component));

  test("one event for each loop and each standard, and nothing that a text smuggled in", () => {
    expect(events.map(({ summary }) => summary)).toEqual(["Calibrate LT-1", "Calibrate LT-2", "Standard BAR-1 due"]);
    expect(calendar.getAllSubcomponents("valarm")).toEqual([]);
  });

  test("an event lasts the whole day on which it is due", () => {
    const [, last] = events;
    expect([last!.startDate.isDate, last!.startDate.toString(), last!.endDate.toString()]).toEqual([
      true,
      "2026-12-31",
      "2027-01-01",
    ]);
  });

  test("text comes back as it was, signs that do not show as spaces", () => {
    expect(events[0]!.description.startsWith(hostile.replaceAll("\u0007", " ").trimEnd())).toBe(true);
    expect(events[2]!.description).toBe("Certificate B, 7");
  });

  test("it was made at that moment, in universal time", () => {
    expect(events[0]!.component.getFirstPropertyValue("dtstamp")?.toString()).toBe("2026-11-25T13:30:15Z");
  });
});

test("no line is longer than 75 bytes, every line ends in CR LF, and none is cut within a character", () => {
  const lines = text.split("\r\n");
  expect(lines.at(-1)).toBe("");
  for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/u);
  expect(text).not.toContain("\uFFFD");
});

test("an event keeps its name while its day stays, and has another for another day", () => {
  const uids = (one: string) => [...one.replaceAll("\r\n ", "").matchAll(/UID:(.+)/gu)].map(([, uid]) => uid);
  expect(uids(dueCalendar(list, "2027-01-01T00:00:00Z"))).toEqual(uids(text));
  expect(new Set(uids(text)).size).toBe(3);
});
