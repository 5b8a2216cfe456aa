import { type Entry, stop, warn } from "./entry.ts";

/** What can be wrong with keys, the table of signers, and signing. */
export const signingProblems = {
  "signing/public-key-form": stop("this is no public key", "the 43 characters that spanwright keys new prints"),
  "signing/public-key-of-two": stop(
    "the key stands at line {firstLine} too, for {first}",
    "a key of its own for each person",
  ),
  "signing/dates-reversed": stop("valid_to comes before valid_from", "the first day, then the last"),
  "signing/signers-heading": stop(
    "its heading lacks a column or has one that is not known, so that nobody in it is known to be a signer",
    "a heading with the columns that spanwright keys new prints, each by its name",
  ),
  "signing/no-signers": stop(
    "no table of signers was found beside the record or in the folder above it",
    "signers.csv there, or --signers with its path",
  ),
  "signing/key-file": stop("this cannot be signed with: {why}", "a key file that spanwright keys new wrote"),
  "signing/key-file-there": stop(
    "there is a file already, and a key is never written over another",
    "a new name with --out",
  ),
  "signing/passphrase-missing": stop("no passphrase was given", "a line on the terminal, or on the standard input"),
  "signing/passphrase-short": stop("the passphrase has {length} characters", "{least} characters or more"),
  "signing/passphrase-weak": stop(
    "the passphrase {why}, and would be guessed soon",
    "several words that do not belong together, or characters by chance",
  ),
  "signing/key-file-open": stop(
    "others of this computer may read it (mode {mode}), and try passphrases on it",
    "a key file that its owner alone may read: chmod 600; where others may have read it, a new key",
  ),
  "signing/revoked-at-form": stop(
    "this is no date and time with offset, so that nobody knows until when the key counted",
    "such as 2026-11-25T14:05:00+01:00",
  ),
  "signing/key-revoked": stop(
    "the key of {name} was revoked at {at}: {reason}",
    "a signature from before, or by another key",
  ),
  "signing/other-than-stated": warn(
    "the record says that {stated} did the work, and {name} signs as performed",
    "the name of who did the work in performed_by, and that person's signature",
  ),
  "signing/passphrases-differ": stop("the two passphrases differ", "the same passphrase twice"),
  "signing/passphrase-wrong": stop("the passphrase does not open the key", "the passphrase with which it was made"),
  "signing/key-unknown": stop("the key {keyId} is not in the table of signers", "a key of the table"),
  "signing/key-not-valid": stop("the key of {name} was not valid on {day}", "a day from {from} to {to}"),
  "signing/meaning-not-allowed": stop("{name} may not sign as {meaning}", "{allowed}"),
  "signing/issued": stop(
    "the record is issued: every signature that it needs is there, and it is changed no more",
    "an amendment as a new revision: spanwright amend",
  ),
  "signing/signed-already": stop("{name} has signed as {meaning} already", "each meaning once"),
  "signing/out-of-order": stop(
    "{meaning} comes after {before}, which is missing",
    "the signatures in the order {order}",
  ),
  "signing/four-eyes": stop(
    "{name} may not both perform and review or authorise: the instrument asks for two people (four_eyes)",
    "another person for {meaning}",
  ),
  "signing/clock": stop("the time of signing, {signedAt}, comes before {what}", "a clock that is right"),
  "signing/record-doubtful": stop("the record cannot be signed: {says}", "a record as spanwright report wrote it"),
  "signing/would-overwrite": stop(
    "the record there is signed, and was not written over",
    "a new revision with spanwright amend, or another folder with --out",
  ),
} satisfies Record<string, Entry>;
