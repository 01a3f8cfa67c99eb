import { fileURLToPath } from 'node:url';

/** The project's own folder, with its closing separator, wherever the command is called from and whatever the folder is called. */
export const root = fileURLToPath(new URL('../../', import.meta.url));
