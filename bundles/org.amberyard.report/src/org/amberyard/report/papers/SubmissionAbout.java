package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.report.document.DocumentFormat;

/** What a submission says of itself for people and for the check: of what, when and how it was frozen, and every one of its files. */
final class SubmissionAbout {
    static final String NAME = "about.txt";
    private static final String PLAN = "Plan: ";
    private static final String PROGRAMME = "Applied to: ";
    private static final String FILE = "File: ";
    private static final String CHECK = """

            How to check it: in this folder, "sha256sum -c %1$s" compares every file with its sum. %1$s
            itself is the one that was frozen when "sha256sum %1$s" gives the sum that was printed at freezing;
            keep that sum elsewhere, for example in the letter that goes with the submission. The command
            compare-frozen does both (--sum SUM), says which files are missing or were added, and compares a study
            with this one.
            """;

    private final List<String> lines;

    private SubmissionAbout(List<String> lines) {
        this.lines = lines;
    }

    /**
     * The text of the file.
     *
     * @param frozenOn day of freezing
     * @param others names of the other files, in the order of the manifest
     */
    static String text(PaperInput in, DocumentFolder.Wanted wanted, LocalDate frozenOn, Collection<String> others) {
        StringBuilder text = new StringBuilder();
        line(text, PLAN, in.plan().name());
        ProjectMoney.of(in).programme().ifPresent(p -> line(text, PROGRAMME, p));
        in.documentFacts().stream().filter(f -> List.of("Project", "Applicant", "Years", "Version").contains(f.label()))
                .forEach(f -> line(text, f.label() + ": ", f.value()));
        line(text, "Frozen on: ", frozenOn.toString());
        options(text, in.choices(), wanted);
        line(text, FILE, NAME);
        others.forEach(f -> line(text, FILE, f));
        return text + CHECK.formatted(SubmissionManifest.NAME);
    }

    private static void options(StringBuilder text, PaperChoices choices, DocumentFolder.Wanted wanted) {
        line(text, "Documents: ", Arrays.stream(DocumentKind.values()).filter(wanted.kinds()::contains).map(DocumentKind::word)
                .collect(Collectors.joining(", ")));
        line(text, "Formats: ", Arrays.stream(DocumentFormat.values()).filter(wanted.formats()::contains).map(DocumentFormat::word)
                .collect(Collectors.joining(", ")));
        line(text, "Tables: ", choices.tables().stream().map(GrantTable::name).collect(Collectors.joining(", ")));
        line(text, "Paper: ", choices.paper().word());
        line(text, "Vehicle numbers: ", choices.wholeVins() ? "in full" : "last digits");
        line(text, "Date printed: ", choices.dated().orElse("none"));
    }

    /** A name with a line break must not make a line of its own. */
    private static void line(StringBuilder text, String label, String value) {
        text.append(label).append(oneLine(value)).append("\n");
    }

    /** A name as it stands in the file. */
    static String oneLine(String name) {
        return name.replaceAll("\\R", " ");
    }

    /**
     * Reads the file of a submission.
     *
     * @throws IOException when it is not there or is no text
     */
    static SubmissionAbout of(Path folder) throws IOException {
        return new SubmissionAbout(Files.readAllLines(folder.resolve(NAME), StandardCharsets.UTF_8));
    }

    /** Name of the plan; empty where it says none. */
    String plan() {
        return named(PLAN).findFirst().orElse("");
    }

    /** Name of the programme applied to. */
    Optional<String> programme() {
        return named(PROGRAMME).findFirst();
    }

    /** Every file that was frozen but the manifest, in the order of the manifest. */
    List<String> files() {
        return named(FILE).toList();
    }

    private Stream<String> named(String label) {
        return lines.stream().filter(l -> l.startsWith(label)).map(l -> l.substring(label.length()));
    }
}
