/** What somebody handed over, however it came: the text of a file, a link, or what a code says. */

import { type Mark, unpacked } from '../schema/link.ts';
import { GivenError } from '../trade/given.ts';
import type { Tell } from './speak.ts';

const refused = (message: string, todo: string): GivenError =>
  new GivenError([{ field: 'file', message, todo }]);

/**
 * The text of the file that a link or a code stands for; a text that is a file itself is handed back as it is.
 * @param mark  what is wanted; its own reader says what else is wrong with it
 * @param came  `text` for a file, whose reader knows better what is wrong with it; `link`, `code` are one of ours or refused
 * @throws {GivenError} in the page's words: no link of ours, another thing than the one wanted, one that is not whole, one
 *   of a later version
 */
export async function handedText(
  text: string,
  mark: Mark,
  came: 'text' | 'link' | 'code',
  tell: Tell,
): Promise<string> {
  if (text.trim().startsWith('{') || (mark === 'key' && /^[0-9a-f]{64}$/i.test(text.trim()))) return text;
  const link = await unpacked(text);
  switch (link.found) {
    case 'none': {
      if (came === 'text') return text;
      const other = tell('handing.other', { wanted: tell(`handing.wanted-${mark}`) });
      throw refused(came === 'link' ? tell('handing.none') : other, tell('handing.giveOther'));
    }
    case 'version':
      throw refused(tell('handing.version'), tell('handing.getNewer'));
    case 'broken':
      throw refused(tell('handing.broken'), tell('handing.giveOther'));
    case 'json':
      if (link.mark === mark) return JSON.stringify(link.json);
      throw refused(
        tell('handing.holdsOther', { what: tell(`handing.is-${link.mark}`) }),
        tell('handing.giveOther'),
      );
  }
}

/** What the code on a picture says. @throws {GivenError} in the page's words: no picture, or no code on it */
export async function pictureText(picture: Blob, tell: Tell): Promise<string> {
  const { codeIn } = await import('./device/codes.ts');
  let text: string | undefined;
  try {
    text = await codeIn(picture);
  } catch (cause) {
    if (!(cause instanceof TypeError)) throw cause;
    throw refused(tell('handing.noPicture'), tell('handing.givePicture'));
  }
  if (text === undefined) throw refused(tell('handing.noCode'), tell('handing.anew'));
  return text;
}
