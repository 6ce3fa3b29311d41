/** Tells a fault of one treatment: the field within it, what is wrong, what would be right. */
export type TellFault = (field: string, wrong: string, right: string) => void;
