import type { ChartFunctions } from "./chart-functions.ts";

/** Where a value lies among those of a drawing: a signal, a scale, rows, a mark. */
export type Slot = number;
/** A value as it is, or the slot that has it, or a list of either. */
export type Input = { slot: Slot } | { is: unknown } | { list: readonly Input[] };
export type Inputs = Readonly<Record<string, Input>>;

export type Datum = Record<string, unknown>;
/** What an expression reads: `this` has the functions it may call, `_` its inputs. */
export type Known = Record<string, unknown>;
export type Encoder = (this: ChartFunctions, item: object, inputs: Known) => number;
type OfDatum<Result> = (this: ChartFunctions, datum: Datum, inputs: Known) => Result;

/** What is done once: rows are read, copied, sifted and put into groups. */
export type DataStep =
  | { kind: "signal"; slot: Slot; name?: string; value: unknown }
  | { kind: "rows"; slot: Slot; series?: string; values?: readonly Datum[] }
  | { kind: "copy"; slot: Slot; from: Slot }
  | { kind: "filter"; slot: Slot; from: Slot; test: OfDatum<unknown> }
  | { kind: "formula"; from: Slot; field: string; value: OfDatum<unknown> }
  | { kind: "groups"; slot: Slot; from: Slot; fields: readonly string[] };

/** What is done in the size that was asked for, and again in the one that axes leave. */
export type SizedStep =
  | { kind: "compute"; slot: Slot; inputs: Inputs; value: (this: ChartFunctions, inputs: Known) => unknown }
  | { kind: "scale"; slot: Slot; name: string; type: string; inputs: Inputs }
  | { kind: "ticks"; slot: Slot; scale: Slot; count?: Input; specifier?: string }
  | MarkStep
  | { kind: "encode"; mark: Slot; inputs: Inputs; enter?: Encoder; update?: Encoder }
  | { kind: "sort"; mark: Slot; paths: readonly (readonly string[])[] }
  | { kind: "bound"; mark: Slot }
  | { kind: "overlap"; mark: Slot; method: string; separation: number; paths: readonly (readonly string[])[] }
  | { kind: "facet"; mark: Slot; from: Slot; fields: readonly string[]; rows: Slot; steps: readonly SizedStep[] }
  | { kind: "fit"; autosize: Slot };

/** Items of one kind, one for each row; those of ticks are known again by their value. */
export type MarkStep = {
  kind: "mark";
  slot: Slot;
  rows: Slot;
  isKeyed: boolean;
  definition: { marktype: string; role?: string; name?: string; aria?: boolean; clip: boolean; interactive: boolean };
  /** The mark whose only item this one lies in, where it is neither the plot nor the group of a facet. */
  group?: Slot;
  index: number;
};

/** A chart as a list of what is to be done: vega's dataflow without the flow, for a picture is drawn once. */
export type ChartProgram = {
  slots: number;
  root: Slot;
  data: readonly DataStep[];
  sized: readonly SizedStep[];
};
