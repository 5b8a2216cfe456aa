import { rateChart } from "../../charts/rate-chart.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { makeRegister } from "../../filing/make-register.ts";
import { isDay } from "../../model/is-day.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Register } from "../../record/register-form.ts";
import { registerColumns } from "../../report/columns/register-columns.tsx";
import { renderRegister } from "../../report/register-page.tsx";
import { namedRows } from "../../report/table/column.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { writeDelimited } from "../../workbook/files/write-delimited.ts";
import type { PartedDisk } from "../disk.ts";
import { readDecimalMark } from "../workbook/decimal-mark-option.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { openFolder } from "./open-folder.ts";
import { removeOtherParts } from "./remove-other-parts.ts";

/** Today, how soon is soon, and options as they were typed. */
export type RegisterOptions = {
  today: string;
  soonDays: number;
  decimalMark?: string | undefined;
  /** A past day, as it was typed: what the folder said at its end. */
  on?: string | undefined;
};

/** What was written, or nothing where a problem stops it. */
export type WrittenRegister = { register: Register; page: string; table: string; parts: number } | undefined;

/** Writes the register of a filing folder into it: a page for people, and the same as a table. */
export async function writeRegister(
  disks: { filing: FilingDisk; plain: PartedDisk },
  folder: string,
  { today, soonDays, decimalMark, on }: RegisterOptions,
): Promise<{ written: WrittenRegister; problems: ProblemList }> {
  const problems = new ProblemList();
  const mark = readDecimalMark(decimalMark, problems);
  checkDay(on, today, problems);
  const index = problems.hasStop ? undefined : await openFolder(disks.filing, folder, problems, on);
  if (index === undefined) return { written: undefined, problems };
  const register = makeRegister(index, on ?? today, soonDays);
  const name = on === undefined ? "register" : `register-of-${on}`;
  const page = `${folder}/${name}.html`;
  const table = `${folder}/${name}.csv`;
  const rates = await withDecimalMark(mark, () => rateChart(register.years));
  const pages = withDecimalMark(mark, () => renderRegister(register, rates, name));
  const files = [
    { path: page, parts: () => [pages.page] },
    {
      path: table,
      parts: () => [withDecimalMark(mark, () => writeDelimited(namedRows(registerColumns, register.rows), { mark }))],
    },
    ...pages.parts.map(({ path, render }) => ({
      path: `${folder}/${path}`,
      parts: () => [withDecimalMark(mark, render)],
    })),
  ];
  const isWritten = await writeOrTell(() => disks.plain.streamTogether(files), page, problems);
  if (!isWritten) return { written: undefined, problems };
  await removeOtherParts(disks.filing, `${folder}/${name}-parts`, files);
  return { written: { register, page, table, parts: pages.parts.length }, problems };
}

function checkDay(on: string | undefined, today: string, problems: ProblemList): void {
  if (on === undefined || (isDay(on) && on <= today)) return;
  const values = { option: "--on", accepted: `--on with a day until today, such as ${today}` };
  problems.add("options/not-understood", { file: "command line" }, { read: on, values });
}
