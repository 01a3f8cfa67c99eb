const n = (v: number) => String(Math.round(v * 100) / 100);

/** A revision cloud round a box: arcs bulging outwards by less than 6 px, about 15 px each, two a side at least. */
export function cloudPath(x: number, y: number, w: number, h: number): string {
  const bump = 15.3;
  const [across, down] = [Math.max(2, Math.round(w / bump)), Math.max(2, Math.round(h / bump))];
  const [dx, dy] = [w / across, h / down];
  const arc = (ex: number, ey: number) => {
    const r = Math.max(Math.abs(ex), Math.abs(ey)) * 0.56;
    return `a${n(r)} ${n(r)} 0 0 1 ${n(ex)} ${n(ey)}`;
  };
  return `M${n(x)} ${n(y)}${arc(dx, 0).repeat(across)}${arc(0, dy).repeat(down)}${arc(-dx, 0).repeat(across)}${arc(0, -dy).repeat(down)}Z`;
}
