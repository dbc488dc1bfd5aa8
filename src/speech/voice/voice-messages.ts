/** What passes between the program and the voice's own process. */
export interface VoiceQuestion {
  readonly text: string;
  /** Of the file, in the folder that the process was given. */
  readonly name: string;
}

export interface VoiceAnswer {
  readonly name: string;
  readonly failure?: string;
}
