import { z } from 'zod';

/** A record of these fields and no others: what is not understood is not kept. */
export const record = <Shape extends z.core.$ZodLooseShape>(shape: Shape) =>
  z.strictObject(shape, { error: 'a record of named fields' });

/** Items of the first programmes and cards are lifts, and say no kind. What is no record stays what it is, to be refused. */
export const asLiftWhereUnsaid = (json: unknown): unknown =>
  typeof json === 'object' && json !== null && !Array.isArray(json) && !('kind' in json)
    ? { ...json, kind: 'lift' }
    : json;
