package org.amberyard.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.common.Month;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.MeterDay;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.model.meta.SourceNotes;

/**
 * The building's load made from a file of interval data, ready to be put into a study.
 *
 * @param days days that stand for the months; they belong to no study yet
 * @param dated the days themselves, those that were read whole
 * @param sentences what was read and what had to be assumed
 */
public record MeterImport(List<BuildingLoadDay> days, List<MeterDay> dated, List<String> sentences) {
    private static final double UNIT_TOLERANCE = 0.15;
    private static final double BILL_TOLERANCE = 0.05;

    public MeterImport {
        days = List.copyOf(days);
        dated = List.copyOf(dated);
        sentences = List.copyOf(sentences);
    }

    /**
     * The load in a CSV file of readings every 15, 30 or 60 minutes, in kW or kWh, a row for each reading or for each day.
     *
     * @param bills monthly bills of the same meter, which tell kW from kWh; may be empty
     * @throws ImportException when the file is not understood, or bills show that its unit is another
     */
    public static MeterImport read(Path path, List<BuildingMonth> bills) throws ImportException {
        return of(MeterFile.read(path), bills, List.of());
    }

    static MeterImport of(MeterFile file, Collection<BuildingMonth> bills, List<String> remarks) throws ImportException {
        MeterYear year = new MeterYear(file);
        checkUnit(file, year, bills);
        List<String> sentences = new ArrayList<>(MeterSentences.of(file, year));
        sentences.addAll(remarks);
        bills.stream().filter(b -> !year.days(b.getMonth()).isEmpty() && b.getEnergyKwh() > 0)
                .filter(b -> Math.abs(year.kwh(b.getMonth()) / b.getEnergyKwh() - 1) > BILL_TOLERANCE)
                .forEach(b -> sentences.add(bill(year, b) + "; check that both are of the same meter and year."));
        List<BuildingLoadDay> days = year.loadDays();
        days.forEach(d -> d.getSources().add(source(file)));
        List<MeterDay> dated = year.datedDays();
        dated.forEach(d -> d.getSources().add(source(file)));
        return new MeterImport(days, dated, sentences);
    }

    /** Days of a study that the imported ones take the place of. */
    public List<BuildingLoadDay> replaced(Depot depot) {
        Set<Month> months = days.stream().map(BuildingLoadDay::getMonth).collect(Collectors.toSet());
        return depot.getBuildingLoadDays().stream().filter(d -> months.contains(d.getMonth())).toList();
    }

    /** Days by date of a study that the imported ones take the place of. */
    public List<MeterDay> replacedDates(Depot depot) {
        Set<String> dates = dated.stream().map(MeterDay::getDate).collect(Collectors.toSet());
        return depot.getMeterDays().stream().filter(d -> dates.contains(d.getDate())).toList();
    }

    /** What the imported days change in a study, in words; nothing where the same file was imported before. */
    public List<String> changes(Depot depot) {
        List<BuildingLoadDay> old = replaced(depot);
        List<String> changes = new ArrayList<>();
        for (BuildingLoadDay day : days) {
            Optional<BuildingLoadDay> before = like(day, old);
            if (before.isEmpty()) {
                changes.add(name(day) + " is added: " + load(day));
            } else if (!load(before.get()).equals(load(day))) {
                changes.add(name(day) + ": " + load(before.get()) + " → " + load(day));
            }
        }
        old.stream().filter(o -> like(o, days).isEmpty()).forEach(o -> changes.add(name(o) + " is removed"));
        Set<List<String>> known = depot.getMeterDays().stream().map(MeterImport::told).collect(Collectors.toSet());
        long kept = dated.stream().filter(d -> !known.contains(told(d))).count();
        if (kept > 0) {
            changes.add("days of the meter, by which bills are checked: " + kept + " added or changed, " + dated.get(0).getDate() + " to "
                    + dated.get(dated.size() - 1).getDate());
        }
        return changes;
    }

    private static Optional<BuildingLoadDay> like(BuildingLoadDay day, List<BuildingLoadDay> days) {
        return days.stream().filter(d -> d.getMonth() == day.getMonth() && d.getDayKind() == day.getDayKind()).findFirst();
    }

    private static List<String> told(MeterDay day) {
        return List.of(String.valueOf(day.getDate()), String.valueOf(day.getLoadKw()));
    }

    private static String name(BuildingLoadDay day) {
        return "building load, " + day.getMonth().getLiteral() + " " + day.getDayKind().getLiteral();
    }

    private static String load(BuildingLoadDay day) {
        return String.format(Locale.ROOT, "mean %.2f kW, peak %.2f kW", Arrays.stream(NumberSeries.parse(day.getMeanKw())).average().orElse(0),
                Arrays.stream(NumberSeries.parse(day.getPeakDayKw())).max().orElse(0));
    }

    /** Gives the imported days the solar power of those that they take the place of, which no meter of the building tells. */
    public void keepSolar(Depot depot) {
        replaced(depot).forEach(old -> days.stream()
                .filter(d -> d.getMonth() == old.getMonth() && d.getDayKind() == old.getDayKind())
                .forEach(d -> d.setSolarKw(old.getSolarKw())));
    }

    private static SourceNote source(MeterFile file) {
        return SourceNotes.of(SourceNotes.EVERY_FIELD, Quality.MEASURED, file.file(),
                file.readings().get(file.readings().size() - 1).start().toLocalDate().toString());
    }

    private static String bill(MeterYear year, BuildingMonth bill) {
        double kwh = year.kwh(bill.getMonth());
        return String.format(Locale.ROOT, "%s sums to %,.0f kWh but %,.0f kWh were billed, a ratio of %.2f",
                bill.getMonth().getLiteral(), kwh, bill.getEnergyKwh(), kwh / bill.getEnergyKwh());
    }

    /** Numbers of the other unit are off by the intervals of an hour, in every month alike. */
    private static void checkUnit(MeterFile file, MeterYear year, Collection<BuildingMonth> bills) throws ImportException {
        double perHour = 60.0 / file.stepMin();
        double factor = file.unit() == MeterUnit.KWH ? perHour : 1 / perHour;
        List<BuildingMonth> known = bills.stream().filter(b -> !year.days(b.getMonth()).isEmpty() && b.getEnergyKwh() > 0).toList();
        boolean other = perHour > 1 && !known.isEmpty() && known.stream()
                .allMatch(b -> Math.abs(year.kwh(b.getMonth()) / b.getEnergyKwh() / factor - 1) < UNIT_TOLERANCE);
        if (other) {
            MeterUnit looksLike = file.unit() == MeterUnit.KWH ? MeterUnit.KW : MeterUnit.KWH;
            throw new ImportException(List.of(new ImportProblem(file.file(), 1, "", bill(year, known.get(0))
                    + ": " + file.form().wrongUnit(file.unit(), looksLike))));
        }
    }
}
