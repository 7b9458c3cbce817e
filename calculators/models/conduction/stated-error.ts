/**
 * The error of a freezing time that the mesh brings, as a part of it, by cells across the thinnest section:
 * what was seen against meshes eight times finer for plates, bars and balls in sand and on chills, with
 * the worst of them inside. Half of it or less is usual where the metal freezes over a range.
 */
export const statedError = (cellsAcross: number): number => 0.015 + 0.9 / cellsAcross ** 2;
