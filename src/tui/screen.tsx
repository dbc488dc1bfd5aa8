/** Draws one state. No effects here: the app around it hears keys and does the work. */
import { Box, Text } from 'ink';
import { Foot, keyRows } from './components/foot.tsx';
import { Head, headRows } from './components/head.tsx';
import { Columns } from './components/line.tsx';
import { ClashesScreen } from './screens/clashes-screen.tsx';
import { DayScreen } from './screens/day-screen.tsx';
import { FigureScreen } from './screens/figure-screen.tsx';
import { FiguresScreen } from './screens/figures-screen.tsx';
import { HeardScreen } from './screens/heard-screen.tsx';
import { KeysScreen } from './screens/keys-screen.tsx';
import { MemosScreen } from './screens/memos-screen.tsx';
import { NextScreen } from './screens/next-screen.tsx';
import { RecordingScreen } from './screens/recording-screen.tsx';
import { RulesScreen } from './screens/rules-screen.tsx';
import { TasksScreen } from './screens/tasks-screen.tsx';
import { TranscriptsScreen } from './screens/transcripts-screen.tsx';
import { WhereScreen } from './screens/where-screen.tsx';
import type { ScreenState, View } from './state/screen-state.ts';

const SCREENS = {
  memos: MemosScreen,
  heard: HeardScreen,
  transcripts: TranscriptsScreen,
  clashes: ClashesScreen,
  figures: FiguresScreen,
  figure: FigureScreen,
  rules: RulesScreen,
  tasks: TasksScreen,
  day: DayScreen,
  next: NextScreen,
  where: WhereScreen,
  bench: RecordingScreen,
  keys: KeysScreen,
} as const;

const TITLES: Readonly<Record<View, string>> = {
  memos: 'Memos',
  heard: 'What was heard',
  transcripts: 'What each engine heard',
  clashes: 'What clashes',
  figures: 'Figures',
  figure: 'One figure',
  rules: 'Limits and checks',
  tasks: 'Tasks',
  day: 'The day',
  next: 'What is next',
  where: 'Where was I',
  bench: 'At the bench',
  keys: 'Keys here',
};

/** Whether something that was asked for is still on its way: told by a sign, so that a slow answer is not taken for none. */
const isUnderWay = ({ underWay }: ScreenState) => underWay.readings + underWay.writings > 0;

export interface ScreenSize {
  readonly columns: number;
  readonly rows: number;
}

export function Screen({ state, columns, rows }: { readonly state: ScreenState } & ScreenSize) {
  const View = SCREENS[state.view];
  const footRows = (state.typing ? 1 : keyRows(state, columns, rows)) + (state.message?.lines.length ?? 0);
  // Title and the blank line above the footer. One row stays free: a full last row makes terminals scroll.
  const height = Math.max(1, rows - headRows(state) - footRows - 3);
  return (
    <Columns value={columns}>
      <Box flexDirection="column" width={columns} height={rows - 1}>
        <Head state={state} />
        <Text bold underline>
          {TITLES[state.view] + (isUnderWay(state) ? ' …' : '')}
        </Text>
        <Box flexGrow={1} flexDirection="column" height={height} overflowY="hidden">
          <View state={state} height={height} columns={columns} />
        </Box>
        <Foot state={state} columns={columns} rows={rows} />
      </Box>
    </Columns>
  );
}
