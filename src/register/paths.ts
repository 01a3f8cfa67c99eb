/** Where things lie in a register's folder; the same paths stand in a bundle. Always `/` between names. */
export const MARKER = 'register.json';
const CAPITAL = /[A-Z]/g;

/** One chain's file. Capitals are written `_` + small letter, so that no two devices meet in a folder blind to case. */
export const chainPath = (signer: string, device: string): string =>
  `headers/${signer}.${device.replace(CAPITAL, (c) => `_${c.toLowerCase()}`)}.jsonl`;

export const bodyPath = (hash: string): string => `bodies/${hash}.json`;

export const isChainPath = (path: string): boolean => path.startsWith('headers/');
export const isBodyPath = (path: string): boolean => path.startsWith('bodies/');

/** The hash that a body's file claims by its name; `undefined` for any other file. */
export const claimedHash = (path: string): string | undefined =>
  /^bodies\/([0-9a-f]{64})\.json$/.exec(path)?.[1];
