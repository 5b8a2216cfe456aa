import { beyond } from "./program-text.ts";

type Reference = { $ref: string | number };
/** One of vega's dataflow, as data. */
export type Operator = {
  id: string | number;
  type: string;
  params?: Readonly<Record<string, unknown>>;
  value?: unknown;
  update?: { code: string };
  signal?: string;
  scale?: string;
  root?: boolean;
  data?: Readonly<Record<string, readonly string[]>>;
};
export type Step = Readonly<Record<string, unknown>>;

/** What is known of a dataflow while its operators are gone through. */
export type Writing = {
  /** The slot of an operator; one that only passes something on has the slot of what it passes. */
  slots: Map<string | number, number>;
  count: number;
  data: Step[];
  sized: Step[];
  /** The slots of the rows that a join is made of, and of the mark that it fills. */
  joins: Map<number, { rows: number; isKeyed: boolean; mark?: number }>;
  /** The mark of a facet's groups, by the slot of the groups. */
  groupMarks: Map<number, number>;
  root: number;
  autosize: number | undefined;
  isInFacet: boolean;
  /** Writes what one operator does. */
  write: (writing: Writing, operator: Operator) => void;
};

export type Parameters = Readonly<Record<string, unknown>>;

export function newSlot(writing: Writing, id: string | number): number {
  writing.slots.set(id, writing.count);
  writing.count += 1;
  return writing.count - 1;
}

export function slotOf({ slots }: Writing, reference: unknown): number {
  const slot = slots.get((reference as Reference | undefined)?.$ref ?? "");
  return slot ?? beyond(`a reference: ${JSON.stringify(reference)}`);
}

export function dataStep({ data, isInFacet }: Writing, step: Step): void {
  if (isInFacet) beyond("rows that are made in a facet");
  data.push(step);
}

export function inputsOf(writing: Writing, params: Parameters): Step {
  return Object.fromEntries(Object.entries(params).map(([name, value]) => [name, inputOf(writing, value)]));
}

export function inputOf(writing: Writing, value: unknown): Step {
  if (Array.isArray(value)) return { list: value.map((one) => inputOf(writing, one)) };
  if (typeof value !== "object" || value === null) return { is: value };
  return Object.keys(value).length === 1 && "$ref" in value ? { slot: slotOf(writing, value) } : beyond("an input");
}

export function keyFields(key: unknown): readonly string[] {
  const fields = (key as { $key?: readonly string[] } | undefined)?.$key;
  return fields ?? beyond("groups by no field");
}

export function requireOnly(params: Parameters, names: readonly string[]): void {
  const other = Object.keys(params).find((name) => params[name] !== undefined && !names.includes(name));
  if (other !== undefined) beyond(`the parameter ${other}`);
}
