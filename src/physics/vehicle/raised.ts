/**
 * A vehicle lifted off the road as a whole. Its parts keep their distances from one another, so its matrix is the one that
 * is factored already: only where the loops' flux meets it changes. The mesh stays that of the height it was made for,
 * which a difference of two heights wants anyway.
 */
import type { Body } from './body';

/** `by` metres, negative downwards. Exact for a body without a mirror; see the caller for one over a plane. */
export const raisedBody = (body: Body, by: number): Body => ({
  ...body,
  plates: body.plates.map((mesh) => ({
    ...mesh,
    plate: { ...mesh.plate, height: mesh.plate.height + by }
  })),
  rings: body.rings.map((path) => ({
    ...path,
    ring: { ...path.ring, height: path.ring.height + by },
    z: path.z.map((z) => z + by)
  }))
});
