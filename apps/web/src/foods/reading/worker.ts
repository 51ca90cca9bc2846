import { expose } from "comlink";
import { TableDesk } from "./TableDesk.ts";

expose(new TableDesk());
