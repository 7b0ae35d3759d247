import { z } from 'zod';

/** A record of these fields and no others: what is not understood is not kept. */
export const record = <Shape extends z.core.$ZodLooseShape>(shape: Shape) =>
  z.strictObject(shape, { error: 'a record of named fields' });
