import { textWidth } from '../../../drawing/glyphs.ts';
import type { Takeoff } from '../../../run/takeoff.ts';
import { fromInches } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  readonly plans: Takeoff['sticks'];
  readonly several: boolean;
  readonly tell: Tell;
}

/** Most bars that are drawn; the rest is said in a line. */
const MOST = 24;
const WIDTH = 325;

/** The stock lengths as bars to scale: what is cut from each, the saw line, what is left. */
export function StickBars({ plans, several, tell }: Props) {
  return (
    <>
      {plans.map(({ tray, lengths }) => (
        <div key={tray}>
          {several && <p className="label">{tray}</p>}
          {lengths.slice(0, MOST).map((bar, k) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: bars have no identity but their place
            <Bar key={k} bar={bar} number={k + 1} tell={tell} />
          ))}
          {lengths.length > MOST && (
            <p className="hint">{tell('yourRun.moreSticks', { count: lengths.length - MOST })}</p>
          )}
        </div>
      ))}
    </>
  );
}

type CutBar = Takeoff['sticks'][number]['lengths'][number];

function Bar({ bar, number, tell }: { bar: CutBar; number: number; tell: Tell }) {
  const left = shortLength(fromInches(bar.leftIn));
  const label =
    bar.leftIn === 0 ? tell('yourRun.stickWhole', { number }) : tell('yourRun.stick', { number, left });
  let x = 0;
  const px = (inch: number) => (inch / bar.fromIn) * WIDTH;
  const n = (v: number) => Math.round(v * 100) / 100;
  const spoken = bar.pieces
    .map(({ mark, in: long }) => `${mark ?? ''} ${shortLength(fromInches(long))}`)
    .join(', ');
  const saw =
    bar.pieces.length === 0
      ? 0
      : (bar.fromIn - bar.leftIn - bar.pieces.reduce((s, p) => s + p.in, 0)) / bar.pieces.length;
  const drawn = bar.pieces.map((piece) => {
    const from = x;
    x += px(piece.in + saw);
    return { ...piece, from, wide: px(piece.in) };
  });
  return (
    <figure className="stick-bar">
      <figcaption>{label}</figcaption>
      <svg viewBox="0 0 328 34" width="328" height="34" role="img" aria-label={spoken}>
        {bar.leftIn > 0 && (
          <rect
            x={n(Math.min(x, WIDTH - 2) + 1.5)}
            y="4"
            width={n(Math.max(1, WIDTH - x))}
            height="26"
            fill="none"
            stroke="var(--ink)"
            strokeWidth="1.25"
            strokeDasharray="18 3.5 3 3.5 3 3.5"
          />
        )}
        {drawn.map(({ mark = '', from, wide }) => (
          <g key={`${mark} ${from}`}>
            <rect
              x={n(from + 1.5)}
              y="4"
              width={n(Math.max(1, wide))}
              height="26"
              fill="var(--galv)"
              stroke="var(--ink)"
              strokeWidth="2.5"
            />
            {textWidth(mark, 15) + 8 < wide && (
              <text x={n(from + wide / 2 + 1.5)} y="22" textAnchor="middle" fontSize="15" fill="var(--ink)">
                {mark}
              </text>
            )}
          </g>
        ))}
        {bar.leftIn > 0 && (
          <path d={`M${n(x + 1.5)} 0V34`} stroke="var(--mark)" strokeWidth="2.5" fill="none" />
        )}
      </svg>
    </figure>
  );
}
