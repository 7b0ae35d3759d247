import type { Context } from 'hono';
import type { z } from 'zod';
import type { Known } from '#domain/known.ts';
import type { Road } from '#domain/road.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { bodyOf, nothingThere, notOpen, refuse } from './replies.ts';
import type { OpenHouse, Serving } from './serving.ts';
import { knownPerson } from './windows/person-head.ts';

type Handled = Response | Promise<Response>;

/** Handlers for when data is open. */
export const withHouse =
  (serving: Serving, handle: (context: Context, house: OpenHouse) => Handled) =>
  (context: Context): Handled => {
    const house = serving.house();
    return house ? handle(context, house) : notOpen(context);
  };

export interface Person {
  readonly house: OpenHouse;
  readonly snapshot: Snapshot;
  readonly known: Known;
  readonly road: Road;
}

/** Handlers for a person that the address names. */
export const withPerson = (serving: Serving, handle: (context: Context, person: Person) => Handled) =>
  withHouse(serving, (context, house) => {
    const snapshot = house.snapshot();
    const known = knownPerson(snapshot, context.req.param('person') ?? '');
    const road = known && snapshot.road(known.person);
    return known && road ? handle(context, { house, snapshot, known, road }) : nothingThere(context, 'person');
  });

/** Reads the body by its schema, then handles it. */
export const withBody = async <Output>(
  context: Context,
  schema: z.ZodType<Output>,
  handle: (body: Output) => Handled,
): Promise<Response> => {
  const reading = await bodyOf(context, schema);
  return reading.kind === 'read' ? handle(reading.body) : refuse(context, 422, ...reading.problems);
};
