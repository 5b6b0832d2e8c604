package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.report.SweepColumns;
import org.amberyard.report.SweepCsv;
import org.amberyard.study.whatif.StudySweep;

/** Writes all draws of a what-if as rows of a file, which are never in memory together. */
final class SweepVerb implements Verb {
    private static final String OUT = "--out";
    private static final String CSV = ".csv";
    private static final String COLUMNS = ".columns";

    @Override
    public String name() {
        return "sweep";
    }

    @Override
    public String usage() {
        return "sweep STUDY " + OUT + " FILE" + CSV + "|FILE" + COLUMNS + " " + WhatIfStudy.USAGE;
    }

    @Override
    public String summary() {
        return "writes a row for each draw of the what-if of STUDY: its uncertain inputs, and what each plan comes to; " + COLUMNS
                + " is binary, column by column, as the read-me describes";
    }

    @Override
    public Set<String> options() {
        return Stream.concat(Stream.of(OUT), WhatIfStudy.options().stream()).collect(Collectors.toSet());
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path file = arguments.path(OUT, console.folder());
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(CSV) && !name.endsWith(COLUMNS)) {
            throw new WrongUse(OUT + " is “" + file + "”; its name must end in " + CSV + " or " + COLUMNS + ".");
        }
        Optional<WhatIfStudy> asked = WhatIfStudy.of(arguments, console);
        if (asked.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        StudySweep sweep = new StudySweep(asked.get().study(), asked.get().base(), asked.get().threads());
        if (file.toAbsolutePath().getParent() != null) {
            Files.createDirectories(file.toAbsolutePath().getParent());
        }
        ProgressLines progress = ProgressLines.timed(console.err(), "Sweep");
        if (name.endsWith(CSV)) {
            try (SweepCsv out = new SweepCsv(file, sweep.columns())) {
                sweep.run(out, progress);
            }
        } else {
            try (SweepColumns out = new SweepColumns(file, sweep.columns())) {
                sweep.run(out, progress);
            }
        }
        if (asked.get().study().getWhatIf().isFitted()) {
            console.out().println("Every row is evaluated; a sweep does not read draws off fitted surfaces as the study asks for.");
        }
        console.out().println(sweep.rows() + " rows are in " + file);
        return ExitCode.DONE;
    }
}
