/** Reading a code from a picture that was taken of it, on this device: the picture goes nowhere. Fetched once a page stands. */

import { decodeQR } from 'qr/decode.js';

/** Sides, in px, that a picture is brought down to before it is looked at; the first that shows a code is taken. */
const SIDES = [1200, 800, 2000, 500];
/** Milliseconds that looking at one of them may take. */
const PATIENCE = 1500;
/** A picture with more than this is turned away unread: no phone takes such. */
const MOST_BYTES = 64_000_000;

/**
 * What the code on a picture says.
 * @returns `undefined` when there is none on it, or none that can be read: blurred, cut off, too dark
 * @throws {TypeError} this is no picture that the browser can open
 */
export async function codeIn(picture: Blob): Promise<string | undefined> {
  if (picture.size > MOST_BYTES) throw new TypeError('too large');
  const bitmap = await opened(picture);
  try {
    const longest = Math.max(bitmap.width, bitmap.height);
    // No side larger than the picture itself, and the picture itself where it is smaller than the first.
    const sides = [...new Set(SIDES.map((side) => Math.min(side, longest)))];
    for (const side of sides) {
      const image = pixels(bitmap, side / longest);
      try {
        return decodeQR(image, { effort: Infinity, timeLimit: PATIENCE });
      } catch {
        // Nothing at this size; the next may show it.
      }
    }
    return undefined;
  } finally {
    bitmap.close();
  }
}

async function opened(picture: Blob): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(picture);
  } catch {
    throw new TypeError('no picture');
  }
}

function pixels(bitmap: ImageBitmap, scale: number): ImageData {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new TypeError('no canvas');
  // A picture that can be seen through is looked at on white, as it is shown.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height);
}
