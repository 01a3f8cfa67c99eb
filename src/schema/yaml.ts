import { type Document, isNode, isScalar, parseDocument, visit } from 'yaml';
import type { Fault } from '../trade/given.ts';

/** What a text of YAML (or JSON, a part of YAML) holds, or what is wrong with its form. */
export interface Parsed {
  readonly data: unknown;
  readonly faults: readonly Fault[];
}

const plain: Readonly<Record<string, { message: string; todo: string }>> = {
  DUPLICATE_KEY: { message: 'this field stands twice', todo: 'keep one of the two' },
  TAB_AS_INDENT: { message: 'a tab at the head of the line', todo: 'indent with spaces' },
  MULTIPLE_DOCS: {
    message: 'a second document begins here',
    todo: 'one file holds one entry: take the --- line out',
  },
};

/**
 * Reads YAML or JSON. A field that stands twice and any fault of form are reported with the line.
 *
 * @param text       the file, or the part of it that is YAML
 * @param firstLine  line of the file on which `text` begins, from 1
 */
export function readYaml(text: string, firstLine = 1): Parsed {
  const doc = parseDocument(text, { version: '1.2', schema: 'core', uniqueKeys: true, prettyErrors: true });
  const at = (offset: number) => firstLine + text.slice(0, offset).split('\n').length - 1;
  const faults = [...doc.errors, ...doc.warnings].map((e): Fault => {
    const known = plain[e.code];
    return {
      field: '',
      message: `line ${at(e.pos[0])}: ${known?.message ?? firstWords(e.message)}`,
      todo: known?.todo ?? 'mend the line; see how a neighbouring file is written',
    };
  });
  for (const offset of partedTexts(doc)) {
    faults.push({
      field: '',
      message: `line ${at(offset)}: a comma parts the text here`,
      todo: 'put the whole text between quotation marks',
    });
  }
  return {
    data: faults.length === 0 ? doc.toJS() : undefined,
    faults,
  };
}

/** Places inside `{ … }` where a comma has cut an unquoted text in two, so that its second half reads as a field without a value. */
function partedTexts(doc: Document.Parsed): readonly number[] {
  const found: number[] = [];
  visit(doc, {
    Map(_, map) {
      if (!map.flow) return;
      for (const { key, value } of map.items) {
        const bare =
          value === null || (isScalar(value) && value.source === undefined && value.value === null);
        if (bare && isNode(key)) found.push(key.range?.[0] ?? 0);
      }
    },
  });
  return found;
}

function firstWords(message: string): string {
  return (message.split('\n')[0] ?? message).replace(/ at line \d+, column \d+:?$/, '');
}

/**
 * Parts a document of MDX into the data between its two `---` lines and the text after them.
 * Without the two lines there is no data, and the whole is text.
 */
export function splitFrontMatter(
  text: string,
): { matter: string; body: string; bodyLine: number } | undefined {
  const lines = text.split('\n');
  if (lines[0]?.trimEnd() !== '---') return undefined;
  const end = lines.findIndex((line, i) => i > 0 && line.trimEnd() === '---');
  if (end === -1) return undefined;
  return {
    matter: `${lines.slice(1, end).join('\n')}\n`,
    body: lines.slice(end + 1).join('\n'),
    bodyLine: end + 2,
  };
}
