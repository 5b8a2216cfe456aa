import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readXlsx } from "hucre/xlsx";

type CellValue = string | number | boolean | null;

/** The cells of one workbook after the other program reckoned them: by the sheet's name, rows of cells. */
export type Recalculated = ReadonlyMap<string, readonly (readonly CellValue[])[]>;

/** What makes the other program reckon every formula as it opens a file: 0 is "always", 1 "never". */
const settings = (mode: 0 | 1) => `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>${mode}</value></prop></item>
</oor:items>
`;

/** Has one start of soffice open all of the workbooks, reckon them, and write them; a profile of its own. */
export async function recalculated(
  soffice: string,
  workbooks: readonly Uint8Array[],
  mode: 0 | 1 = 0,
): Promise<readonly Recalculated[]> {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-soffice-"));
  try {
    const profile = join(folder, "profile");
    mkdirSync(join(profile, "user"), { recursive: true });
    writeFileSync(join(profile, "user", "registrymodifications.xcu"), settings(mode));
    const files = workbooks.map((bytes, index) => {
      const file = join(folder, `${index}.xlsx`);
      writeFileSync(file, bytes);
      return file;
    });
    const out = join(folder, "out");
    execFileSync(
      soffice,
      [`-env:UserInstallation=file://${profile}`, "--headless", "--convert-to", "xlsx", "--outdir", out, ...files],
      { stdio: "pipe", timeout: 280_000 },
    );
    return await Promise.all(workbooks.map((_, index) => cellsOf(readFileSync(join(out, `${index}.xlsx`)))));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function cellsOf(bytes: Uint8Array): Promise<Recalculated> {
  const { sheets } = await readXlsx(bytes);
  return new Map(sheets.map(({ name, rows }) => [name, rows as CellValue[][]]));
}
