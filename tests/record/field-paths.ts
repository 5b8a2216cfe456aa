type Form = {
  $ref?: string;
  type?: string | readonly string[];
  properties?: Readonly<Record<string, Form>>;
  items?: Form;
  additionalProperties?: boolean | Form;
  anyOf?: readonly Form[];
  oneOf?: readonly Form[];
};

export type FieldPath = { path: string; isNumber: boolean };

/** Every field of a JSON Schema by its path: "phases.*.points[].specificRisk"; both phases are one. */
export function fieldPaths(schema: unknown): readonly FieldPath[] {
  const isNumberByPath = new Map<string, boolean>();
  walk(schema as Form, "");
  return [...isNumberByPath].map(([path, isNumber]) => ({ path, isNumber }));

  function walk(form: Form, path: string): void {
    if (form.$ref !== undefined) throw new RangeError(`fieldPaths: ${path} is a reference, which is not followed`);
    for (const choice of [...(form.anyOf ?? []), ...(form.oneOf ?? [])]) walk(choice, path);
    const isNumber = [form.type].flat().some((type) => type === "number" || type === "integer");
    if (path !== "") isNumberByPath.set(path, isNumber || isNumberByPath.get(path) === true);
    for (const [name, inner] of Object.entries(form.properties ?? {})) {
      const word = name === "asFound" || name === "asLeft" ? "*" : name;
      walk(inner, path === "" ? word : `${path}.${word}`);
    }
    if (form.items !== undefined) walk(form.items, `${path}[]`);
    if (typeof form.additionalProperties === "object") walk(form.additionalProperties, `${path}.*`);
  }
}
