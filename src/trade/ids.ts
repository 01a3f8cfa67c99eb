/** Forms of the names that content, the sheets' files and the command share. */

/** A task of the map: T and two digits; a part of it has a small letter more. */
export const TASK_ID = /^T\d\d[a-z]?$/;
/** A thing of content: small letters, digits and hyphens. */
export const PLAIN_ID = /^[a-z0-9][a-z0-9-]*$/;
/** A sheet's id stands in every seed of it, so it stays short. */
export const LONGEST_SHEET_ID = 40;
