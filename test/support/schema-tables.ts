// Every table of the schema by the name of its constant, for tests that walk over all of them.
import * as afterwards from '#db/schema-afterwards.ts';
import * as bench from '#db/schema-bench.ts';
import * as editions from '#db/schema-editions.ts';
import * as lots from '#db/schema-lots.ts';
import * as orders from '#db/schema-orders.ts';
import * as people from '#db/schema-people.ts';
import * as release from '#db/schema-release.ts';
import * as shop from '#db/schema-shop.ts';

export const schema: Readonly<Record<string, unknown>> = {
  ...afterwards,
  ...bench,
  ...editions,
  ...lots,
  ...orders,
  ...people,
  ...release,
  ...shop,
};
