const indent = (text) => text.replaceAll("\n", "\n  ");
const isName = (key) => /^[A-Za-z_$][\w$]*$/u.test(key);

/** The types of a record as TypeScript declarations that need no library: what the JSON Schema says, field by field. */
export function recordTypes(schema) {
  const named = new Map();
  const record = typeOf(schema, { definitions: schema.$defs ?? {}, uses: usesOf(schema), named }, ["record"]);
  const shared = [...named.values()].map(({ name, text }) => `type ${name} = ${text};\n\n`).join("");
  return `// Written by the build from record.schema.json.

/** The form that these types and the schema describe. */
export declare const recordFormat: ${JSON.stringify(schema.properties.schema.const)};

/** The JSON Schema (2020-12) of a record, for any validator. */
export declare const recordSchema: { readonly [keyword: string]: unknown };

${shared}/** A record as it is written: with the seal of its content, and the signatures under it. */
export type SealedRecord = ${record};

/** What was read and found as found, or as left. */
export type PhaseRecord = NonNullable<SealedRecord["phases"]["asFound" | "asLeft"]>;

/** One reading, with its errors and its verdict. */
export type ReadingRecord = PhaseRecord["readings"][number];

/** One test point with its uncertainty, limits, risk and statement. */
export type JudgedPointRecord = PhaseRecord["points"][number];

// Nothing else of this file is exported.
export {};
`;
}

function typeOf(schema, context, path) {
  if (schema.$ref !== undefined) return typeOfShared(schema.$ref.replace("#/$defs/", ""), context, path);
  if (schema.const !== undefined) return JSON.stringify(schema.const);
  if (schema.enum !== undefined) return schema.enum.map((value) => JSON.stringify(value)).join(" | ");
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices !== undefined) return choices.map((choice) => typeOf(choice, context, path)).join(" | ");
  if (Array.isArray(schema.type)) return schema.type.map((type) => typeOf({ type }, context, path)).join(" | ");
  if (schema.type === "array") return `Array<${typeOf(schema.items, context, path)}>`;
  if (schema.type === "object") return objectType(schema, context, path);
  const plain = { string: "string", number: "number", integer: "number", boolean: "boolean", null: "null" }[
    schema.type
  ];
  if (plain !== undefined) return plain;
  if (Object.keys(schema).every((word) => word === "description")) return "unknown";
  throw new TypeError(`no type is known for ${JSON.stringify(schema)}`);
}

/** A shape that stands in several places is written once, under the name of the first; a number stands where it is. */
function typeOfShared(reference, context, path) {
  const known = context.named.get(reference);
  if (known !== undefined) return known.name;
  const found = context.definitions[reference];
  if (found === undefined) throw new TypeError(`the schema refers to ${reference}, which it does not define`);
  const isShape = found.properties !== undefined || found.enum !== undefined;
  if (!isShape || context.uses[reference] === 1) return typeOf(found, context, path);
  const entry = { name: nameFor(path, context), text: "" };
  context.named.set(reference, entry);
  entry.text = typeOf(found, context, path);
  return entry.name;
}

function nameFor(path, { named }) {
  const name = path
    .slice(-2)
    .map((key) => key[0].toUpperCase() + key.slice(1))
    .join("");
  const count = [...named.values()].filter((other) => other.name.replace(/\d+$/u, "") === name).length;
  return count === 0 ? name : `${name}${count + 1}`;
}

function objectType({ properties, required = [], additionalProperties }, context, path) {
  if (properties === undefined) return `{ [name: string]: ${typeOf(additionalProperties || {}, context, path)} }`;
  const fields = Object.entries(properties).map(([name, schema]) => {
    const about = schema.description === undefined ? "" : `/** ${schema.description.replaceAll("*/", "* /")} */\n`;
    const written = isName(name) ? name : JSON.stringify(name);
    const type = typeOf(schema, context, [...path, name]);
    return required.includes(name) ? `${about}${written}: ${type};` : `${about}${written}?: ${type} | undefined;`;
  });
  return `{\n  ${indent(fields.join("\n"))}\n}`;
}

/** How often the schema refers to each of its definitions. */
function usesOf(schema) {
  const uses = {};
  for (const [, name] of JSON.stringify(schema).matchAll(/"#\/\$defs\/([^"]+)"/gu)) uses[name] = (uses[name] ?? 0) + 1;
  return uses;
}
