import type { Hono } from 'hono';
import { ROUTES } from '#contract/routes.ts';
import type { Serving } from '../serving.ts';
import { deskWindow } from '../windows/desk-window.ts';
import { houseWindow } from '../windows/house-window.ts';
import { programmesWindow } from '../windows/programmes-window.ts';
import { settingsWindow } from '../windows/settings-window.ts';
import { withHouse } from '../with-house.ts';

export const houseRoutes = (app: Hono, serving: Serving): void => {
  app.get(
    ROUTES.house,
    withHouse(serving, (context, { snapshot, workplace }) =>
      context.json(houseWindow(snapshot(), workplace.store.about.kind)),
    ),
  );
  app.get(
    ROUTES.desk,
    withHouse(serving, (context, { snapshot }) => context.json(deskWindow(snapshot()))),
  );
  app.get(
    ROUTES.programmes,
    withHouse(serving, (context, { snapshot }) => context.json(programmesWindow(snapshot()))),
  );
  app.get(
    ROUTES.settings,
    withHouse(serving, (context, { snapshot }) => context.json(settingsWindow(snapshot()))),
  );
};
