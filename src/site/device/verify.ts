/** What a register is opened with in a browser: the engine's signatures, the days of zones. Only its pages load it. */
import { verifierOf } from '../../register/webcrypto.ts';

export { dayIn } from '../../schema/dayIn.ts';
export const verify = verifierOf(globalThis.crypto?.subtle);
