import { beyond, type Channels, encoderText } from "./program-text.ts";
import {
  inputsOf,
  keyFields,
  newSlot,
  type Operator,
  type Parameters,
  slotOf,
  type Writing,
} from "./program-writing.ts";

const knownMarks = ["group", "rule", "rect", "symbol", "line", "area", "text"];
const knownRoles = [
  "mark",
  "scope",
  "axis",
  ...["grid", "tick", "label", "title", "domain"].map((one) => `axis-${one}`),
];

export function writeMark(writing: Writing, { id }: Operator, params: Parameters): void {
  const { markdef, groups, parent, index, clip, interactive } = params;
  const definition = markdef as { marktype: string; role: string; aria?: boolean };
  const isSpoken = definition.role === "axis" && definition.aria !== false;
  const isKnown = knownMarks.includes(definition.marktype) && knownRoles.includes(definition.role);
  if (!isKnown || isSpoken || typeof clip !== "boolean") beyond(`a mark: ${JSON.stringify(markdef)}`);
  for (const name of Object.keys(definition)) {
    if (!["marktype", "role", "name", "aria"].includes(name)) beyond(`${name} of a mark`);
  }
  const join = writing.joins.get(slotOf(writing, params.pulse)) ?? beyond("a mark of no join");
  const slot = newSlot(writing, id);
  join.mark = slot;
  writing.groupMarks.set(join.rows, slot);
  const group = groups === null || parent !== null ? undefined : writing.joins.get(slotOf(writing, groups))?.mark;
  const { rows, isKeyed } = join;
  writing.sized.push({
    ...{ kind: "mark", slot, rows, isKeyed, group, index },
    definition: { ...definition, clip, interactive },
  });
}

export function writeEncode(writing: Writing, operator: Operator, params: Parameters): void {
  writing.slots.set(operator.id, slotOf(writing, params.pulse));
  const { pulse, encoders, mod: _, parent: __, ...others } = params;
  const sets = (encoders as { $encode: Record<string, { $expr: { marktype: string; channels: Channels } }> }).$encode;
  const [enter, update] = ["enter", "update"].map((name) => encoderText(sets[name]?.$expr));
  writing.sized.push({
    ...{ kind: "encode", mark: slotOf(writing, pulse), inputs: inputsOf(writing, others), enter, update },
  });
}

export function writeFacet(writing: Writing, operator: Operator, params: Parameters): void {
  const groups = slotOf(writing, params.group);
  const mark = writing.groupMarks.get(groups) ?? beyond("a facet of no groups");
  const flow = (params.subflow as { $subflow: { operators: readonly Operator[] } }).$subflow.operators;
  if (writing.isInFacet) beyond("a facet in a facet");
  const [first, ...others] = flow;
  const rows = newSlot(writing, first?.id ?? "");
  const inside: Writing = { ...writing, sized: [], isInFacet: true };
  for (const one of others) writing.write(inside, one);
  writing.count = inside.count;
  const [from, fields, steps] = [slotOf(writing, params.pulse), keyFields(params.key), inside.sized];
  writing.sized.push({ kind: "facet", mark, from, fields, rows, steps });
  writing.slots.set(operator.id, slotOf(writing, params.pulse));
}
