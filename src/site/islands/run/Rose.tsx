import type { Axis, Way } from '../../../run/edit/ways.ts';
import type { Tell } from '../../speak.ts';

/** Ends of the drawn arrows from the middle of the rose, 328 by 232: east runs right and down, north right and up. */
const TO: Readonly<Record<Axis, readonly [number, number]>> = {
  N: [51, -29.5],
  E: [51, 29.5],
  S: [-51, 29.5],
  W: [-51, -29.5],
  U: [0, -60],
  D: [0, 60],
};
const MIDDLE = [164, 116] as const;

/** A drawn arrow of a direction; dashed and without a head where the way cannot be. */
export function axisLine(axis: Axis, open: boolean, scale = 1, [cx, cy]: readonly [number, number] = MIDDLE) {
  const [x, y] = TO[axis];
  const [ex, ey] = [cx + x * scale, cy + y * scale];
  const long = Math.hypot(x, y);
  const [ux, uy] = [x / long, y / long];
  const back = [ex - ux * 13, ey - uy * 13] as const;
  const n = (v: number) => Math.round(v * 100) / 100;
  if (!open)
    return (
      <path
        key={axis}
        d={`M${cx} ${cy}L${n(ex)} ${n(ey)}`}
        stroke="var(--line)"
        strokeWidth="1.4"
        strokeDasharray="7 3.5"
      />
    );
  return (
    <g key={axis}>
      <path d={`M${cx} ${cy}L${n(back[0])} ${n(back[1])}`} stroke="var(--ink)" strokeWidth="2.2" />
      <path
        d={`M${n(ex)} ${n(ey)}L${n(back[0] - uy * 3)} ${n(back[1] + ux * 3)}L${n(back[0] + uy * 3)} ${n(back[1] - ux * 3)}Z`}
        fill="var(--ink)"
      />
    </g>
  );
}

interface Props {
  readonly ways: readonly Way[];
  readonly chosen: Axis | null;
  readonly onWay: (axis: Axis) => void;
  readonly describedBy: string;
  readonly tell: Tell;
}

/** Six drawn arrows on isometric axes, 48 px to touch; a way that cannot be is a dashed line without a box. */
export function Rose({ ways, chosen, onWay, describedBy, tell }: Props) {
  return (
    <div className="rose" aria-describedby={describedBy}>
      <svg viewBox="0 0 328 232" width="328" height="232" aria-hidden="true" focusable="false" fill="none">
        {ways.map(({ axis, choice }) => axisLine(axis, choice !== null))}
        <circle cx={MIDDLE[0]} cy={MIDDLE[1]} r="5" fill="var(--ink)" />
      </svg>
      {ways.map(({ axis, choice }) =>
        choice === null ? (
          <span key={axis} className={`stand ${axis} off`} aria-hidden="true">
            <span>{tell(`yourRun.letter-${axis}`)}</span>
          </span>
        ) : (
          <label key={axis} className={`stand ${axis}`}>
            <input
              type="radio"
              name="way"
              value={axis}
              aria-label={tell(`yourRun.dir-${axis}`)}
              checked={chosen === axis}
              onChange={() => onWay(axis)}
            />
            <span aria-hidden="true">{tell(`yourRun.letter-${axis}`)}</span>
          </label>
        ),
      )}
    </div>
  );
}
