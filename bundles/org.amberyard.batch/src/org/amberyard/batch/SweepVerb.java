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
import org.amberyard.core.whatif.DrawFailedException;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.report.SweepFile;
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
        int threads = WhatIfStudy.threads(arguments);
        return ThreadLimit.run(threads, () -> sweep(file.toAbsolutePath(), threads, arguments, console));
    }

    private static int sweep(Path file, int threads, Arguments arguments, Console console) throws WrongUse, IOException {
        Optional<WhatIfStudy> asked = WhatIfStudy.of(arguments, console, (words, whatIf) -> {});
        if (asked.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        StudySweep sweep = new StudySweep(asked.get().study(), asked.get().base(), threads);
        int before = write(sweep, file, ProgressLines.timed(console.err(), "Sweep"));
        if (before > 0) {
            console.out().println("Went on behind the " + before + " rows of a sweep that was stopped.");
        }
        if (asked.get().study().getWhatIf().isFitted()) {
            console.out().println("Every row is evaluated; a sweep does not read draws off fitted surfaces as the study asks for.");
        }
        console.out().println(sweep.rows() + " rows are in " + file);
        return ExitCode.DONE;
    }

    /**
     * Writes a sweep, or goes on with one that was stopped; a file that stood there stays as it was until the last row is written.
     *
     * @return rows that were there before
     */
    static int write(StudySweep sweep, Path file, Progress progress) throws IOException {
        Files.createDirectories(file.getParent());
        try (SweepFile out = SweepFile.of(file, sweep.fingerprint(), sweep.columns())) {
            if (run(sweep, out, progress).reason() == RunEnd.Reason.CANCELLED) {
                throw new InterruptedIOException("The sweep was stopped; its rows so far are kept in " + out.partly()
                        + ", and the same command goes on with them");
            }
            out.end();
            return out.before();
        }
    }

    private static RunEnd run(StudySweep sweep, SweepFile out, Progress progress) throws IOException {
        try {
            return sweep.run(out.before(), out, progress);
        } catch (DrawFailedException e) {
            out.drop();
            throw e;
        }
    }

    private static boolean isCsv(Path file) {
        return lowerCase(file).endsWith(CSV);
    }

    private static String lowerCase(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT);
    }
}
