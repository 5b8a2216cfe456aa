import { dateOf, dayNumber } from "../analysis/years/day-number.ts";
import { digestOf, toHex } from "../record/file-digest.ts";
import type { DueList } from "./due-list.ts";
import type { DueRow } from "./make-dues.ts";

const longestLine = 75;
/** A calendar reminds so many days before: own choice. */
const alarmDays = 7;

/**
 * What is due as an iCalendar file: one event of a whole day for each loop and each standard. An event keeps its name
 * as long as the date stays, so that a calendar that reads the file again has each once.
 *
 * @param made date and time with offset at which the file is made
 * Source: RFC 5545, 3.1 (folding), 3.3.11 (text), 3.6.1 (events), 3.6.2 (to-dos), 3.6.6 (alarms); RFC 7986, 5.1 for the calendar's name.
 */
export function dueCalendar({ open, loops, standards }: DueList, made: string): string {
  const stamp = `${new Date(made).toISOString().replace(/[-:]/gu, "").slice(0, 15)}Z`;
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//spanwright//due//EN",
    "NAME:Calibrations due",
    ...open.flatMap((row) => toDo(stamp, row)),
    ...loops.flatMap((loop) => event(stamp, `loop ${loop.tag}`, loop.due.on, `Calibrate ${loop.tag}`, loopWords(loop))),
    ...standards.flatMap(({ standard, certificate, dueOn }) =>
      event(stamp, `standard ${standard}`, dueOn, `Standard ${standard} due`, `Certificate ${certificate}`),
    ),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

/** What is open has no day: a calendar keeps it as something to do. */
function toDo(stamp: string, row: DueRow): readonly string[] {
  const { tag, due } = row;
  return [
    "BEGIN:VTODO",
    `UID:${uidOf(`open ${tag} ${row.calibration} ${row.revision}`)}`,
    `DTSTAMP:${stamp}`,
    `SUMMARY:${escaped(`${tag}: ${due.state}`)}`,
    `DESCRIPTION:${escaped(`${due.why}; ${loopWords(row)}`)}`,
    "STATUS:NEEDS-ACTION",
    "END:VTODO",
  ];
}

function uidOf(subject: string): string {
  return `${toHex(digestOf(new TextEncoder().encode(subject))).slice(0, 32)}@spanwright`;
}

function loopWords({ description, location, calibration, revision }: DueRow): string {
  const last = `last record ${calibration}, revision ${revision}`;
  return [description, location, last].filter((part) => part !== null).join("; ");
}

function event(stamp: string, subject: string, day: string, summary: string, description: string): readonly string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${uidOf(`${subject} ${day}`)}`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${compact(day)}`,
    `DTEND;VALUE=DATE:${compact(dateOf(dayNumber(day) + 1))}`,
    `SUMMARY:${escaped(summary)}`,
    `DESCRIPTION:${escaped(description)}`,
    "TRANSP:TRANSPARENT",
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `DESCRIPTION:${escaped(summary)}`,
    `TRIGGER:-P${alarmDays}D`,
    "END:VALARM",
    "END:VEVENT",
  ];
}

function compact(day: string): string {
  return day.replaceAll("-", "");
}

/** Text of a calendar; signs that do not show would end a line or hide in it. */
function escaped(text: string): string {
  return text
    .replace(/[\\;,]/gu, (sign) => `\\${sign}`)
    .replace(/\r\n|\r|\n/gu, "\\n")
    .replace(/\p{Cc}/gu, " ");
}

/** Lines of at most 75 bytes, cut between characters; what goes on begins with a space. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = "";
  let bytes = 0;
  for (const character of line) {
    const width = Buffer.byteLength(character);
    if (bytes + width > longestLine) {
      parts.push(part);
      part = "";
      bytes = 1;
    }
    part += character;
    bytes += width;
  }
  return [...parts, part].join("\r\n ");
}
