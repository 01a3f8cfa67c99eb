/** The trays of the catalogue with their load tables, as the span's list shows them. Build time only. */
import type { Library } from '../../schema/library.ts';
import { loadedTray } from '../../schema/mechanicsInputs.ts';
import type { TradeTables } from '../../schema/tradeTables.ts';
import { inchNumber } from '../../trade/shortLength.ts';
import type { Tell } from '../speak.ts';
import type { SpanData } from './span.ts';

export const spanData = (library: Library, _: TradeTables, tell: Tell): SpanData => ({
  trays: [...library.catalogue.values()].flatMap((item) =>
    item.kind === 'tray'
      ? [
          {
            text: tell('spanSum.trayText', {
              id: item.id,
              width: inchNumber(item.width),
              metal: tell(`metal.${item.metal}`).toLowerCase(),
            }),
            tray: loadedTray(item),
          },
        ]
      : [],
  ),
});
