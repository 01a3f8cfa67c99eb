import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { pagePalette } from '../../../../drawing/palette.ts';
import type { TapGiven, TapTarget } from '../../../../drawing/tap/given.ts';
import { drawTap } from '../../../../drawing/tap/tap.ts';
import type { Speak } from '../../../speak.ts';

interface Props extends TapGiven {
  /** The control of a target; it fills the box it is laid in. */
  readonly control: (target: TapTarget) => ReactNode;
  readonly speak: Speak;
}

/** Width from which two columns find room, and below which the small figure is drawn, px. */
const DESK = 648;
const PHONE = 328;

/**
 * The tapped run with a control over every target. It is drawn for the room it has, never shrunk: a target of 48 px stays
 * one. Rendered only once script runs: the places of the controls are set by script, which the page's policy allows.
 */
export function TapFigure({ control, speak, resolved, tap, chosen, found, ringed }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState(PHONE);
  useEffect(() => {
    const box = frame.current;
    if (box === null) return;
    const measure = () => setRoom(box.clientWidth);
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  const form = room >= DESK ? 'desk' : 'phone';
  const tiny = room < PHONE;
  const { svg, width, height, targets } = useMemo(
    () => drawTap({ resolved, tap, chosen, found, ringed, tiny }, { form, palette: pagePalette, speak }),
    [resolved, tap, chosen, found, ringed, tiny, form, speak],
  );
  return (
    <div className="tap-room" ref={frame}>
      <div className="tap" style={{ width, height }}>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text; it is no reader's input */}
        <div className="figure" dangerouslySetInnerHTML={{ __html: svg }} />
        {targets.map((target) => (
          <div className="tap-box" key={target.key} style={{ left: target.box.x, top: target.box.y }}>
            {control(target)}
          </div>
        ))}
      </div>
    </div>
  );
}
