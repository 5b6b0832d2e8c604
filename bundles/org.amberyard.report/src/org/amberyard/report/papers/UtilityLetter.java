package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.DayLoadChart;
import org.amberyard.charts.ServiceLoadChart;
import org.amberyard.charts.YardDay;
import org.amberyard.charts.YardLoads;
import org.amberyard.core.yard.YardYear;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;

/** The load letter to the utility: what is asked for, the load by year and through the day, and what is left to fill in. */
final class UtilityLetter {
    private static final String TITLE = "Load letter";
    private static final double CHART_HEIGHT = 0.48;

    private static final double SEASON_HEIGHT = 0.36;

    private final PaperInput in;
    private final YardLoads loads = new YardLoads();
    private int figures;
    private int tables = LetterTables.TABLES;

    private UtilityLetter(PaperInput in) {
        this.in = in;
    }

    static Document of(PaperInput in) {
        UtilityLetter letter = new UtilityLetter(in);
        return new Document("utility-load-letter", TITLE, "Charging of electric school buses: request for electric service",
                in.documentFacts(),
                in.running(TITLE), "", List.of(letter.request(), letter.equipment(), letter.byYear(), letter.seasons(), letter.throughTheDay()));
    }

    private Section request() {
        return Section.of("What is asked for", new Block.Paragraph("We plan to charge electric school buses at the site below "
                + "and ask for electric service for it. The figures are estimates of a planning study. Two measures of load are "
                + "given and must not be mixed: all ports at full power, and charging as planned, which counts for sizing only "
                + "under a listed load-management system. Please tell us what the existing service can carry, what has to be "
                + "built, what it costs us and how long it takes."),
                Block.Condensed.close(new LetterTables(in).customer()));
    }

    private Section equipment() {
        LetterTables tables = new LetterTables(in);
        return Section.of("Equipment and phases", tables.equipment(), tables.phases(),
                new Block.Paragraph("Signed for the applicant: ______________________________   Date: ______________"));
    }

    private Section byYear() {
        return new Section("Load by year", false, true, List.of(EvidencePapers.service(in, "Load by year",
                table("Ports and load on the service by year")),
                new Block.Figure(ServiceLoadChart.of(in.result(), in.planIndex(),
                        in.system(), ChartTheme.light()), figure("Load on the service by year"), CHART_HEIGHT)));
    }

    private Section seasons() {
        SeasonProfiles profiles = new SeasonProfiles(in, loads);
        List<Block> blocks = new ArrayList<>();
        for (SeasonProfiles.Season season : profiles.seasons()) {
            blocks.add(new Block.Figure(DayLoadChart.of(in.result(), season.day(), loads, in.system(), ChartTheme.light()),
                    figure(season.label()), SEASON_HEIGHT));
        }
        if (!blocks.isEmpty()) {
            blocks.add(Block.Condensed.close(profiles.table(table("Load by hour in winter and summer"))));
        }
        return new Section("Winter and summer", false, true, blocks);
    }

    private Section throughTheDay() {
        List<Block> blocks = new ArrayList<>();
        day().ifPresent(d -> blocks.add(new Block.Figure(DayLoadChart.of(in.result(), d, loads, in.system(),
                ChartTheme.light()),
                figure("Load through the day that sets the demand"), CHART_HEIGHT)));
        List<ResultLine> hours = ResultLine.of(in, "load_shape");
        if (hours.isEmpty()) {
            blocks.add(new Block.Paragraph("The plan has no charging in its last year."));
        } else {
            blocks.add(Block.Condensed.of(shape(hours)));
        }
        blocks.add(new Block.Caution("The local electrical code, the utility and a licensed electrician decide what may be built "
                + "and connected. Charging counts as a continuous load and the building's measured demand as an existing one, "
                + "both at 125 % (NFPA 70, 625.42 and 220.87; check the edition in force)."));
        return new Section("Load through the day", false, false, blocks);
    }

    private Optional<YardDay> day() {
        int last = in.study().years() - 1;
        YardYear yard = in.plan().yards().get(last);
        return yard.input().buses().isEmpty() ? Optional.empty()
                : YardDay.ofHighestDemand(in.result(), in.planIndex(), last, YardDay.dearestMonth(yard));
    }

    private String figure(String caption) {
        return "Figure " + ++figures + ". " + caption;
    }

    private String table(String caption) {
        return "Table " + ++tables + ". " + caption;
    }

    private DataTable shape(List<ResultLine> hours) {
        return new TableBuilder<ResultLine>("Load shape", table("Load by hour in the month of the highest demand"))
                .text("Month", 1, l -> l.text("month"))
                .text("Day", 1.6, l -> l.text("day"))
                .text("Hour from", 0.8, l -> l.text("hour"))
                .optional("Charging, mean", "kW", CellFormat.decimals(1), l -> l.number("charging_mean"))
                .optional("Charging, highest", "kW", CellFormat.decimals(1), l -> l.number("charging_highest"))
                .optional("With the building, mean", "kW", CellFormat.decimals(1), l -> l.number("service_mean"))
                .optional("With the building, highest", "kW", CellFormat.decimals(1), l -> l.number("service_highest")).of(hours);
    }
}
