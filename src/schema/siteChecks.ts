/**
 * Faults of what the site has adopted: a value that stands twice, one of something that is not there, one looser than
 * the code; and a catalogue item that calls itself adopted with no paper behind it.
 */
import { isAdopted } from '../run/catalogue.ts';
import { formatLength, type Ticks } from '../trade/length.ts';
import { catalogueOf } from './catalogue.ts';
import { missingOne } from './missing.ts';
import type { Entry, FileFault } from './shelf.ts';
import { type Entries, idsOf, type Lost } from './shelves.ts';
import { adoptedOf, nameOf, type SitePaper, type SiteValue, valuesOf, withAdopted } from './site.ts';

/** A value of a paper with the path of its row. */
interface Row {
  readonly paper: Entry<SitePaper>;
  readonly field: string;
  readonly value: SiteValue;
}

export function siteFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const rows = entries.site.flatMap((paper) =>
    paper.data.values.map((value, i): Row => ({ paper, field: `values[${i}]`, value })),
  );
  return [
    ...twice(rows),
    ...rows.flatMap(({ paper, field, value }) =>
      value.key === 'months' || value.key === 'second' || value.key === 'own-standing-in'
        ? missingOne(paper.file, `${field}.of`, value.of, idsOf('tasks', entries, lost), 'task')
        : [],
    ),
    ...rows.flatMap((row) => aboveTheCode(row, entries)),
    ...(lost.catalogues.size > 0 ? [] : itemFaults(rows, entries)),
    ...(lost.catalogues.size > 0 || lost.site.size > 0 ? [] : unwritten(entries)),
  ];
}

function twice(rows: readonly Row[]): readonly FileFault[] {
  return rows.flatMap(({ paper, field, value }, i) => {
    const first = rows.slice(0, i).find((r) => nameOf(r.value) === nameOf(value));
    if (first === undefined) return [];
    return [
      {
        file: paper.file,
        field,
        value: nameOf(value),
        message: `${first.paper.file} has adopted this value already`,
        todo: 'keep the one that is in force, and take the other out',
      },
    ];
  });
}

/** A site may ask for more than the code, never for less. */
function aboveTheCode({ paper, field, value }: Row, { rules }: Entries): readonly FileFault[] {
  if (value.key !== 'open-gap') return [];
  const rule = rules.map((r) => r.data).find((r) => r.kind === 'open gap');
  if (rule === undefined || value.value <= rule.limit) return [];
  const text = (length: Ticks) => formatLength(length, 64);
  return [
    {
      file: paper.file,
      field: `${field}.value`,
      value: text(value.value),
      message: `the code allows ${text(rule.limit)} at most, and a site may only ask for less`,
      todo: `write ${text(rule.limit)} or less, or take the value out`,
    },
  ];
}

function itemFaults(rows: readonly Row[], { catalogues }: Entries): readonly FileFault[] {
  const { catalogue } = catalogueOf(catalogues.map((c) => c.data));
  const ids = new Set(catalogue.keys());
  return rows.flatMap(({ paper: { file }, field, value }) => {
    if (value.key !== 'item') return [];
    const item = catalogue.get(value.of);
    if (item === undefined) return missingOne(file, `${field}.of`, value.of, ids, 'catalogue item');
    const own = new Set(valuesOf(item));
    return value.value === 'all'
      ? []
      : value.value.flatMap((name, i) => missingOne(file, `${field}.value[${i}]`, name, own, 'value'));
  });
}

/** Items that say they are adopted, where no paper adopts them. */
function unwritten({ catalogues, site }: Entries): readonly FileFault[] {
  const adopted = adoptedOf(site.map((s) => s.data));
  return catalogues.flatMap(({ file, data }) =>
    data.items.flatMap((item, i) => {
      const [held] = [...withAdopted(new Map([[item.id, item]]), adopted).values()];
      const claims = valuesOf(item).filter((field) => isAdopted(item, field));
      const open = claims.filter((field) => held?.papers?.[field] === undefined);
      if (open.length === 0) return [];
      return [
        {
          file,
          field: `items[${i}]`,
          value: item.id,
          message: `adopted by the site, says the catalogue, and no paper of content/site adopts ${open.join(', ')}`,
          todo: 'write the paper in content/site: document, by whom, on what day',
        },
      ];
    }),
  );
}
