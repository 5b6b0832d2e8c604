package org.amberyard.report.papers;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.ShopHoursChart;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.TaskEvent;
import org.amberyard.report.TaskSheet;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;

/** The calendar of the shop: work by year, by month of the first year, and every task of that year. */
final class ShopPaper {
    private static final String TITLE = "Shop calendar";
    private static final double CHART_HEIGHT = 0.45;

    private final PaperInput in;

    private ShopPaper(PaperInput in) {
        this.in = in;
    }

    static Document of(PaperInput in) {
        ShopPaper paper = new ShopPaper(in);
        return new Document("shop-calendar", TITLE, in.study().name(), in.documentFacts(), in.running(TITLE), "",
                List.of(paper.years(), paper.months(), paper.tasks()));
    }

    private Section years() {
        return Section.of("Work by year", new Block.Bullets(TaskSheet.CAUTIONS), new Block.Figure(ShopHoursChart.of(in.result(),
                in.planIndex(), in.system(),
                ChartTheme.light()), "Figure 1. Hours of the shop by year", CHART_HEIGHT), byYear());
    }

    private DataTable byYear() {
        return hours(new TableBuilder<ResultLine>("By year", "Table 1. Hours of the shop by year").year("Year", l -> l.year("year")))
                .optional("People trained for high voltage", "", CellFormat.WHOLE, l -> l.number("high_voltage_people"))
                .optional("Load of the shop", "%", CellFormat.decimals(1), l -> l.number("load"))
                .text("The shop is", 2, l -> l.text("verdict")).of(ResultLine.of(in, "shop_by_year"));
    }

    private static TableBuilder<ResultLine> hours(TableBuilder<ResultLine> table) {
        return table.sum("Drivers", "h", CellFormat.decimals(1), l -> l.number("driver_labour").orElse(0))
                .sum("Technicians", "h", CellFormat.decimals(1), l -> l.number("technician_labour").orElse(0))
                .sum("Senior technicians", "h", CellFormat.decimals(1), l -> l.number("senior_labour").orElse(0))
                .sum("High-voltage technicians", "h", CellFormat.decimals(1), l -> l.number("high_voltage_labour").orElse(0));
    }

    /** Tables of hours hold what failures ask for, lists of tasks cannot. */
    private String failures() {
        ShopCalendar shop = in.plan().shop(0);
        return "Of the " + hours(shop.events().stream().mapToDouble(TaskEvent::labourHours).sum()) + " h of " + in.calendar(0)
                + " in tables 1 and 2, " + hours(shop.failureHours())
                + " h are allowed for failures, which fall due on no day; the lists of tasks hold the other "
                + hours(shop.due().stream().mapToDouble(TaskEvent::labourHours).sum()) + " h.";
    }

    private static String hours(double hours) {
        return CellFormat.decimals(1).print(CellFormat.decimals(1).rounded(hours));
    }

    private Section months() {
        String first = String.valueOf(in.calendar(0));
        List<ResultLine> lines = ResultLine.of(in, "shop_by_month").stream().filter(l -> l.text("year").equals(first)).toList();
        return Section.of("Work by month, " + first, hours(new TableBuilder<ResultLine>("By month",
                "Table 2. Hours of the shop by month, " + first)
                .text("Month", 1.4, l -> l.text("month"))).note(failures()).of(lines));
    }

    /** A task of a bus. */
    private record Task(UpkeepYear of, TaskEvent event) {
    }

    private Section tasks() {
        List<Task> tasks = new ArrayList<>();
        in.plan().upkeep().stream().filter(u -> u.record().year() == 0)
                .forEach(u -> u.calendar().due().forEach(e -> tasks.add(new Task(u, e))));
        tasks.sort(Comparator.comparingInt((Task t) -> t.event().month()));
        List<Block> months = new ArrayList<>(List.of(new Block.Paragraph(TableBuilder.ADDS_UP), new Block.Paragraph(failures())));
        IntStream.range(0, Month.values().length).mapToObj(m -> month(m, tasks)).filter(t -> !t.rows().isEmpty())
                .forEach(months::add);
        return new Section("Tasks of " + in.calendar(0), false, true, months);
    }

    private DataTable month(int month, List<Task> tasks) {
        return new TableBuilder<Task>(MonthNames.full(month), MonthNames.full(month) + " " + in.calendar(0))
                .text("Bus", 0.9, t -> t.of().record().vehicle().unit()).text("Task", 3.8, t -> t.event().task().name())
                .number("Times", "", CellFormat.WHOLE, t -> t.event().times())
                .sum("Labour", "h", CellFormat.decimals(1), t -> t.event().labourHours())
                .sum("Parts", in.currency(), CellFormat.MONEY, t -> t.event().partsCost())
                .text("Who", 1.6, t -> t.event().task().skill().word()).sums("").toFill("Done on", 0.9).toFill("By", 0.9)
                .of(tasks.stream().filter(t -> t.event().month() == month).toList());
    }
}
