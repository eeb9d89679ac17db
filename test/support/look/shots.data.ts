// Which sheet is taken at which size.

export interface Shot {
  readonly file: string;
  readonly query: string;
  readonly width: number;
  readonly height: number;
  readonly whole?: boolean;
}

const panel = { width: 1080, height: 1920 } as const;
const tablet = { width: 1280, height: 800 } as const;
const laptop = { width: 1440, height: 900 } as const;
const phone = { width: 390, height: 844 } as const;

export const shots: readonly Shot[] = [
  { file: 'kiosk-attract', query: 'sheet=attract', ...panel },
  { file: 'kiosk-attract-tablet', query: 'sheet=attract', ...tablet },
  { file: 'kiosk-attract-phone', query: 'sheet=attract', ...phone },
  { file: 'kiosk-question', query: 'sheet=question', ...panel },
  { file: 'kiosk-question-200', query: 'sheet=question&text=200', ...panel },
  { file: 'kiosk-question-low', query: 'sheet=question&reach=low', ...panel },
  { file: 'kiosk-question-arabic', query: 'sheet=arabic&lang=ar', ...panel },
  { file: 'kiosk-question-tablet', query: 'sheet=question', ...tablet },
  { file: 'kiosk-question-tablet-200', query: 'sheet=question&text=200', ...tablet },
  { file: 'kiosk-question-tablet-10', query: 'sheet=question&screen=tablet-10', ...tablet },
  { file: 'kiosk-question-phone', query: 'sheet=question', ...phone },
  { file: 'kiosk-results', query: 'sheet=results', ...panel },
  { file: 'kiosk-cautions', query: 'sheet=cautions', ...panel },
  { file: 'kiosk-code', query: 'sheet=code', ...panel },
  { file: 'kiosk-outcome', query: 'sheet=outcome', ...panel },
  { file: 'kiosk-timeout', query: 'sheet=timeout', ...panel },
  { file: 'kiosk-attract-200', query: 'sheet=attract&text=200', ...panel },
  { file: 'kiosk-results-200', query: 'sheet=results&text=200', ...panel },
  { file: 'kiosk-results-tablet', query: 'sheet=results', ...tablet },
  { file: 'kiosk-results-phone', query: 'sheet=results', ...phone },
  { file: 'kiosk-cautions-200', query: 'sheet=cautions&text=200', ...panel },
  { file: 'kiosk-cautions-phone', query: 'sheet=cautions', ...phone },
  { file: 'kiosk-code-200', query: 'sheet=code&text=200', ...panel },
  { file: 'kiosk-outcome-200', query: 'sheet=outcome&text=200', ...panel },
  { file: 'kiosk-outcome-tablet', query: 'sheet=outcome', ...tablet },
  { file: 'kiosk-timeout-200', query: 'sheet=timeout&text=200', ...panel },
  { file: 'bench-queue', query: 'sheet=queue', ...tablet },
  { file: 'bench-light', query: 'sheet=light', ...tablet },
  { file: 'bench-moving', query: 'sheet=moving', ...tablet },
  { file: 'bench-stable', query: 'sheet=stable', ...tablet },
  { file: 'bench-heavy', query: 'sheet=heavy', ...tablet },
  { file: 'bench-no-reading', query: 'sheet=no-reading', ...tablet },
  { file: 'bench-rescue', query: 'sheet=rescue', ...tablet },
  { file: 'bench-typed', query: 'sheet=typed', ...tablet },
  { file: 'office-home', query: 'sheet=home', ...laptop },
  { file: 'office-home-narrow', query: 'sheet=home', width: 720, height: 900 },
  { file: 'office-what-if', query: 'sheet=what-if', ...laptop },
  { file: 'office-review', query: 'sheet=review', ...laptop },
  { file: 'office-publish', query: 'sheet=publish', ...laptop },
  { file: 'pieces', query: 'sheet=pieces', width: 1440, height: 900, whole: true },
];
