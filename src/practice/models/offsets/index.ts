/** Offsets, hinges, reducers, whole routes. */
export const offsets = {};
