import type { Nutrient } from "halfloaf/food";
import type { Issue } from "halfloaf/quantity";
import { convertComponent, mostIn100g, toComponentUnit } from "./convertComponent.ts";
import { IssueLog, plain, quote } from "./IssueLog.ts";
import { makeOfficialFood, type OfficialFood, type TableReading } from "./OfficialTable.ts";
import { type RawFigures, unitOfNumber } from "./RawFigures.ts";

type Path = Issue["path"];

/** Gathers the foods of an official table, counts what is passed over and keeps what is at fault. */
export class TableBuilder {
  readonly log = new IssueLog();
  readonly foods = new Map<string, OfficialFood>();
  readonly titles = new Set<string>();
  otherRows = 0;
  private figures = 0;
  private otherComponents = 0;

  /** Adds a food whose id is not used yet, under the title of the table it belongs to. */
  addFood(title: string, food: Omit<OfficialFood, "contradictions">): undefined {
    this.titles.add(title);
    this.foods.set(food.id, makeOfficialFood(food));
  }

  /** Keeps one official figure where its component, unit and size are sound; what is faulty is told at `path`. */
  addFigure(raw: RawFigures, number: string, unitName: string, amount: number, path: Path): undefined {
    const unit = unitOfNumber(number);
    if (unit === undefined) {
      this.otherComponents++;
      return;
    }
    const given = toComponentUnit(unitName);
    const figure = given && convertComponent(amount, given, unit);
    if (figure === undefined) return this.fault("unit", path, unit, quote(unitName));
    if (!this.isInRange(figure, unit, path)) return;
    if (raw.add(number, figure)) this.figures++;
    else this.fault("figure-twice", path, "one figure of a component", String(amount));
  }

  /** Counts a figure that was kept elsewhere, if 100 g can hold as much; else tells so. */
  isInRange(figure: number, unit: ReturnType<typeof unitOfNumber> & string, path: Path): boolean {
    const most = mostIn100g(unit);
    if (figure <= most) return true;
    this.fault("range", path, `at most ${most} ${unit} in 100 g`, `${figure} ${unit}`);
    return false;
  }

  /** Counts the figures of a food that came without official numbers. */
  countFigures(composition: Readonly<Partial<Record<Nutrient, number>>>): void {
    this.figures += Object.keys(composition).length;
  }

  fault(code: string, path: Path, expected: string, received: string): undefined {
    this.log.tell({ code, path, expected, received });
  }

  /** Tells the faults of a part that stands at `path`. */
  tellAll(issues: readonly Issue[], path: Path): void {
    for (const { code, path: inner, expected, received } of issues) {
      this.fault(code, [...path, ...inner], expected, plain(received));
    }
  }

  finish(): TableReading {
    if (this.foods.size === 0) return this.end("failed");
    const { foods, figures, otherComponents, otherRows, log } = this;
    const counts = { foods: foods.size, figures, otherComponents, otherRows };
    const table = { title: [...this.titles].join(", "), foods };
    return { outcome: "read", table, counts, issues: log.issues, issueCount: log.count };
  }

  end(outcome: "stopped" | "failed"): TableReading {
    return { outcome, issues: this.log.issues, issueCount: this.log.count };
  }
}
