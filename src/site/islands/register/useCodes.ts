/** What draws and reads codes: fetched once the page stands, so that it is there when the network is not. */
import { useLater } from '../useLater.ts';

const drawer = () => import('../../code.ts');
const reader = () => import('../../device/codes.ts');

export const useDrawer = () => useLater(drawer);
export const useReader = () => useLater(reader);
