import { saveFile } from './files.ts';
import { carryOff } from './register.ts';

/** Saves the register of this device as one file, and remembers that it was carried off; nothing where there is none. */
export async function saveRegister(): Promise<void> {
  const file = await carryOff();
  if (file !== undefined) saveFile(file.name, file.text);
}
