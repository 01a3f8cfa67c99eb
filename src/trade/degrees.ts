/** Sine and tangent of an angle in degrees, exact where the angle has a plain value: a cut of 45° is no hair off. */

export const radians = (deg: number): number => (deg * Math.PI) / 180;
export const sine = (deg: number): number => (deg === 30 ? 0.5 : Math.sin(radians(deg)));
export const tangent = (deg: number): number => (deg === 45 ? 1 : Math.tan(radians(deg)));
