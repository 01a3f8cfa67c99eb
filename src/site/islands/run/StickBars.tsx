import { pagePalette } from '../../../drawing/palette.ts';
import { drawSticks } from '../../../drawing/sticks/sticks.ts';
import type { Takeoff } from '../../../run/takeoff.ts';
import type { Ticks } from '../../../trade/length.ts';
import type { Speak } from '../../speak.ts';

interface Props {
  readonly plans: Takeoff['sticks'];
  readonly several: boolean;
  /** What one cut takes. */
  readonly kerf: Ticks;
  readonly speak: Speak;
}

/** The stock lengths of each tray as bars to scale. Beside the figure there is no more room than on a phone. */
export function StickBars({ plans, several, kerf, speak }: Props) {
  return (
    <>
      {plans.map(({ tray, lengths }) => (
        <div className="figure" key={tray}>
          {several && <p className="label">{tray}</p>}
          <div
            // biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text
            dangerouslySetInnerHTML={{
              __html: drawSticks({ lengths, kerf }, { form: 'phone', palette: pagePalette, speak }).svg,
            }}
          />
        </div>
      ))}
    </>
  );
}
