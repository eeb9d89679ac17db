// Fills of layers. Drawing only: they never colour a control, and real swatches come from the colour model.

export const earth = {
  cream: '#FBF8EF',
  oil: '#F0DFA6',
  kaolin: '#EBE3D2',
  illite: '#A9B58F',
  green: '#577A5B',
  rust: '#B4623F',
  rose: '#CB978B',
  slate: '#66757B',
  ochre: '#D6A94F',
  sand: '#DCCB9E',
  umber: '#7A4E3A',
  blue: '#5B7A94',
  humectant: '#D9DDD6',
  botanical: '#D9DFC8',
  vitamin: '#E7E0E4',
  acid: '#F1DDCB',
  preservative: '#DDD7E6',
} as const;

/** Chart colours, each 3:1 or more on paper; always with a hatch or a marker shape. */
export const chartColours = ['#15242B', '#1D4E9E', '#DC6271', '#7182B9', '#90362A', '#8B9300'] as const;
