import { version } from "../../../package.json";
import { ProblemList } from "../../problems/problem-list.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { findBrowser } from "../find-browser.ts";
import { meantRecords } from "../meant-records.ts";
import { nodeDisk } from "../node-disk.ts";
import { papers, usualPaper } from "../paper.ts";

export type PdfOptions = { browser?: string; paper?: string; certificate?: true };

/** `spanwright pdf`: a PDF file beside each page, printed by a browser that is installed. */
export async function pdfCommand(pages: readonly string[], options: PdfOptions, console: Console): Promise<0 | 2> {
  const problems = new ProblemList();
  const browser = options.browser ?? (await findBrowser(process.env.PATH ?? ""));
  const paper = papers.find((one) => one.toLowerCase() === (options.paper ?? usualPaper(process.env)).toLowerCase());
  if (paper === undefined) {
    const values = { option: "--paper", accepted: papers.join(" or ") };
    problems.add("options/not-understood", { file: "command line" }, { read: options.paper, values });
  } else if (browser === undefined) problems.add("options/no-browser", { file: "command line" });
  else {
    const { browserPrint } = await import("../browser-print.ts");
    const { printPages } = await import("../../jobs/records/print-pages.ts");
    const paths = await meantRecords(pages, problems, console);
    const written = await printPages(
      nodeDisk,
      paths,
      {
        print: browserPrint(browser, { paper, isCertificate: options.certificate === true }),
        softwareVersion: version,
      },
      problems,
    );
    if (written.length > 0) console.print(written.join("\n"));
  }
  complainOf(problems, console);
  return problems.hasStop ? 2 : 0;
}

export const addPdfCommand: AddCommand = (program, console, settle) => {
  program
    .command("pdf")
    .description("print pages of records to PDF files beside them, with an installed browser")
    .argument("<pages...>", "pages of records (.html), folders of them, or a quoted pattern")
    .option("--paper <size>", "A4 or Letter; without it, the paper of the locale")
    .option("--certificate", "the first sheet alone")
    .option("--browser <program>", "the browser to use, where it is not found by itself")
    .action(async (pages: string[], options: PdfOptions) => {
      settle(await pdfCommand(pages, options, console));
    });
};
