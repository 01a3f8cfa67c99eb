import type { RunFile } from '../../../run/edit/file.ts';
import { trayWords } from '../../run/words.ts';
import type { World } from '../../run/workOut.ts';
import type { Tell } from '../../speak.ts';
import { TextField } from '../TextField.tsx';

interface Props {
  readonly file: RunFile;
  readonly world: World;
  readonly onFile: (file: RunFile, what: string) => void;
  readonly tell: Tell;
}

/** What stands on the sheet beside the run, and which channel it is of. */
export function About({ file, world, onFile, tell }: Props) {
  const trays = [...world.catalogue.values()].flatMap((item) => (item.kind === 'tray' ? [item] : []));
  const ends = file.run.legs.filter(
    ({ id }) => !file.run.legs.some(({ from }) => from === id || from.startsWith(`${id}:`)),
  );
  const own = trays.find(({ id }) => id === file.run.tray);
  return (
    <details className="opens" open={file.run.legs.length === 0 ? true : undefined}>
      <summary>
        {tell('yourRun.about')} <b>{own === undefined ? '' : trayWords(own, tell)}</b>
      </summary>
      <div className="fields run-fields">
        <div>
          <label htmlFor="run-tray">{tell('yourRun.channel')}</label>
          <select
            id="run-tray"
            value={file.run.tray}
            onChange={(event) =>
              onFile(
                { ...file, run: { ...file.run, tray: event.currentTarget.value } },
                tell('yourRun.channel'),
              )
            }
          >
            {trays.map((tray) => (
              <option key={tray.id} value={tray.id}>
                {trayWords(tray, tell)}
              </option>
            ))}
          </select>
        </div>
        {(['number', 'name', 'place', 'crew'] as const).map((part) => (
          <TextField
            key={part}
            id={`run-${part}`}
            label={tell(`yourRun.about-${part}`)}
            value={file[part]}
            onValue={(value) =>
              onFile({ ...file, [part]: value.slice(0, 200) }, tell(`yourRun.about-${part}`))
            }
          />
        ))}
        <TextField
          id="run-tag-start"
          label={tell('yourRun.tagStart')}
          value={file.tags.start}
          onValue={(start) =>
            onFile({ ...file, tags: { ...file.tags, start: start.slice(0, 200) } }, tell('yourRun.tagStart'))
          }
        />
        {ends.map(({ id }) => (
          <TextField
            key={id}
            id={`run-tag-${id}`}
            label={tell('yourRun.tagEnd', { leg: id })}
            value={file.tags.ends[id] ?? ''}
            onValue={(tag) =>
              onFile(
                { ...file, tags: { ...file.tags, ends: { ...file.tags.ends, [id]: tag.slice(0, 200) } } },
                tell('yourRun.tagEnd', { leg: id }),
              )
            }
          />
        ))}
      </div>
    </details>
  );
}
