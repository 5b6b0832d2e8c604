package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.amberyard.charts.YardDay;
import org.amberyard.charts.YardLoads;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.MonthLoad;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.StretchLoad;
import org.amberyard.core.yard.YardYear;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/**
 * Load through a day of winter and one of summer in the last year of a plan: of the five coldest and the five warmest months the one whose
 * hardest day loads the service most, because a summer month without school says nothing of what summer asks for.
 */
final class SeasonProfiles {
    private static final int HOURS = 24;
    private static final int MONTHS_OF_A_SEASON = 5;
    private static final CellFormat TENTHS = CellFormat.decimals(1);

    private final PaperInput in;
    private final int year;
    private final YardLoads loads;

    /**
     * A season.
     *
     * @param label name
     * @param day its day: the hardest by weather, coldest in winter and hottest in summer
     */
    record Season(String label, YardDay day) {
    }

    SeasonProfiles(PaperInput in, YardLoads loads) {
        this.in = in;
        this.year = in.study().years() - 1;
        this.loads = loads;
    }

    /** Winter and summer as far as buses are charged in them. */
    List<Season> seasons() {
        List<Season> seasons = new ArrayList<>();
        season("Winter", StretchKind.COLDEST_DAY, Comparator.comparingDouble(m -> m.normal().meanAirC())).ifPresent(seasons::add);
        season("Summer", StretchKind.HOTTEST_DAY, Comparator.comparingDouble(m -> -m.normal().meanAirC())).ifPresent(seasons::add);
        return seasons;
    }

    private Optional<Season> season(String label, StretchKind kind, Comparator<Climate.MonthWeather> first) {
        List<Climate.MonthWeather> climate = in.study().duty().climate().months();
        return IntStream.range(0, climate.size()).boxed().sorted(Comparator.comparing(climate::get, first))
                .limit(MONTHS_OF_A_SEASON).flatMap(m -> YardDay.in(in.result(), in.planIndex(), year, m).stream())
                .filter(d -> d.kind() == kind).max(Comparator.comparingDouble(this::highestKw))
                .map(d -> new Season(label + ", " + d.label() + " of " + MonthNames.full(d.month()), d));
    }

    DataTable table(String title) {
        TableBuilder<Integer> table = new TableBuilder<Integer>("Seasons", title)
                .text("Hour from", 0.7, h -> String.format(Locale.ROOT, "%02d:00", h));
        for (Season season : seasons()) {
            load(season.day()).ifPresent(load -> {
                String label = season.day().kind() == StretchKind.COLDEST_DAY ? "winter" : "summer";
                column(table, "Charging, mean, " + label, load, StretchLoad::yardKw, DoubleStream::average);
                column(table, "Charging, highest, " + label, load, StretchLoad::yardKw, DoubleStream::max);
                column(table, "With the building, highest, " + label, load, StretchLoad::serviceKw, DoubleStream::max);
            });
        }
        seasons().forEach(s -> table.note(s.label() + " " + in.calendar(year) + "."));
        table.note("Winter and summer are the five coldest and the five warmest months of the climate; of each the month is shown whose hardest "
                + "day loads the service most.");
        return table.of(IntStream.range(0, HOURS).boxed().toList());
    }

    private void column(TableBuilder<Integer> table, String label, StretchLoad load, Function<StretchLoad, double[]> kw,
            Function<DoubleStream, OptionalDouble> of) {
        double[] steps = kw.apply(load);
        int anHour = steps.length / load.kind().days().size() / HOURS;
        int day = load.highestDay() * HOURS;
        table.optional(label, "kW", TENTHS, h -> of.apply(Arrays.stream(steps, (day + h) * anHour, (day + h + 1) * anHour)));
    }

    private double highestKw(YardDay day) {
        return load(day).map(l -> Arrays.stream(l.serviceKw()).max().orElse(0)).orElse(0.0);
    }

    private Optional<StretchLoad> load(YardDay day) {
        YardYear yard = in.plan().yards().get(year);
        MonthLoad month = loads.of(yard.input()).get(day.month());
        return month.stretches().stream().filter(s -> s.kind() == day.kind() && s.service().extendedYear() == day.extendedYear())
                .findFirst();
    }
}
