/** Orders of work, safe work, faults put right: what is done, asked, stopped. */
export const working = {};
