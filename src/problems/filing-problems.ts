import { type Entry, stop } from "./entry.ts";

/** What can stand in the way of filing a page into a folder of records, of deciding a finding, of amending a record. */
export const filingProblems = {
  "filing/data-alone": stop("this is the data of a record without its page", "the page (.html) as it was signed"),
  "filing/no-record": stop("{says}", "a page of a record, as spanwright report and spanwright sign write it"),
  "filing/seal-broken": stop(
    "the content of the record is not the one that was sealed",
    "the page as it was signed; spanwright verify tells what differs",
  ),
  "filing/not-issued": stop(
    "the record is a draft: {missing}",
    "a record with every signature that it needs, or --signed-on-paper with the place where the signed paper lies",
  ),
  "filing/signature-doubtful": stop("{says}", "a page of which spanwright verify doubts no signature"),
  "filing/page-doubtful": stop("{says}", "a page that spanwright verify does not doubt"),
  "filing/issued-already": stop(
    "{path} is issued already, with other content",
    "the very same bytes, or a new revision made by spanwright amend",
  ),
  "filing/tag-like-another": stop(
    "its tag {tag} looks like {like}, of which pages are filed: they differ by capitals, spaces or characters that look the same",
    "one spelling of each tag; spanwright withdraw takes a page out that has the wrong one",
  ),
  "filing/replaces-nothing": stop(
    "it is revision {revision}, and does not say rightly which revision it replaces",
    "a revision made by spanwright amend",
  ),
  "filing/revision-missing": stop(
    "it is revision {revision}, and revision {before} is not in the folder",
    "the revisions of a calibration in their order",
  ),
  "filing/replaces-another": stop(
    "it replaces a revision {before} that is not the one filed as {path}",
    "an amendment of the filed record",
  ),
  "filing/ledger-broken": stop(
    "the ledger does not hold together: {wrong}",
    "the ledger as it was written, from a backup; spanwright verify tells more",
  ),
  "filing/locked": stop(
    "the folder is kept by {holder}",
    "a folder that nobody else files into at the moment; if nobody does, remove {path}",
  ),
  "filing/lock-lost": stop(
    "another process took the folder over, because this one stood still too long; nothing was entered",
    "the same command once more",
  ),
  "filing/record-unknown": stop(
    "no record of calibration {calibration} of the tag {tag} is filed there",
    "tag and calibration as the register shows them",
  ),
  "filing/revision-unknown": stop(
    "no page of revision {revision} of calibration {calibration} of the tag {tag} counts there",
    "tag, calibration and --revision as the register shows them",
  ),
  "filing/disposed-of": stop(
    "line {line} of the ledger disposed of {path}",
    "a page that was not disposed of; this one is kept no more",
  ),
  "filing/nothing-withdrawn": stop(
    "no page of revision {revision} of calibration {calibration} of the tag {tag} was withdrawn there",
    "tag, calibration and --revision of the line that withdrew it",
  ),
  "filing/tag-unknown": stop("no page of the tag {tag} is filed there", "a tag as the register shows it"),
  "filing/tag-the-same": stop("{tag} is called so already", "another tag"),
  "filing/nothing-to-dispose-of": stop(
    "no page is of work before {before}, and replaced by a later one or out of use",
    "--before with a later day; the last record of a loop in use is kept, and so is a finding that nobody decided",
  ),
  "filing/rested-upon": stop(
    "revision {later} replaces revision {revision}, and rests on it",
    "the last revision first, then the one before it",
  ),
  "filing/nothing-to-decide": stop(
    "the loop was found in tolerance ({path})",
    "a record whose as-found result needs a decision",
  ),
  "filing/page-unreadable": stop("{path}: {says}", "the page as it was filed; spanwright verify tells more"),
  "filing/words-missing": stop("the option {option} is empty", "{accepted}"),
  "filing/amends-draft": stop(
    "the record is a draft: {missing}, and no folder of records has it",
    "an issued or a filed page; a draft is made anew by spanwright report",
  ),
  "filing/superseded": stop(
    "revision {revision} is replaced already by revision {later}",
    "the last revision of the calibration",
  ),
  "filing/not-in-workbook": stop(
    "the workbook has no calibration {calibration} of the tag {tag}",
    "a workbook with the calibration that is amended",
  ),
  "filing/nothing-differs": stop(
    "the workbook says the same as the record",
    "a workbook in which something of the calibration was put right",
  ),
} satisfies Record<string, Entry>;
