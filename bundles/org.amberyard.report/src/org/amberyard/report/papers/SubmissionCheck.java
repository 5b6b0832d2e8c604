package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.report.papers.SubmissionManifest.Entry;

/**
 * Tells whether a submission is as it was frozen: every file that was frozen is there, listed and untouched, and no other. The list
 * of files stands twice, in the manifest and in the file about the submission, which the manifest has the sum of; who changes both
 * and all sums is found out by the sum of the manifest that was kept elsewhere.
 */
final class SubmissionCheck {
    private final Path folder;
    private final SubmissionManifest manifest;
    private final List<String> broken = new ArrayList<>();

    private SubmissionCheck(Path folder, SubmissionManifest manifest) {
        this.folder = folder;
        this.manifest = manifest;
    }

    /**
     * What is not as it was frozen; empty when nothing has been touched.
     *
     * @param expected SHA-256 of the manifest that was printed at freezing, if it is known
     * @throws IOException when the folder or its manifest cannot be read
     */
    static List<String> of(Path folder, Optional<String> expected) throws IOException {
        SubmissionCheck check = new SubmissionCheck(folder, SubmissionManifest.read(folder));
        check.manifest(expected);
        Set<String> known = check.listed();
        known.addAll(check.frozen(List.copyOf(known)));
        check.others(known);
        return List.copyOf(check.broken);
    }

    private void manifest(Optional<String> expected) {
        if (expected.isPresent() && !expected.get().equalsIgnoreCase(manifest.sum())) {
            broken.add(SubmissionManifest.NAME + " is not the one that was frozen: its SHA-256 is " + manifest.sum() + ", expected was "
                    + expected.get() + ".");
        }
        if (!manifest.isPlain()) {
            broken.add(SubmissionManifest.NAME + " is not as it was frozen: its line ends or spaces are others.");
        }
    }

    /** Looks at the files that the manifest lists; answers their names. */
    private Set<String> listed() throws IOException {
        Set<String> names = new LinkedHashSet<>();
        for (Entry entry : manifest.entries()) {
            if (entry.sum().isEmpty() || !isName(entry.name())) {
                broken.add(SubmissionManifest.NAME + " has a line that names no file: " + entry.name());
            } else if (!names.add(entry.name())) {
                broken.add(SubmissionManifest.NAME + " lists " + entry.name() + " twice.");
            } else {
                file(entry);
            }
        }
        return names;
    }

    private boolean isName(String name) {
        try {
            return folder.normalize().equals(folder.resolve(name).normalize().getParent());
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private void file(Entry entry) throws IOException {
        Path file = folder.resolve(entry.name());
        if (!Files.isRegularFile(file)) {
            broken.add(entry.name() + " is missing.");
        } else if (!SubmissionManifest.sum(Files.readAllBytes(file)).equals(entry.sum())) {
            broken.add(entry.name() + " is not as it was frozen: its SHA-256 is another.");
        }
    }

    /** Compares the listed names with those of the file about the submission; answers the latter. */
    private List<String> frozen(List<String> listed) {
        List<String> frozen = frozenFiles();
        if (frozen.isEmpty()) {
            broken.add(SubmissionAbout.NAME + " does not tell which files were frozen, so one that was taken out of "
                    + SubmissionManifest.NAME + " too would not be noticed.");
            return frozen;
        }
        frozen.stream().filter(f -> !listed.contains(f)).forEach(f -> broken.add(f + " was frozen, but " + SubmissionManifest.NAME
                + " has no line for it" + (Files.exists(folder.resolve(f)) ? "." : ", and it is missing.")));
        listed.stream().filter(f -> !frozen.contains(f)).forEach(f -> broken.add(f + " stands in "
                + SubmissionManifest.NAME + ", but was not frozen: " + SubmissionAbout.NAME + " does not name it."));
        if (!listed.equals(frozen) && new HashSet<>(listed).equals(new HashSet<>(frozen))) {
            broken.add(SubmissionManifest.NAME + " is not as it was frozen: its lines stand in another order.");
        }
        return frozen;
    }

    private List<String> frozenFiles() {
        try {
            return SubmissionAbout.of(folder).files().stream().filter(this::isName).toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private void others(Set<String> known) throws IOException {
        try (Stream<Path> there = Files.list(folder)) {
            there.map(f -> f.getFileName().toString()).filter(f -> !known.contains(f) && !f.equals(SubmissionManifest.NAME)).sorted()
                    .forEach(f -> broken.add(f + " was not frozen: it has been added to the folder."));
        }
    }
}
