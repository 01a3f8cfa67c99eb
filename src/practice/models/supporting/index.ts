/** Supports: where they stand, what they carry. */
export const supporting = {};
