// Who may call what, written down a second time by hand. A route without a row here fails the test, and so does a row without a route.
import type { RouteRole } from '#app/_server/actor.ts';

const ANYONE: readonly RouteRole[] = ['anyone'];
const BENCH: readonly RouteRole[] = ['mixer', 'checker'];
const OFFICE: readonly RouteRole[] = ['formulator', 'manager'];
const STAFF: readonly RouteRole[] = ['mixer', 'checker', 'formulator', 'manager'];
const MANAGER: readonly RouteRole[] = ['manager'];
const FORMULATOR: readonly RouteRole[] = ['formulator'];

export const ROUTE_ROLES: Readonly<Record<string, readonly RouteRole[]>> = {
  'GET /api/health': ANYONE,
  'GET /api/rulebook-schema': ANYONE,
  'POST /api/sign-in': ANYONE,
  'POST /api/sign-out': ANYONE,
  'POST /api/first-account': ANYONE,
  'POST /api/kiosk/masks': ANYONE,
  'POST /api/kiosk/order': ANYONE,
  'POST /api/kiosk/what-fits': ANYONE,
  'POST /api/kiosk/why-not': ANYONE,
  'POST /api/bench/check': BENCH,
  'POST /api/bench/claim': BENCH,
  'POST /api/bench/close': BENCH,
  'POST /api/bench/collect': BENCH,
  'POST /api/bench/fitness': BENCH,
  'POST /api/bench/label-print': BENCH,
  'POST /api/bench/give-back': BENCH,
  'POST /api/bench/held-jar': BENCH,
  'GET /api/bench/lot': BENCH,
  'POST /api/bench/mend': BENCH,
  'GET /api/bench/order': BENCH,
  'POST /api/bench/ph-correction': BENCH,
  'GET /api/bench/queue': BENCH,
  'POST /api/bench/reading': BENCH,
  'POST /api/bench/release': BENCH,
  'POST /api/bench/resume': BENCH,
  'POST /api/bench/step': BENCH,
  'POST /api/bench/take-over': BENCH,
  'POST /api/bench/void': BENCH,
  'POST /api/office/account': MANAGER,
  'POST /api/office/draft': FORMULATOR,
  'GET /api/office/export': OFFICE,
  'POST /api/office/import': FORMULATOR,
  'POST /api/office/publish': FORMULATOR,
  'GET /api/office/sales': OFFICE,
  'POST /api/office/stop': STAFF,
  'POST /api/office/lift-stop': OFFICE,
  'POST /api/office/complaint': OFFICE,
  'POST /api/office/complaint-step': OFFICE,
};
