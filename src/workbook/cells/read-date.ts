import type { CellResult } from "./cell-result.ts";

const datePattern = /^(\d{4})-(\d{2})-(\d{2})$/u;
const clockPattern = /^([01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:[.,]\d+)?)?(?:Z|[+-](?:[01]\d|2[0-3]):?[0-5]\d)?$/u;

const months = [
  ...["January", "February", "March", "April", "May", "June"],
  ...["July", "August", "September", "October", "November", "December"],
] as const;

type Day = { year: number | undefined; month: number; day: number };

/** Whether a text is a day of the calendar as ISO 8601 writes it; 2026-02-30 is none. */
export function isDate(text: string): boolean {
  const match = datePattern.exec(text);
  if (match === null) return false;
  const [year = 0, month = 0, day = 0] = match.slice(1).map(Number);
  return year >= 100 && isDay({ year, month, day });
}

/** Whether a text is a time of day as ISO 8601 writes it, with or without the date before it. */
export function isTime(text: string): boolean {
  const [date = "", clock] = text.split(/[T ]/u, 2);
  return clock === undefined ? clockPattern.test(date) : isDate(date) && clockPattern.test(clock);
}

/** The day of a cell; what is no day of the calendar, or one written in another way, is told as that. */
export function readDate(text: string): CellResult<string> {
  if (isDate(text)) return { value: text };
  const meant = daysMeant(text);
  const real = meant.filter(isDay);
  const [only] = real;
  if (meant.length > 0 && only === undefined) {
    return { code: "tables/cell-no-day", values: { why: whyNoDay(meant.at(-1) as Day) } };
  }
  const isOne = new Set(real.map(isoText)).size === 1;
  if (only?.year === undefined || !isOne) return { code: "tables/cell-not-date", values: {} };
  return { code: "tables/cell-date-form", values: { day: isoText(only) } };
}

const yearFirst = /^(\d{4})\s*[-/.\s]\s*(\d{1,2})\s*[-/.\s]\s*(\d{1,2})\.?$/u;
const yearFirstTogether = /^((?:19|20)\d{2})(\d{2})(\d{2})$/u;
const yearLast = /^(\d{1,2})\s*[-/.\s]\s*(\d{1,2})\s*[-/.\s]\s*(\d{4})$/u;
const dayThenMonth = /^(\d{1,2})(?:st|nd|rd|th)?\.?[-\s]*([A-Za-z]{3,9})\.?,?[-\s]*(\d{4})?$/u;
const monthThenDay = /^([A-Za-z]{3,9})\.?[-\s]*(\d{1,2})(?:st|nd|rd|th)?,?(?:[-\s]+(\d{4}))?$/u;

/** The days that a text can mean: two where nobody can tell the day from the month. */
function daysMeant(text: string): readonly Day[] {
  const first = yearFirst.exec(text) ?? yearFirstTogether.exec(text);
  if (first !== null) return [dayOf(first[1], Number(first[2]), first[3])];
  const last = yearLast.exec(text);
  if (last !== null) {
    return [dayOf(last[3], Number(last[1]), last[2]), dayOf(last[3], Number(last[2]), last[1])];
  }
  const [, day, word = "", year] = dayThenMonth.exec(text) ?? [];
  const [, otherWord = "", otherDay, otherYear] = monthThenDay.exec(text) ?? [];
  const month = monthNamed(word) || monthNamed(otherWord);
  return month === 0 ? [] : [dayOf(year ?? otherYear, month, day ?? otherDay)];
}

function dayOf(year: string | undefined, month: number, day: string | undefined): Day {
  return { year: year === undefined ? undefined : Number(year), month, day: Number(day) };
}

/** "Feb", "Sept" and "march" are months; 0 where a word is none. */
function monthNamed(word: string): number {
  const written = word.toLowerCase();
  if (written.length < 3) return 0;
  return 1 + months.findIndex((month) => month.toLowerCase().startsWith(written));
}

function isDay({ year, month, day }: Day): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(month, year);
}

/** Without a year, February may have 29 days. */
function daysIn(month: number, year = 2000): number {
  return new Date(Date.UTC(year, month, 0)).getUTCDate();
}

function whyNoDay({ year, month, day }: Day): string {
  if (month < 1 || month > 12) return `there is no month ${month}`;
  const name = `${months[month - 1]}${year === undefined ? "" : ` ${year}`}`;
  return day < 1 ? `${name} has no day ${day}` : `${name} has ${daysIn(month, year)} days`;
}

function isoText({ year = 0, month, day }: Day): string {
  const digits = (value: number, count: number) => String(value).padStart(count, "0");
  return `${digits(year, 4)}-${digits(month, 2)}-${digits(day, 2)}`;
}
