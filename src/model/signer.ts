import * as z from "zod";
import { choices, date, requiredDate, requiredText, text } from "./column.ts";
import { signatureMeanings } from "./signature-meanings.ts";

/** One person's key: who may sign with it, what, and when. A new key, or a new role, is a new row. */
export const signerSchema = z.strictObject({
  name: requiredText("name of the person, as signatures print it"),
  role: requiredText("what the person is there, as signatures print it"),
  publicKey: requiredText("public key, as spanwright keys new prints it"),
  validFrom: requiredDate("first day on which the key may sign"),
  validTo: date("last day on which it may sign; empty where there is none yet"),
  maySign: choices(signatureMeanings, "what it may sign, with ; between them; everything where empty"),
  revokedAt: text("date and time with offset from which it counts no more; empty where it was not revoked"),
  revokedReason: text("why it was revoked"),
});

export type Signer = z.infer<typeof signerSchema>;
