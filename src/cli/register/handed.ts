/** A file that somebody handed over: itself, or a file whose text is the link (or what a code says) that stands for it. */
import type { Json } from '../../register/canonical.ts';
import { type Mark, unpacked } from '../../schema/link.ts';
import { GivenError } from '../../trade/given.ts';
import { fileText, jsonFile } from './options.ts';

const ASK = 'ask for it again, as a file or a link';
const wrong = {
  version: { message: 'this link was made by a later version of the pages', todo: 'ask for the file' },
  broken: { message: 'this link is not whole: it was cut short or a sign in it was changed', todo: ASK },
};

/** @throws {GivenError} of the field: no such file, no JSON and no link, a link of something else, one that is not whole */
export async function handedFile(field: string, file: string, mark: Mark): Promise<Json> {
  const text = fileText(field, file);
  if (/^[\uFEFF\s]*[{[]/.test(text)) return jsonFile(field, file);
  const link = await unpacked(text);
  if (link.found === 'none') return jsonFile(field, file);
  if (link.found !== 'json') throw new GivenError([{ field, value: file, ...wrong[link.found] }]);
  if (link.mark === mark) return link.json as Json;
  const message = `this link carries #${link.mark}=, not #${mark}=`;
  throw new GivenError([{ field, value: file, message, todo: ASK }]);
}
