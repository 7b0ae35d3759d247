import { lazy, Suspense } from 'react';
import { Link, Route, Switch } from 'wouter';
import { CardPage } from './pages/card/card-page.tsx';
import { PlannedCardPage } from './pages/card/planned-card-page.tsx';
import { PrintWeekPage } from './pages/card/print-week-page.tsx';
import { DeskPage } from './pages/desk/desk-page.tsx';
import { SheetPage } from './pages/sheet/sheet-page.tsx';
import { Empty, Page } from './parts/page.tsx';

/** Fetched when they are first gone to. */
const CapacityPage = lazy(() => import('./pages/capacity/capacity-page.tsx'));
const CrossingPage = lazy(() => import('./pages/crossing/crossing-page.tsx'));
const EvidencePage = lazy(() => import('./pages/evidence/evidence-page.tsx'));
const InAndOutPage = lazy(() => import('./pages/in-and-out/in-and-out-page.tsx'));
const LiftPage = lazy(() => import('./pages/lift/lift-page.tsx'));
const ProgrammeEditorPage = lazy(() => import('./pages/programmes/editor/editor-page.tsx'));
const ProgrammesPage = lazy(() => import('./pages/programmes/programmes-page.tsx'));
const ReMakePage = lazy(() => import('./pages/re-make/re-make-page.tsx'));
const RecordPage = lazy(() => import('./pages/record/record-page.tsx'));
const RoadPage = lazy(() => import('./pages/road/road-page.tsx'));
const SettingsPage = lazy(() => import('./pages/settings/settings-page.tsx'));

const NothingHere = () => (
  <Page title="There is no such page">
    <Empty>
      The address may have been mistyped. <Link href="/">Go to the Desk.</Link>
    </Empty>
  </Page>
);

/** Every page has an address. */
export const Routes = () => (
  <Suspense fallback={<p className="soft">Reading …</p>}>
    <Switch>
      <Route path="/" component={DeskPage} />
      <Route path="/programmes" component={ProgrammesPage} />
      <Route path="/programmes/:version/edit" component={ProgrammeEditorPage} />
      <Route path="/evidence" component={EvidencePage} />
      <Route path="/in-and-out" component={InAndOutPage} />
      <Route path="/settings" component={SettingsPage} />
      <Route path="/lift/:exercise" component={LiftPage} />
      <Route path="/people/:person" component={SheetPage} />
      <Route path="/people/:person/road" component={RoadPage} />
      <Route path="/people/:person/capacity" component={CapacityPage} />
      <Route path="/people/:person/crossing" component={CrossingPage} />
      <Route path="/people/:person/record" component={RecordPage} />
      <Route path="/people/:person/cards/:day" component={PlannedCardPage} />
      <Route path="/people/:person/re-make/:day" component={ReMakePage} />
      <Route path="/people/:person/print/:from" component={PrintWeekPage} />
      <Route path="/cards/:card" component={CardPage} />
      <Route component={NothingHere} />
    </Switch>
  </Suspense>
);
