// A name with raised letters that tell look-alikes apart ("NIACINamide"); readers hear the plain one.
import type { ReactNode } from 'react';

export const BenchName = ({ name, spokenName }: { readonly name: string; readonly spokenName?: string | undefined }): ReactNode =>
  spokenName === undefined ? (
    name
  ) : (
    <>
      <span aria-hidden="true">{name}</span>
      <span className="for-readers">{spokenName}</span>
    </>
  );
