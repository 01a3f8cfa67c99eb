/** Ids of the outside tickets; their names are words of the same ids. */
export const tickets = ['W1', 'W2', 'W3', 'W4', 'W5', 'W6', 'W7', 'W8'] as const;
