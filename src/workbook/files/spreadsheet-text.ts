const millisecondsPerDay = 86_400_000;

/** Serial day 0 of a spreadsheet: a time of day without a date falls on it or on the day after. */
const lastDayOfNoDate = Date.UTC(1900, 0, 1);

/** A spreadsheet keeps 15 significant digits; what a double holds beyond them is noise. */
const significantDigits = 15;

/** The digits behind the point and the text in quotation marks that a number format shows behind a number. */
const shownDecimals = /[0#?]\.(0+)/u;
const leadingZeros = /^0{2,}$/u;
const shownUnit = /[0#?]\s*(?:\\ )?"\s*([^"]+?)\s*"\s*$/u;

/** The text of a number as its cell shows it, without rounding: a format may add zeros, per cent or a unit. */
export function numberText(value: number, format = "General"): string {
  const shown = format.split(";")[0] ?? "";
  const percent = shown.includes("%");
  const scaled = Number((percent ? value * 100 : value).toPrecision(significantDigits));
  const unit = percent ? "%" : shownUnit.exec(shown)?.[1];
  const digits = leadingZeros.test(shown)
    ? plainDigits(scaled).padStart(shown.length, "0")
    : padded(plainDigits(scaled), shownDecimals.exec(shown)?.[1]?.length ?? 0);
  return unit === undefined ? digits : `${digits} ${unit}`;
}

/** The text of a date cell: ISO 8601, as a date, a date with a time, or a time of day. */
export function dateText(date: Date): string {
  const iso = date.toISOString();
  const time = iso.slice(11, 19);
  if (date.getTime() < lastDayOfNoDate) return time;
  return date.getTime() % millisecondsPerDay === 0 ? iso.slice(0, 10) : `${iso.slice(0, 10)}T${time}`;
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
