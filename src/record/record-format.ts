/** The form of a record's JSON. Names bind: a published record is read by them years later. */
export const recordFormat = "spanwright-record/2";

/** More would take minutes a record. */
export const mostDraws = 10_000_000;
