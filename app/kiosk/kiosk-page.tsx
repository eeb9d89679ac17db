'use client';
// Which page stands before the customer: what the server has to say comes first, then the page of the visit.
import type { ReactNode } from 'react';
import type { VisitPage } from '#lib/answers/visit.ts';
import { assertNever } from '#lib/base/invariant.ts';
import { CautionsPage } from './cautions-page.tsx';
import { CheckPage } from './check-page.tsx';
import { CodePage } from './code-page.tsx';
import type { KioskPageProps, Talk } from './kiosk-props.ts';
import { OutcomePage } from './outcome-page.tsx';
import { QuestionPage } from './question-page.tsx';
import { ResultsPage } from './results-page.tsx';
import { StartPage } from './start-page.tsx';
import { OfflinePage, ProblemPage, PulledPage, WaitingPage } from './talk-pages.tsx';
import { WhyNotPage } from './why-not-page.tsx';

interface WhichPage {
  readonly page: VisitPage;
  readonly talk: Talk;
}

export function KioskPage(props: KioskPageProps & WhichPage): ReactNode {
  const { page, talk, visit } = props;
  if (talk.kind === 'offline') return <OfflinePage {...props} wish={talk.wish} />;
  if (talk.kind === 'problem') return <ProblemPage {...props} detail={talk.detail} />;
  if (talk.kind === 'pulled') return <PulledPage {...props} />;
  switch (page.kind) {
    case 'start':
      return <StartPage {...props} />;
    case 'question':
      return <QuestionPage key={page.questionId} {...props} questionId={page.questionId} />;
    case 'check':
      return <CheckPage {...props} />;
    case 'outcome':
      return <OutcomePage {...props} />;
    case 'results':
      if (visit.found === null) return <WaitingPage {...props} />;
      return visit.found.kind === 'masks' ? <ResultsPage {...props} /> : <OutcomePage {...props} />;
    case 'why-not':
      return <WhyNotPage {...props} />;
    case 'cautions':
      return <CautionsPage {...props} isOrdering={talk.kind === 'asking'} />;
    case 'code':
      return <CodePage {...props} />;
    default:
      return assertNever(page);
  }
}
