import * as z from "zod";
import { type UnitSymbol, unitTable } from "../units/unit-table.ts";
import { columnName } from "./column-name.ts";

/**
 * Where the unit of a number comes from: a fixed unit, or a unit that the instrument or the row itself names.
 * `tolerance` is percent, the distance unit or the signal unit, as the basis beside it says.
 */
export type UnitSource =
  | "distance"
  | "signal"
  | "controller value"
  | "stated by row"
  | "tolerance"
  | "second tolerance"
  | "accuracy"
  | "°C"
  | "%"
  | "hPa"
  | "V"
  | "Ω"
  | "m"
  | "mm²"
  | "°"
  | "months"
  | "s"
  | "days"
  | "mA"
  | "none";

/** What a number has to keep, in the unit of its column. */
export type NumberBounds = { above?: number; atLeast?: number; atMost?: number; isWhole?: true };

/** How the text of a cell becomes a value. */
export type CellReading =
  /** A number where the text is one, in the unit that the row's column unit names; words as they stand elsewhere. */
  | { reads: "numberOrWords" }
  | { reads: "text" | "list" | "date" | "time" | "yesNo" | "wholeNumber" | "unit" }
  /** `several`: of several words in the cell the first of `order` is the value, and the others go to the key `restIn`. */
  | { reads: "choice" | "choices"; choices: readonly string[]; several?: { restIn: string; order: readonly string[] } }
  /** `saysMore`: words in the cell may fill in other columns too, as those of a tolerance do. */
  | ({ reads: "number"; unit: UnitSource; saysMore?: "tolerance" } & NumberBounds);

/** One column of a table: how its cells are read, whether they must be filled in, and what they mean. */
export type ColumnMeaning = CellReading & {
  required: boolean;
  about: string;
  /** A first look at a lone readings file may do without it, though it is required. */
  missingAtFirstLook?: true;
  /** Its column need not be there where another cell of each row says it. */
  mayBeSaid?: true;
  /** An entry sheet fills it in, and nobody else: it is not among those that are printed to be filled in. */
  bySheet?: true;
};

export type Column = ColumnMeaning & { key: string; name: string };

const meanings = z.registry<ColumnMeaning>();

/** Units that another column names, and a number without any. */
const unitsElsewhere: ReadonlySet<UnitSource> = new Set([
  ...(["distance", "signal", "controller value", "stated by row"] as const),
  ...(["tolerance", "second tolerance", "accuracy", "none"] as const),
]);

/** What a column means is what its field of a record means too, so that the published form of records says it. */
function column<Schema extends z.ZodType>(schema: Schema, meaning: ColumnMeaning): Schema {
  const inUnit = "unit" in meaning && !unitsElsewhere.has(meaning.unit) ? `; in ${meaning.unit}` : "";
  const described = schema.describe(`${meaning.about}${inUnit}`);
  meanings.add(described, meaning);
  return described;
}

function numberOf({ isWhole }: NumberBounds): z.ZodNumber {
  return isWhole ? z.int() : z.number();
}

export const requiredText = (about: string) => column(z.string().min(1), { reads: "text", required: true, about });
export const text = (about: string) => column(z.string().min(1).optional(), { reads: "text", required: false, about });
/** A text that an entry sheet writes. */
export const sheetText = (about: string) =>
  column(z.string().min(1).optional(), { reads: "text", required: false, about, bySheet: true });
export const list = (about: string) =>
  column(z.array(z.string().min(1)).optional(), { reads: "list", required: false, about });
export const requiredNumber = (unit: UnitSource, about: string, bounds: NumberBounds = {}) =>
  column(numberOf(bounds), { reads: "number", unit, required: true, about, ...bounds });
/** A tolerance: a number, or words that say all of it. */
export const tolerance = (about: string, bounds: NumberBounds) =>
  column(numberOf(bounds), {
    ...{ reads: "number", unit: "tolerance", required: true, about, saysMore: "tolerance" },
    ...bounds,
  });
export const number = (unit: UnitSource, about: string, bounds: NumberBounds = {}) =>
  column(numberOf(bounds).optional(), { reads: "number", unit, required: false, about, ...bounds });
export const numberOrWords = (about: string) =>
  column(z.union([z.number(), z.string().min(1)]).optional(), { reads: "numberOrWords", required: false, about });
export const wholeNumber = (about: string) =>
  column(z.int().min(1).optional(), { reads: "wholeNumber", required: false, about });
export const requiredDate = (about: string) => column(z.iso.date(), { reads: "date", required: true, about });
export const date = (about: string) => column(z.iso.date().optional(), { reads: "date", required: false, about });
export const unit = (about: string) =>
  column(z.enum(Object.keys(unitTable) as [UnitSymbol, ...UnitSymbol[]]).optional(), {
    reads: "unit",
    required: false,
    about,
  });
export const time = (about: string) => column(z.string().optional(), { reads: "time", required: false, about });
export const yesNo = (about: string) => column(z.boolean().optional(), { reads: "yesNo", required: false, about });
export const requiredChoice = <const Choices extends readonly [string, ...string[]]>(choices: Choices, about: string) =>
  column(z.enum(choices), { reads: "choice", choices, required: true, about });
/** A choice that every row has, but that another cell of the row may say. */
export const choiceUnlessSaid = <const Choices extends readonly [string, ...string[]]>(
  choices: Choices,
  about: string,
) => column(z.enum(choices), { reads: "choice", choices, required: true, mayBeSaid: true, about });
export const choice = <const Choices extends readonly [string, ...string[]]>(choices: Choices, about: string) =>
  column(z.enum(choices).optional(), { reads: "choice", choices, required: false, about });

/** One of the words, of which a cell may name several. */
export const choiceOfSeveral = <const Choices extends readonly [string, ...string[]]>(
  words: Choices,
  several: { restIn: string; order: readonly Choices[number][] },
  about: string,
) => column(z.enum(words).optional(), { reads: "choice", choices: words, several, required: false, about });

/** Several of the words, in the order in which they are written. */
export const choices = <const Choices extends readonly [string, ...string[]]>(words: Choices, about: string) =>
  column(z.array(z.enum(words)).optional(), { reads: "choices", choices: words, required: false, about });

/**
 * A column that every table must fill in, and that a first look at a lone readings file may do without.
 * The value is optional in the type, so that whoever reads it has to say what stands there when it is missing.
 */
export const expectedText = (about: string) =>
  column(z.string().min(1).optional(), { reads: "text", required: true, about, missingAtFirstLook: true });
export const expectedDate = (about: string) =>
  column(z.iso.date().optional(), { reads: "date", required: true, about, missingAtFirstLook: true });

/** The columns of a table, in the order of its schema: the schema is the only place that lists them. */
export function columnsOf(schema: z.ZodObject): readonly Column[] {
  return Object.entries(schema.shape).map(([key, type]) => {
    const meaning = meanings.get(type as z.ZodType);
    if (meaning === undefined) throw new TypeError(`columnsOf: ${key} has no meaning as a column`);
    return { ...meaning, key, name: columnName(key) };
  });
}
