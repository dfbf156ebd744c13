export interface Message {
  id: string;
  text: string;
}
export interface File {
  file: string;
  path: string;
  text: string;
}
export function files(language: string): File[];
export function messages(text: string): Message[];
export function catalogue(language: string): Map<string, Message & { file: string }>;
export function putIn(text: string): string[];
export function cases(text: string): string[];
export function prose(text: string): string;
export function differences(language: string): string[];
