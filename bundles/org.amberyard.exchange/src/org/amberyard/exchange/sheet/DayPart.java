package org.amberyard.exchange.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.amberyard.core.units.Unit;
import org.amberyard.model.routes.RunKind;

/** A part of the day and the columns of a route sheet that tell its run. */
enum DayPart {
    AM(RunKind.MORNING, "AM", "am", "morning"), MIDDAY(RunKind.MIDDAY, "Midday", "midday", "noon"),
    PM(RunKind.AFTERNOON, "PM", "pm", "afternoon");

    /** The column that says which run a row of its own tells. */
    static final String PART = "part";
    private static final String RUN = "run";
    private static final Pattern ENDING = Pattern.compile("(?i)^(.*?\\S)[\\s_/-]+(am|midday|pm|morning|noon|afternoon)$");
    private static final Pattern NOTHING = Pattern.compile("[0.,]*");

    private final RunKind kind;
    private final String label;
    private final List<String> words;

    DayPart(RunKind kind, String label, String... words) {
        this.kind = kind;
        this.label = label;
        this.words = List.of(words);
    }

    RunKind kind() {
        return kind;
    }

    String label() {
        return label;
    }

    /** Its name within a sentence. */
    String word() {
        return kind.getLiteral();
    }

    private String id(String what) {
        return label.toLowerCase(Locale.ROOT) + what;
    }

    private String[] called(String... names) {
        return words.stream().flatMap(w -> Arrays.stream(names).map(n -> w + " " + n)).toArray(String[]::new);
    }

    /** Its columns where the runs of a route stand side by side. */
    List<SheetColumn> columns() {
        return List.of(
                clock(id("Depart"), label + " departure", "Departure of the " + kind.getLiteral() + " run.", called("depart", "departure", "start", "out")),
                clock(id("Return"), label + " return", "End of the " + kind.getLiteral() + " run.", called("return", "arrival", "arrive", "end", "in")),
                SheetColumn.derived(id("Distance"), label + " distance", SheetColumn.Content.NUMBER, Unit.KILOMETRE,
                        "Distance of the " + kind.getLiteral() + " run, deadhead included; empty or 0 for no such run.",
                        called("miles", "distance", "km", "mileage")));
    }

    /** The part of the day that a word names. */
    static Optional<DayPart> named(String word) {
        String small = word.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(p -> p.words.contains(small) || p.kind.getLiteral().equals(small)).findFirst();
    }

    /**
     * The column of a row that tells something of the run of this part.
     *
     * @param what {@code Depart}, {@code Return} or {@code Distance}
     */
    String in(MappedRow row, String what) {
        return hasOwnRow(row) ? RUN + what : id(what);
    }

    /** True when a row tells the run of this part. */
    boolean isIn(MappedRow row) {
        return hasOwnRow(row) ? of(row).filter(p -> p == this).isPresent()
                : row.has(id("Depart")) || !NOTHING.matcher(row.cell(id("Distance")).text()).matches();
    }

    /** True when a row tells one run, by a column, by the name of its route or by that of its sheet. */
    static boolean hasOwnRow(MappedRow row) {
        return row.has(PART) || Arrays.stream(values()).noneMatch(p -> row.knows(p.id("Depart")) || row.knows(p.id("Distance"))) && of(row).isPresent();
    }

    private static Optional<DayPart> of(MappedRow row) {
        if (row.has(PART)) {
            return named(row.cell(PART).text());
        }
        Matcher name = ENDING.matcher(row.cell(RouteSheet.KEY).text());
        return name.matches() ? named(name.group(2)) : inName(row.sheetName());
    }

    /** The part of the day that is one of the words in the name of a sheet. */
    static Optional<DayPart> inName(String sheet) {
        return Arrays.stream(sheet.split("[^\\p{L}]+")).map(DayPart::named).flatMap(Optional::stream).findFirst();
    }

    /** The name of a route without a part of the day behind it. */
    static String without(String route) {
        Matcher name = ENDING.matcher(route);
        return name.matches() ? name.group(1) : route;
    }

    /** Ids of columns of returns that a sheet lacks though it has departures or distances of these runs. */
    static List<String> missingReturns(MappedRow row) {
        return Stream.concat(Stream.of(RUN), Arrays.stream(values()).map(p -> p.id("")))
                .filter(run -> (row.knows(run + "Depart") || row.knows(run + "Distance")) && !row.knows(run + "Return"))
                .map(run -> run + "Return").toList();
    }

    /** Columns of sheets in which each run has a row of its own. */
    static List<SheetColumn> ownRowColumns() {
        return List.of(
                SheetColumn.derived(PART, "Part of the day", SheetColumn.Content.TEXT, Unit.NONE,
                        "AM, midday or PM, where each run has a row of its own and neither the name of the route nor that of the sheet says it; "
                                + "empty where the runs stand side by side.",
                        "am pm", "period", "session"),
                clock(RUN + "Depart", "Departure", "Departure of the run of a row of its own.", "depart", "start"),
                clock(RUN + "Return", "Return", "End of the run of a row of its own.", "arrival", "arrive", "end"),
                SheetColumn.derived(RUN + "Distance", "Distance", SheetColumn.Content.NUMBER, Unit.KILOMETRE,
                        "Distance of the run of a row of its own, deadhead included.", "miles", "run miles", "mileage"));
    }

    private static SheetColumn clock(String id, String label, String meaning, String... also) {
        return SheetColumn.derived(id, label, SheetColumn.Content.CLOCK, Unit.CLOCK, meaning, also);
    }
}
