package org.amberyard.batch;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.BlockSink;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.report.StagedFiles;
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
        if (!isCsv(file) && !lowerCase(file).endsWith(COLUMNS)) {
            throw new WrongUse(OUT + " is “" + file + "”; its name must end in " + CSV + " or " + COLUMNS + ".");
        }
        Optional<WhatIfStudy> asked = WhatIfStudy.of(arguments, console);
        if (asked.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        StudySweep sweep = new StudySweep(asked.get().study(), asked.get().base(), asked.get().threads());
        write(sweep, file.toAbsolutePath(), ProgressLines.timed(console.err(), "Sweep"));
        if (asked.get().study().getWhatIf().isFitted()) {
            console.out().println("Every row is evaluated; a sweep does not read draws off fitted surfaces as the study asks for.");
        }
        console.out().println(sweep.rows() + " rows are in " + file);
        return ExitCode.DONE;
    }

    /** Writes a sweep; a file that stood there stays as it was until the last row is written. */
    static void write(StudySweep sweep, Path file, Progress progress) throws IOException {
        Files.createDirectories(file.getParent());
        try (StagedFiles files = new StagedFiles(file.getParent())) {
            Path written = files.add(file.getFileName().toString());
            if (isCsv(file)) {
                try (SweepCsv out = new SweepCsv(written, sweep.columns())) {
                    run(sweep, out, progress);
                }
            } else {
                try (SweepColumns out = new SweepColumns(written, sweep.columns())) {
                    run(sweep, out, progress);
                    out.end();
                }
            }
            files.moveIntoPlace();
        }
    }

    private static void run(StudySweep sweep, BlockSink out, Progress progress) throws IOException {
        if (sweep.run(out, progress).reason() == RunEnd.Reason.CANCELLED) {
            throw new InterruptedIOException("The sweep was stopped; no file was written");
        }
    }

    private static boolean isCsv(Path file) {
        return lowerCase(file).endsWith(CSV);
    }

    private static String lowerCase(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT);
    }
}
