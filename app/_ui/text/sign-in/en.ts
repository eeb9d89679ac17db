// Words of the sign-in page; English is the source.

export const en = {
  title: 'Sign in',
  'title-first': 'Set up this shop',
  'first-why':
    'Nobody has worked here yet. Name the shop and make the first account, a manager. The manager adds the formulators and all others in the office.',
  name: 'Name',
  'name-hint': 'What you sign in with',
  password: 'Password',
  'new-password-hint': 'At least 12 characters. A password manager may fill it in.',
  'full-name': 'Full name',
  'shop-name': 'Name of the shop',
  'shop-code': 'Two letters for batch codes',
  'shop-code-hint': 'They begin every batch code, such as ML',
  zone: 'Time zone',
  station: 'Where do you work?',
  'station-none': 'No fixed place',
  'sign-in': 'Sign in',
  'set-up': 'Set up this shop',
  'wrong-name-or-password': 'That name and password do not go together. Try again.',
  locked: 'Too many wrong passwords. Wait 15 minutes, or ask a manager.',
  'unknown-station': 'That place is no longer here. Reload the page.',
  'accounts-exist': 'This shop has accounts already. Reload the page and sign in.',
  'name-taken': 'That name is taken. Choose another.',
  'shop-exists': 'This shop is set up already. Reload the page and sign in.',
  'unknown-zone': 'Choose a time zone from the list.',
  unreachable: 'The shop’s server does not answer. Check that it runs, then try again.',
  problem: 'That did not work: {title}. {detail}',
} as const;

export type SignInKey = keyof typeof en;
