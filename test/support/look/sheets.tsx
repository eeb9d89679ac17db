// Sample pages made of the shared pieces alone, with made-up data: to be looked at beside each other.
import type { FunctionComponent } from 'react';
import { benchSheets } from './bench-sheets.tsx';
import { kioskSheets } from './kiosk-sheets.tsx';
import { officeSheets } from './office-sheets.tsx';

export const sheets: Readonly<Record<string, FunctionComponent>> = { ...kioskSheets, ...benchSheets, ...officeSheets };
