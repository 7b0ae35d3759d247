import type { Hono } from 'hono';
import { ROUTES } from '#contract/routes.ts';
import { cellsRequest, writeCellsRequest, type CellAsked } from '#contract/requests/requests.ts';
import { day } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import type { CellChange } from '#actions/cell-change.ts';
import { writeCells } from '#actions/write-cells.ts';
import { nothingThere, reply } from '../replies.ts';
import type { Serving } from '../serving.ts';
import { withBody, withHouse, withPerson } from '../with-house.ts';
import { cellsWindow } from '../windows/cells-window.ts';
import { liftWindow } from '../windows/lift-window.ts';

const PERSON = ':person';

/** Cells of a sheet, several at once; and one lift of all people. */
export const cellRoutes = (app: Hono, serving: Serving): void => {
  app.post(
    ROUTES.cells(PERSON),
    withPerson(serving, (context, { known, road }) =>
      withBody(context, cellsRequest, ({ cells }) => context.json(cellsWindow(known, road, cells.map(cellChange)))),
    ),
  );
  app.post(
    ROUTES.writeCells(PERSON),
    withPerson(serving, (context, { house, known: { person } }) =>
      withBody(context, writeCellsRequest, async ({ signer, cells, reason, basis }) =>
        reply(
          context,
          await writeCells(house.workplace, {
            person,
            signer: idOf(signer),
            cells: cells.map(cellChange),
            reason,
            basis,
          }),
          ({ result }) => result,
        ),
      ),
    ),
  );
  app.get(
    ROUTES.lift(':exercise'),
    withHouse(serving, (context, house) => {
      const found = liftWindow(house.snapshot(), idOf(context.req.param('exercise') ?? '?'));
      return found ? context.json(found) : nothingThere(context, 'exercise');
    }),
  );
};

const cellChange = ({ track, day: on, change }: CellAsked): CellChange => ({
  track: idOf(track),
  day: day(on),
  change,
});
