import schema from "./record.schema.json" with { type: "json" };

/** The form of the records that the schema describes, as their `schema` says it. */
export const recordFormat = schema.properties.schema.const;

/** The JSON Schema of a record as data. This is what `spanwright/record` gives; its types are written by the build. */
export const recordSchema: { readonly [keyword: string]: unknown } = schema;
