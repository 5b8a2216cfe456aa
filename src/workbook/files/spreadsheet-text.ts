const millisecondsPerSecond = 1000;
const secondsPerDay = 86_400;

/** A spreadsheet keeps 15 significant digits; what a double holds beyond them is noise. */
const significantDigits = 15;

/** The digits behind the point that a number format shows. */
const shownDecimals = /[0#?]\.(0+)/u;
const leadingZeros = /^0{2,}$/u;

/** A comma behind the last digit shows thousandths of the number, two of them millionths. */
const scalingComma = /[0#?.],+(?![0#?,])/u;

/** Colours, languages and conditions; the width of a sign, or a sign that fills the cell: nothing of them is shown as text. */
const notShown = /\[[^\]]*\]|_.|\*./gu;

/** The first and the last place of a digit in a format whose texts are gone. */
const digitPlaces = /^([\s\S]*?)([0#?][\s\S]*[0#?]|[0#?])([\s\S]*)$/u;

/** The text of a number as its cell shows it, without rounding: a format may add zeros, per cent or a unit. */
export function numberText(value: number, format = "General"): string {
  const shown = sectionFor(value, format);
  const bare = shown.replace(texts, "");
  const percent = bare.includes("%");
  const scaled = Number((percent ? value * 100 : value).toPrecision(significantDigits));
  const unit = percent ? "%" : unitOfFormat(shown);
  const digits = leadingZeros.test(bare)
    ? plainDigits(scaled).padStart(bare.length, "0")
    : padded(plainDigits(scaled), shownDecimals.exec(bare)?.[1]?.length ?? 0);
  return unit === "" ? digits : `${digits} ${unit}`;
}

/** Whether a format shows thousandths or millionths of the number in the cell. */
export function isScaledFormat(format: string): boolean {
  return scalingComma.test((format.split(";")[0] ?? "").replace(notShown, "").replace(texts, ""));
}

/** Texts in quotation marks, and single characters behind a backslash. */
const texts = /"[^"]*"|\\./gu;

/** A number below zero may have a format of its own, which is the second. */
function sectionFor(value: number, format: string): string {
  const sections = format.split(/;(?=(?:[^"]*"[^"]*")*[^"]*$)/u);
  const section = value < 0 && sections.length > 1 ? sections[1] : sections[0];
  return (section ?? "").replace(notShown, "");
}

/** The text before and behind the digits of a format, such as "mA", without brackets and signs. */
function unitOfFormat(section: string): string {
  if (/^\s*(?:General|@)\s*$/iu.test(section)) return "";
  // Digits inside texts are no places of digits.
  const hidden = section.replace(texts, (text) => text.replace(/[0#?]/gu, ""));
  const [, before = "", , behind = ""] = digitPlaces.exec(hidden) ?? [];
  return `${plainText(before)}${plainText(behind)}`;
}

function plainText(part: string): string {
  return part
    .replace(/\\(.)/gu, "$1")
    .replace(/["()+-]/gu, "")
    .trim();
}

/**
 * The text of a date cell: ISO 8601, as a date, a date with a time, or a time of day. Serial day 0 and what is below it are
 * times; a duration of more than a day is its hours, which are no time of day.
 */
export function dateText(date: Date, firstYear: 1900 | 1904 = 1900): string {
  const dayZero = firstYear === 1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 31);
  const seconds = Math.round((date.getTime() - dayZero) / millisecondsPerSecond);
  if (date.getTime() < Date.UTC(1905, 0, 1)) return elapsedText(seconds < 0 ? seconds + secondsPerDay : seconds);
  const iso = new Date(dayZero + seconds * millisecondsPerSecond).toISOString();
  return momentText(iso.slice(0, 19));
}

/** A moment of ISO 8601, to the second, without the time where that is midnight; before 1905 there is only the time. */
export function momentText(iso: string): string {
  const [day = "", time = ""] = iso.split("T");
  if (time === "") return day;
  const moment = new Date(`${day}T${time.replace(/Z$/u, "")}Z`);
  if (Number.isNaN(moment.getTime())) return iso;
  const whole = new Date(Math.round(moment.getTime() / millisecondsPerSecond) * millisecondsPerSecond).toISOString();
  if (whole.slice(0, 4) < "1905") return whole.slice(11, 19);
  return whole.slice(11, 19) === "00:00:00" ? whole.slice(0, 10) : whole.slice(0, 19);
}

/** Seconds since midnight as 14:05:00; a day and more as hours, minutes and seconds. */
export function elapsedText(seconds: number): string {
  const whole = Math.round(seconds);
  const parts = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return parts.map((part) => String(part).padStart(2, "0")).join(":");
}

function plainDigits(value: number): string {
  const text = String(value);
  return text.includes("e-") ? value.toFixed(20).replace(/0+$/u, "") : text;
}

function padded(digits: string, decimals: number): string {
  if (digits.includes("e")) return digits;
  const [whole = "", fraction = ""] = digits.split(".");
  return decimals === 0 && fraction === "" ? whole : `${whole}.${fraction.padEnd(decimals, "0")}`;
}
