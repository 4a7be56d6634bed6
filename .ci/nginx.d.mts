export interface Running {
  /** The site of its own by http, which only leads to https. */
  http: string;
  /** The site of its own. */
  https: string;
  /** The hospital's site that has ours in /toes/. */
  hospital: string;
  /** Where its files lie. */
  folder: string;
  close(): Promise<void>;
}
export function whyNoNginx(): string | undefined;
export function startNginx(build: string, options?: { folderBuild?: string }): Promise<Running>;
