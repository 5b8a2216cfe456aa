import { type Entry, stop, warn } from "./entry.ts";

/** What can be wrong with the command line, or with the disk that it names. */
export const optionProblems = {
  "options/readings-alone": stop("a lone table of readings needs {option}", "{accepted}"),
  "options/not-understood": stop("the option {option} cannot be read", "{accepted}"),
  "options/overridden": stop("the option {option} would change nothing: {why}", "{accepted}"),
  "options/one-name": stop(
    "its record of {tag}, {calibration}, would have the name of that of {first}{more}, and the one would be written over the other",
    "another number for one of the calibrations, lone tables of different names, or one run after the other, each with a folder of its own: --out",
  ),
  "options/calibration-unknown": stop("no calibration of the workbook is called so", "{choices}"),
  "options/figure-unknown": stop(
    "no figure of a record is called so{nearest}",
    "one of the names that spanwright explain lists without a name",
  ),
  "options/tag-unknown": stop("no calibration of the workbook belongs to this tag", "{choices}"),
  "options/standard-not-filed": stop("no filed record rests on it", "{choices}"),
  "options/tag-not-filed": stop("no record of this tag is filed there", "{choices}"),
  "options/no-history": stop(
    "no record of the tag says on which day the work was done",
    "records with the column performed_on",
  ),
  "options/record-there": stop("a record lies there", "another name for the page"),
  "options/not-a-yearly-file": stop(
    "a file lies there that is no yearly file of this filing folder",
    "a folder for the yearly files of this filing folder alone",
  ),
  "options/loop-unknown": stop("no instrument of the workbook has this tag", "{choices}"),
  "options/calibration-of-another-tag": stop(
    "the calibration does not belong to the tag {tag}",
    "a calibration of the tag, or one of the two options alone",
  ),
  "options/not-found": stop("there is no such file or folder", "the folder of a workbook, or a lone table of readings"),
  "options/no-such-record": stop("there is no such file", "the page of a record, such as reports/LT-101/C-0001.html"),
  "options/folder-not-empty": stop("the folder holds files already: {files}", "a new folder, or an empty one"),
  "options/cannot-write": stop("nothing could be written there: {why}", "a folder in which this user may write"),
  "options/not-a-filing-folder": stop("there is no {what}", "a folder into which spanwright file put records"),
  "options/filed-page": stop(
    "{says}",
    "a folder whose every filed page can be read, because what one of them says may be what matters; spanwright verify tells more",
  ),
  "options/one-ledger": stop("{option} is about one ledger", "one folder into which records were filed"),
  "options/not-a-record": stop("this is no record", "a page or a .json file that spanwright report wrote"),
  "options/passed-over": warn("this is no record, and it was passed over", "pages of records, or their .json files"),
  "options/no-records": stop(
    "there is no record in it",
    "pages of records, their .json files, or a folder with some of them in it",
  ),
  "options/no-browser": stop(
    "no browser that prints to PDF was found on this machine",
    "an installed Chromium, the option --browser with the path of one, or printing the page by hand from any browser",
  ),
  "options/cannot-print": stop(
    "the page was not printed: {why}",
    "a browser of the Chromium family, as --browser names it",
  ),
} satisfies Record<string, Entry>;
