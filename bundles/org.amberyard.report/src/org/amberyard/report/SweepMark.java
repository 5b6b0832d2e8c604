package org.amberyard.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;

/**
 * How far the rows of a sweep are good that was stopped.
 *
 * @param fingerprint of the study and its draws
 * @param draws rows
 * @param bytes length of the file that holds them
 */
record SweepMark(String fingerprint, int draws, long bytes) {
    private static final String NAME = "Amberyard sweep 1";
    private static final int LINES = 4;

    /** Empty where there is none, or something else. */
    static Optional<SweepMark> read(Path file) throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        List<String> lines = Files.readAllLines(file);
        try {
            return lines.size() == LINES && lines.get(0).equals(NAME)
                    ? Optional.of(new SweepMark(lines.get(1), Integer.parseInt(lines.get(2)), Long.parseLong(lines.get(3)))) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** True when it is of a study, and the rows that it tells of are there. */
    boolean isOf(String study, Path part) {
        return fingerprint.equals(study) && draws >= 0 && bytes >= 0 && part.toFile().length() >= bytes;
    }

    /** Writes it so that a mark is there at any time, the old or the new one. */
    void write(Path file) throws IOException {
        Path made = file.resolveSibling(file.getFileName() + ".new");
        Files.write(made, List.of(NAME, fingerprint, String.valueOf(draws), String.valueOf(bytes)));
        Files.move(made, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }
}
