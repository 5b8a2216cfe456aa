/**
 * What an example says that its expression gives: a value as JavaScript writes it, `…` in an object or array for what is
 * left out, or fields as `slope 3, intercept -1`. Words may follow after a comma, a colon, an equals sign or a bracket.
 */
export type ShownValue =
  | { kind: "number"; value: number; decimals: number; digits: number }
  | { kind: "plain"; value: string | boolean | null | undefined }
  | { kind: "list"; items: readonly ShownValue[]; isPart: boolean }
  | { kind: "fields"; fields: ReadonlyMap<string, ShownValue>; isPart: boolean };

const numberText = /^-?(?:\d+\.?\d*(?:e-?\d+)?|Infinity)(?![\w.])/u;
const stringText = /^(?:"[^"]*"|'[^']*')/u;
const nameText = /^\w+/u;
const words: ReadonlyMap<string, boolean | null | undefined> = new Map<string, boolean | null | undefined>([
  ["true", true],
  ["false", false],
  ["null", null],
  ["undefined", undefined],
]);
const afterValue = /^(?:$|[,:]? |,$)/u;

/** The value, or nothing where the text does not begin with one. */
export function shownValue(text: string): ShownValue | undefined {
  return new Reader(text).fieldsOrValue();
}

class Reader {
  private rest: string;

  constructor(text: string) {
    this.rest = text;
  }

  fieldsOrValue(): ShownValue | undefined {
    const whole = this.rest;
    const value = this.value();
    if (value !== undefined && afterValue.test(this.rest)) return value;
    this.rest = whole;
    const fields = new Map<string, ShownValue>();
    do {
      const name = this.take(nameText);
      if (name === undefined || !this.has(" ")) break;
      const field = this.value();
      if (field === undefined) break;
      fields.set(name, field);
    } while (this.has(", "));
    return fields.size === 0 ? undefined : { kind: "fields", fields, isPart: true };
  }

  private value(): ShownValue | undefined {
    const number = this.take(numberText);
    if (number !== undefined) return shownNumber(number);
    const string = this.take(stringText);
    if (string !== undefined) return { kind: "plain", value: string.slice(1, -1) };
    if (this.has("[")) return this.list();
    if (this.has("{")) return this.object();
    const word = nameText.exec(this.rest)?.[0] ?? "";
    if (!words.has(word)) return undefined;
    this.take(nameText);
    return { kind: "plain", value: words.get(word) };
  }

  private list(): ShownValue | undefined {
    const items: ShownValue[] = [];
    const isPart = this.until("]", () => {
      const item = this.value();
      if (item !== undefined) items.push(item);
      return item !== undefined;
    });
    return isPart === undefined ? undefined : { kind: "list", items, isPart };
  }

  private object(): ShownValue | undefined {
    const fields = new Map<string, ShownValue>();
    const isPart = this.until("}", () => {
      const name = this.take(nameText);
      const value = name !== undefined && this.has(":") ? this.value() : undefined;
      if (name !== undefined && value !== undefined) fields.set(name, value);
      return value !== undefined;
    });
    return isPart === undefined ? undefined : { kind: "fields", fields, isPart };
  }

  /** Whether something was left out; nothing where an item could not be read. */
  private until(end: string, readItem: () => boolean): boolean | undefined {
    let isPart = false;
    while (!this.has(end)) {
      if (this.has("…")) isPart = true;
      else if (!readItem()) return undefined;
      this.has(",");
    }
    return isPart;
  }

  private has(sign: string): boolean {
    const text = sign.startsWith(" ") ? this.rest : this.rest.trimStart();
    const isNext = text.startsWith(sign);
    if (isNext) this.rest = text.slice(sign.length).replace(/^ (?=\S)/u, sign === "]" || sign === "}" ? "$&" : "");
    return isNext;
  }

  private take(pattern: RegExp): string | undefined {
    const found = pattern.exec(this.rest)?.[0];
    if (found !== undefined) this.rest = this.rest.slice(found.length);
    return found;
  }
}

function shownNumber(text: string): ShownValue {
  const [mantissa = "", exponent = "0"] = text.split("e");
  const decimals = (mantissa.split(".")[1] ?? "").length - Number(exponent);
  const digits = mantissa.replace(/^-?[0.]*|\./gu, "").length;
  return { kind: "number", value: Number(text), decimals, digits };
}

/** Fewer digits than this are the whole number, not a rounded one. */
const leastDigitsOfRounded = 4;

/** Whether something is what was shown; a number written with four digits or more may be rounded to them. */
export function isShown(shown: ShownValue, given: unknown): boolean {
  switch (shown.kind) {
    case "number":
      return typeof given === "number" && isNumber(shown, given);
    case "plain":
      return given === shown.value;
    case "list": {
      const items = isSequence(given) ? Array.from<unknown>(given) : undefined;
      if (items === undefined || (!shown.isPart && items.length !== shown.items.length)) return false;
      return shown.items.every((item, index) => index < items.length && isShown(item, items[index]));
    }
    case "fields": {
      if (typeof given !== "object" || given === null) return false;
      const entries = Object.entries(given).filter(([, value]) => value !== undefined);
      if (!shown.isPart && entries.some(([name]) => !shown.fields.has(name))) return false;
      return [...shown.fields].every(([name, value]) => isShown(value, (given as Record<string, unknown>)[name]));
    }
  }
}

function isSequence(given: unknown): given is ArrayLike<unknown> {
  return Array.isArray(given) || ArrayBuffer.isView(given);
}

function isNumber({ value, decimals, digits }: Extract<ShownValue, { kind: "number" }>, given: number): boolean {
  if (Object.is(value, given) || Math.abs(given - value) <= 1e-14 * Math.abs(value)) return true;
  return digits >= leastDigitsOfRounded && Math.abs(given - value) <= 0.500001 * 10 ** -decimals;
}
