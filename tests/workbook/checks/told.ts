import { checked, type Texts } from "../smallest-workbook.ts";

/** Code, file, line and column of every problem of a workbook, shortly. */
export async function told(texts: Texts, firstLook = false): Promise<readonly string[]> {
  const { problems } = await checked(texts, firstLook);
  return problems.map(({ code, place: { file, line, column } }) =>
    [code, [file.replace(".csv", ""), line, column].filter((part) => part !== undefined).join(":")].join(" "),
  );
}
