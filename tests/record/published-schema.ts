import * as z from "zod";
import { figureAt } from "../../src/record/changed-figures.ts";
import { wordsOfField } from "../../src/record/field-words.ts";
import { type FigureKey, figureDefinition } from "../../src/record/figure-definitions.ts";
import { recordFormat } from "../../src/record/record-format.ts";
import { sealedRecordSchema } from "../../src/record/record-schema.ts";

type Node = { [key: string]: unknown };
type Field = { node: Node; paths: Set<string> };

/** The form of a record as JSON Schema, every figure described by its definition. */
export function publishedSchema(): Node {
  const { $schema, ...schema } = z.toJSONSchema(sealedRecordSchema, { target: "draft-2020-12", reused: "ref" });
  const $id = `urn:${recordFormat.replace("-", ":").replace("/", ":")}`;
  const described: Node = JSON.parse(JSON.stringify({ $schema, $id, title: recordFormat, ...schema }));
  for (const field of fieldsOf(described)) {
    const words = wordsOf(described, field);
    if (words !== undefined) field.node.description = words;
  }
  return described;
}

/** Of a field that says nothing itself: the definition of the figure in it, or what is written down of its name. */
function wordsOf(schema: Node, { node, paths }: Field): string | undefined {
  if (descriptionOf(schema, node) !== undefined) return undefined;
  const key = onlyOne([...paths].map(figureAt)) ?? onlyOne([...paths].flatMap((path) => figuresIn(schema, node, path)));
  return key === undefined ? onlyOne([...paths].map(wordsOfField)) : definitionOf(key);
}

function onlyOne<Value>(values: readonly Value[]): Value | undefined {
  return new Set(values).size === 1 ? values[0] : undefined;
}

/** The figures that stand right in an object: where it is one, the object is that figure. */
function figuresIn(schema: Node, node: Node, path: string): readonly (FigureKey | undefined)[] {
  const object = [node, ...((node.anyOf ?? []) as Node[])].map((one) => ("$ref" in one ? resolved(schema, one) : one));
  const names = object.flatMap(({ properties }) => Object.keys(properties ?? {}));
  return names.flatMap((name) => figureAt(`${path}.${name}`) ?? []);
}

function definitionOf(key: FigureKey): string {
  const { name, unit, meaning } = figureDefinition(key);
  return `${name} (${unit}). ${meaning}`;
}

/** Places of fields that no words describe, neither their own nor those of what they refer to. */
export function undescribed(schema: Node): readonly string[] {
  return fieldsOf(schema)
    .filter(({ node }) => descriptionOf(schema, node) === undefined)
    .flatMap(({ paths }) => [...paths].slice(0, 1));
}

/** Every field of every object, with the paths that lead to it; one that several places refer to is one. */
function fieldsOf(schema: Node): readonly Field[] {
  const fields = new Map<Node, Field>();
  const visit = (node: Node, path: string): void => {
    if (typeof node.$ref === "string") visit(resolved(schema, node), path);
    for (const one of ["anyOf", "oneOf", "allOf"].flatMap((key) => (node[key] ?? []) as Node[])) visit(one, path);
    if (isNode(node.items)) visit(node.items, `${path}[]`);
    if (isNode(node.additionalProperties)) visit(node.additionalProperties, `${path}.*`);
    for (const [name, field] of Object.entries((node.properties ?? {}) as Record<string, Node>)) {
      const place = path === "" ? name : `${path}.${name}`;
      const known = fields.get(field) ?? { node: field, paths: new Set() };
      fields.set(field, { node: field, paths: known.paths.add(place) });
      visit(field, place);
    }
  };
  visit(schema, "");
  return [...fields.values()];
}

function descriptionOf(schema: Node, node: Node): unknown {
  return (
    node.description ?? (typeof node.$ref === "string" ? descriptionOf(schema, resolved(schema, node)) : undefined)
  );
}

function resolved(schema: Node, { $ref }: Node): Node {
  return ((schema.$defs ?? {}) as Record<string, Node>)[String($ref).replace("#/$defs/", "")] ?? {};
}

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null;
}
