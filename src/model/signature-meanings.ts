/** What a signature under a record can mean, in the order of the work. */
export const signatureMeanings = ["performed", "reviewed", "authorised"] as const;

export type SignatureMeaning = (typeof signatureMeanings)[number];
