/** A day in an address: its number, or the place of it in a pattern. */
type DayInAddress = number | ':day';

/**
 * Every address the browser asks, in one table. Windows are typed in `windows/`, request bodies in `requests/`.
 * A refusal is status 422 (or 409 where the log has moved on) with a body of type `Refused`.
 */
export const ROUTES = {
  start: '/api/start', // GET StartWindow, POST OpenRequest
  house: '/api/house', // GET HouseWindow
  desk: '/api/desk', // GET DeskWindow
  sheet: (person: string) => `/api/people/${person}/sheet`, // GET SheetWindow
  road: (person: string) => `/api/people/${person}/road`, // GET RoadWindow
  capacity: (person: string) => `/api/people/${person}/capacity`, // GET CapacityWindow
  crossing: (person: string) => `/api/people/${person}/crossing`, // GET ?exercise= CrossingWindow
  record: (person: string) => `/api/people/${person}/record`, // GET RecordWindow
  plannedCard: (person: string, day: DayInAddress) => `/api/people/${person}/cards/${day}`, // GET CardWindow
  weekText: (person: string, from: DayInAddress) => `/api/people/${person}/week-text/${from}`, // GET WeekTextWindow
  working: (person: string, day: DayInAddress, item: string) => `/api/people/${person}/workings/${day}/${item}`, // GET WorkingWindow
  issuePreview: (person: string) => `/api/people/${person}/issue-preview`, // POST IssuePreviewRequest → IssuePreviewWindow
  issue: (person: string) => `/api/people/${person}/issue`, // POST IssueRequest → { cards: CardId[] }
  written: (person: string) => `/api/people/${person}/written`, // POST WrittenRequest → WrittenWindow
  cells: (person: string) => `/api/people/${person}/cells`, // POST CellsRequest → CellsWindow
  writeCells: (person: string) => `/api/people/${person}/cells/write`, // POST WriteCellsRequest → { before: CellAsked[] }
  lift: (exercise: string) => `/api/lifts/${exercise}`, // GET LiftWindow
  adjust: (person: string) => `/api/people/${person}/adjust`, // POST AdjustRequest
  reMake: (person: string, day: DayInAddress) => `/api/people/${person}/re-make/${day}`, // GET ReMakeWindow
  reMade: (person: string) => `/api/people/${person}/re-made`, // POST ReMakeRequest → ReMadeWindow
  reMakeSigned: (person: string) => `/api/people/${person}/re-make`, // POST SignedReMakeRequest → ReMadeAnswer
  policy: (person: string) => `/api/people/${person}/policy`, // POST PolicyRequest
  follow: (person: string) => `/api/people/${person}/follow`, // POST FollowRequest
  card: (card: string) => `/api/cards/${card}`, // GET CardWindow; a typed code such as K7QF-2M9X works too
  proposal: (proposal: string) => `/api/proposals/${proposal}`, // POST AnswerProposalRequest
  facts: '/api/facts', // POST RecordRequest → { facts: Fact[] }
  retract: '/api/facts/retract', // POST RetractRequest
  programmes: '/api/programmes', // GET ProgrammesWindow
  compareProgramme: '/api/programmes/compare', // POST CompareProgrammeRequest → ComparisonWindow
  takeUpProgramme: '/api/programmes/take-up', // POST TakeUpProgrammeRequest → { version, number, following }
  settings: '/api/settings', // GET SettingsWindow
  bringInRead: '/api/bring-in/read', // POST the file's bytes (header X-File-Name) → { reading: TableReading, ticket: string }
  bringInPlan: '/api/bring-in/plan', // POST { ticket, matching, answers } → BringInPlan without drafts
  bringInTake: '/api/bring-in/take', // POST { ticket, matching, answers, signer } → { recorded: number } or Refused
  exportAll: '/api/export', // GET ?audience= → JSON file
  exportReveals: '/api/export/reveals', // GET ?audience= → what it reveals, by kind
  backup: '/api/backup', // POST { signer } → { path, bytes, facts }
} as const;
