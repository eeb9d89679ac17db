// Words of the front door and of the pages that say "not here" and "broken"; English is the source.

export const en = {
  title: 'Where do you want to go?',
  kiosk: 'Kiosk: choose a mask',
  bench: 'Bench: weigh and release jars',
  office: 'Office: rulebook, editions, sales',
  aid: 'Limits, label rules and exposure figures here are aids. Local law, your safety assessor and the suppliers’ safety data sheets decide.',
  'not-found': 'There is no such page',
  'not-found-text': 'Check the address, or start again from the front door.',
  'front-door': 'Front door',
  broken: 'Something broke on our side',
  'broken-text': 'Nothing you saved is lost. Try again; if it happens again, tell whoever looks after this program the number {digest}.',
  'try-again': 'Try again',
} as const;

export type FrontDoorKey = keyof typeof en;
