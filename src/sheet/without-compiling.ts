import * as z from "zod";

/** What zod would compile for speed, the policy of a page forbids; said before the first schema is made. */
z.config({ jitless: true });
